/** Why a bike does not stand in a ride state, whichever step on the way refused. */
import type { AxleMisfit } from '../standing/axle-in-slot.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';

/** Parts that cannot meet, springs that hold nothing, or a chain that leaves the axle outside its slot. */
export type NoStand = NoEquilibrium | AxleMisfit;
