/** What changed at the front patch, about the instant centre and at the rear axle, larger than the side view shows it. */
import type { Absent } from '../core/readings/absent.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { shownDifference, writeChange, type NumberStyle } from '../core/units/number-style.ts';
import { isLess } from '../core/units/least-told.ts';
import { axleCloseUp } from './axle-close-up.ts';
import type { CloseUp, CloseUpOptions } from './close-up.ts';
import { frontCloseUp } from './front-close-up.ts';
import { rearCloseUp } from './rear-close-up.ts';

/** The close-ups of a bike that stands differently from its baseline by what a gauge shows. */
export function closeUps(live: StandingBike, baseline: StandingBike, options: CloseUpOptions): CloseUp[] {
  return [frontCloseUp, rearCloseUp, axleCloseUp]
    .map((make) => make(live, baseline, options))
    .filter((found) => found !== null);
}

/** The change of a figure in brackets, such as " (−1.2)"; empty where no gauge shows it. */
export function changeInBrackets(
  before: number | Absent,
  now: number,
  quantity: 'length' | 'angle' | 'percent',
  style: NumberStyle,
): string {
  if (typeof before !== 'number' || isLess(now - before, quantity)) return '';
  return ` (${writeChange(shownDifference(before, now, quantity, style), quantity, style).digits})`;
}
