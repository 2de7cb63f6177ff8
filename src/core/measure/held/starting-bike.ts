/** The bike that a measuring starts from. */
import type { Setup } from '../../adjusters/setup.ts';
import type { Bike } from '../../parts/bike.ts';

/** A bike with its setup: a type of bike, an own bike, or the bike that was found. */
export interface StartingBike {
  readonly bike: Bike;
  readonly setup: Setup;
  /** Whether the sheet has found it before: then the travel in its setup is that at which it was measured. */
  readonly isMeasured?: boolean;
}
