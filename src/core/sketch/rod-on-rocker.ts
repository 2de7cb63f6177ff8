/** The bolt that joins rod and rocker. */
import { bolt } from './bolt.ts';

export const rodOnRocker = bolt('rodOnRocker', 'Rod on rocker', 'Bolt that joins rod and rocker.');
