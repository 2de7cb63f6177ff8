/** The bolt that joins shock and rocker. */
import { bolt } from './bolt.ts';

export const shockOnRocker = bolt('shockOnRocker', 'Shock on rocker', 'Bolt that joins shock and rocker.');
