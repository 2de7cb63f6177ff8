/** Why a change did what it did: the change of each main reading, split among its causes so that the parts add up. */
import { fairSplit } from '../numeric/fair-split.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import { groundTrail } from '../readings/trail.ts';
import type { Stance } from '../springs/stance.ts';

/** One cause's part of a change, in the unit of the reading it belongs to. */
export interface Part<Cause extends string> {
  readonly cause: Cause;
  readonly amount: number;
}

/** A reading before and after, and the parts that make up the difference. */
export interface Split<Cause extends string> {
  readonly before: number;
  readonly after: number;
  readonly parts: readonly Part<Cause>[];
}

export type RakeCause = 'framePitch' | 'axisInFrame';
export type TrailCause = 'tyre' | 'rake' | 'offset';
export type SwingarmCause = 'pivotHeight' | 'axleHeight' | 'armLength';
export type AntiSquatCause = 'swingarm' | 'chain' | 'loadTransfer';
export type ChainCause = 'pullPerThrust' | 'lever' | 'pivotAhead' | 'loadTransfer';

/** What a change did to the bike. Angles in radians, lengths in mm, anti-squat in per cent; null where there is no answer. */
export interface Why {
  /** Nose-up turn of the frame, positive nose up. */
  readonly pitch: number;
  /** How far the swingarm pivot and the steering head rose. */
  readonly pivotRise: number;
  readonly headRise: number;
  readonly rake: Split<RakeCause>;
  readonly trail: Split<TrailCause>;
  readonly wheelbase: Split<never>;
  readonly swingarmAngle: Split<SwingarmCause>;
  readonly antiSquat: Split<AntiSquatCause> | null;
  /** Why the chain's part of the anti-squat changed. */
  readonly chain: Split<ChainCause> | null;
}

/**
 * The change from one stance to another, explained. Both stances must be of the same ride state. Every split's
 * parts sum to after − before to rounding: where causes multiply, each gets its mean share over every order in
 * which they could have come (see fair-split.ts). Frame pitch is what the frame turned, as far as it is not a
 * change of the axes in which the bike was described.
 */
export function why(before: Stance, after: Stance): Why {
  const axis = after.machine.front.axisAngle - before.machine.front.axisAngle;
  const pitch = after.pose.pitch - before.pose.pitch;
  return {
    pitch,
    pivotRise: after.pose.originY - before.pose.originY,
    headRise: headHeight(after) - headHeight(before),
    rake: {
      before: before.rake,
      after: after.rake,
      parts: [
        { cause: 'framePitch', amount: pitch },
        { cause: 'axisInFrame', amount: axis },
      ],
    },
    trail: split(
      ['tyre', 'rake', 'offset'],
      ([radius, rake, offset]) => groundTrail(radius, rake, offset),
      (s) => [s.machine.frontRadius, s.rake, s.offset],
      before,
      after,
    ),
    wheelbase: { before: before.pose.wheelbase, after: after.pose.wheelbase, parts: [] },
    swingarmAngle: split(
      ['pivotHeight', 'axleHeight', 'armLength'],
      ([pivot, axle, arm]) => Math.asin(Math.max(-1, Math.min(1, (pivot - axle) / arm))),
      (s) => [s.pose.originY, s.rearAxleY, s.machine.rear.arm],
      before,
      after,
    ),
    antiSquat: antiSquatSplit(before, after),
    chain: chainSplit(before, after),
  };
}

function headHeight({ pose, machine: { front } }: Stance): number {
  return pose.originY + pose.sin * front.headX + pose.cos * front.headY;
}

function split<Cause extends string>(
  causes: readonly Cause[],
  f: (inputs: readonly number[]) => number,
  inputsOf: (s: Stance) => number[],
  before: Stance,
  after: Stance,
): Split<Cause> {
  const from = inputsOf(before);
  const to = inputsOf(after);
  const amounts = fairSplit(f, from, to);
  return {
    before: f(from),
    after: f(to),
    parts: causes.map((cause, i) => ({ cause, amount: amounts[i] })),
  };
}

/** Anti-squat is 100 · (swingarm's slope + chain's slope) / load-transfer slope. */
function antiSquatSplit(before: Stance, after: Stance): Split<AntiSquatCause> | null {
  if (typeof antiSquat.read(before) !== 'number' || typeof antiSquat.read(after) !== 'number') return null;
  return split(
    ['swingarm', 'chain', 'loadTransfer'],
    ([swingarm, chain, transfer]) => (100 * (swingarm + chain)) / transfer,
    (s) => [s.swingarmSlope, s.chainSlope, s.centreY / s.pose.wheelbase],
    before,
    after,
  );
}

/** The chain's part is −100 · (pull per thrust) · lever / pivot ahead / load-transfer slope. */
function chainSplit(before: Stance, after: Stance): Split<ChainCause> | null {
  if (typeof antiSquat.read(before) !== 'number' || typeof antiSquat.read(after) !== 'number') return null;
  return split(
    ['pullPerThrust', 'lever', 'pivotAhead', 'loadTransfer'],
    ([pull, lever, ahead, slope]) => (-100 * pull * lever) / ahead / slope,
    (s) => [
      s.machine.rearRadius / s.machine.rearSprocketRadius,
      s.pullLever,
      s.pose.originX,
      s.centreY / s.pose.wheelbase,
    ],
    before,
    after,
  );
}
