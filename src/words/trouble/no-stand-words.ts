/** Why a bike does not stand in a ride state, in words: what is in the way, and what to change. */
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { axleMisfitWords } from './axle-misfit-words.ts';
import { noEquilibriumWords } from './no-equilibrium-words.ts';

/** One or two sentences. */
export function noStandWords(no: NoStand, drive: DriveNoun, style: NumberStyle): string {
  return 'nearest' in no ? axleMisfitWords(no, drive, style) : noEquilibriumWords(no, drive, style);
}
