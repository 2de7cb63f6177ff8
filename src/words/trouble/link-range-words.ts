/** Tells how far the links could swing beyond the travel, and what stops them there. */
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { linkRange } from '../../core/linkage/link-range.ts';
import type { WayEnd } from '../../core/linkage/no-linkage.ts';
import type { LinkSuspension } from '../../core/linkage/suspension.ts';

/** What ends the way of the links, to go behind "because" or a colon. */
export const WAY_END_WORDS: Readonly<Record<WayEnd, string>> = {
  beyondStroke: 'the shock’s stroke ends before',
  armUpright: 'the swingarm would stand upright',
  rodAndRockerInLine: 'rod and rocker come into one line there and could go over-centre',
  rodThroughPivot: 'the rod points at the swingarm pivot there and the rocker stands still',
  shockThroughRocker: 'the shock points at the rocker’s pivot there',
  shockThroughPivot: 'the shock points at the swingarm pivot there',
  shockEndsMoveAlike: 'rocker and swingarm move both ends of the shock alike there',
};

/** How far the links go on at both ends of the travel, mm of axle square to the ground, and why no further. */
export interface WayBeyond {
  readonly above: { readonly mm: number; readonly why: WayEnd };
  readonly below: { readonly mm: number; readonly why: WayEnd };
}

/** Null when the links close nowhere, which their suspension would have said. */
export function wayBeyond(of: LinkSuspension): WayBeyond | null {
  const whole = linkRange(of.links, of.framePitch, 'all');
  if (!whole.ok) return null;
  const sine = (angle: number): number => Math.sin(angle + of.framePitch);
  const { low, high } = whole;
  return {
    above: { mm: of.arm * (of.toppedOutSine - sine(low.angle)) - of.wheelTravel, why: low.why },
    below: { mm: of.arm * (sine(high.angle) - of.toppedOutSine), why: high.why },
  };
}

/** One or two sentences: what ends the travel, and where the links end. */
export function linkRangeWords(of: LinkSuspension, style: NumberStyle): string {
  const beyond = wayBeyond(of);
  if (beyond === null) return '';
  const mm = (value: number): string => writeNumber(value, 'length', style).text;
  const { above, below } = beyond;
  const up =
    of.endsBy === 'shockClosed'
      ? `The links have ${mm(above.mm)} left when the shock is closed: ${WAY_END_WORDS[above.why]}.`
      : `The links end the travel before the shock closes: ${WAY_END_WORDS[above.why]}.`;
  return `${up} Below hanging they have ${mm(below.mm)}: ${WAY_END_WORDS[below.why]}.`;
}
