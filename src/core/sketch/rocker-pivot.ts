/** The bolt that the rocker turns on. */
import { bolt } from './bolt.ts';

export const rockerPivot = bolt('rockerPivot', 'Rocker pivot', 'Bolt that the rocker turns on.');
