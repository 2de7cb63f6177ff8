/** Why a bike does not stand in a ride state, whichever step on the way refused. */
import type { NumberStyle } from '../units/number-style.ts';
import type { AxleMisfit } from './axle-in-slot.ts';
import { axleMisfitWords } from './axle-misfit-words.ts';
import type { NoBalance } from './no-balance.ts';
import { noBalanceWords } from './no-balance-words.ts';

/** Parts that cannot meet, springs that hold nothing, or a chain that leaves the axle outside its slot. */
export type NoStand = NoBalance | AxleMisfit;

/** One or two sentences for a person: what is in the way, and what to change. */
export function noStandWords(no: NoStand, style: NumberStyle): string {
  return 'nearest' in no ? axleMisfitWords(no, style) : noBalanceWords(no, style);
}
