/** What the page asks the thread about a measured bike, and what comes back. */
import type { DrawnRange, DrawsAsked } from '../core/measure/spread/drawn-bikes.ts';
import type { BandAsked } from '../core/measure/spread/measured-band.ts';
import type { NextMeasurement } from '../core/measure/measured-bike.ts';
import type { StartingBike } from '../core/measure/held/starting-bike.ts';
import type { ChangeRequest, MeasuredChange } from '../core/measure/spread/measured-change.ts';
import type { PlaceSpread } from '../core/measure/spread/measured-places.ts';
import type { MeasureSheet } from '../core/measure/sheet.ts';
import type { Setup } from '../core/adjusters/setup.ts';

/** The sheet and the bike that its fit starts from. */
export interface MeasuredBy {
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
}

/** Readings as set at `to`, and their change from `from` where there is one. */
export type SpreadsAsked = Pick<ChangeRequest, 'from' | 'to' | 'ride' | 'stepSd'>;

export interface Spreads {
  readonly own: MeasuredChange['readings'];
  readonly change: MeasuredChange['readings'] | null;
}

export type MeasureQuestion =
  | ({ readonly what: 'spreads' } & SpreadsAsked)
  | { readonly what: 'byState'; readonly to: Setup }
  | { readonly what: 'places' }
  | { readonly what: 'next'; readonly reading: string }
  | ({ readonly what: 'band' } & Omit<BandAsked, 'start'>)
  | ({ readonly what: 'draws' } & DrawsAsked);

/** Null where the sheet leads to no bike. */
export type MeasureAnswer =
  | { readonly what: 'spreads'; readonly found: Spreads | null }
  | { readonly what: 'byState'; readonly found: Record<string, Record<string, number>> | null }
  | { readonly what: 'next'; readonly found: readonly NextMeasurement[] | null }
  | { readonly what: 'places'; readonly found: readonly PlaceSpread[] | null }
  | { readonly what: 'band'; readonly found: readonly (number | null)[] | null }
  | { readonly what: 'draws'; readonly found: DrawnRange | null };

/** The answer to a question of this kind. */
export type AnswerTo<What extends MeasureAnswer['what']> = Extract<
  MeasureAnswer,
  { readonly what: What }
>['found'];

/** A question with its number, by which a late answer is known. */
export interface ToMeasurer extends MeasuredBy {
  readonly kind: 'measure';
  readonly number: number;
  readonly question: MeasureQuestion;
}

export interface FromMeasurer {
  readonly kind: 'measured';
  readonly number: number;
  readonly answer: MeasureAnswer;
}
