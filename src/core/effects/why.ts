/** Why a change did what it did: the change of each main reading, split among its causes so that the parts add up. */
import { onGround } from '../chassis/pose.ts';
import { fairSplit } from '../numeric/fair-split.ts';
import { hasRuns, type DriveKind } from '../parts/drive-kind.ts';
import { antiSquat, percentOfLoadTransfer } from '../readings/anti-squat.ts';
import { antiSquatSwingarm } from '../readings/anti-squat-swingarm.ts';
import type { Reading } from '../readings/reading.ts';
import { shockLeverage } from '../readings/shock-leverage.ts';
import { groundTrail } from '../readings/trail.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { Stance } from '../standing/stance.ts';
import { heightPlace, heightsAt } from './height-places.ts';

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
export type SwingarmPartCause = 'pivotHeight' | 'pivotAhead' | 'loadTransfer';
/** Between the rear patch and the pivot, and between the pivot and the front patch, each along the ground. */
export type WheelbaseCause = 'behindPivot' | 'aheadOfPivot';
export type ChainCause = 'pullPerThrust' | 'lever' | 'pivotAhead' | 'loadTransfer';

/** How much more of its travel an end uses, mm, and by how much what decides it in a balance has grown; zero where it does not count. */
export interface EndChange {
  /** Of the fork along the legs, of the rear at the axle. */
  readonly travel: number;
  /** Of all springs of the end together, N/mm and mm. */
  readonly rate: number;
  readonly preload: number;
  /** What presses the end together: weight, drive and brakes, N. */
  readonly push: number;
  /** The wheel's travel per shock stroke, at the rear with an answer on both sides only. */
  readonly leverage: number;
}

/** What a change did to the bike. Angles in radians, lengths in mm, anti-squat in per cent; null where there is no answer. */
export interface Why {
  /** Nose-up turn of the frame, positive nose up. */
  readonly pitch: number;
  /** Height of the swingarm pivot above the ground, and of the front end straight above the axle as it stood. */
  readonly pivotHeight: Split<never>;
  readonly frontHeight: Split<never>;
  /** Height of the seat mark and of the centre of gravity above the ground. */
  readonly seatHeight: Split<never>;
  readonly centreHeight: Split<never>;
  /** How far an eccentric moved the pivot in the frame, forward and up in frame coordinates. */
  readonly pivotForward: number;
  readonly pivotUp: number;
  readonly front: EndChange;
  readonly rear: EndChange;
  /** What turns the rear wheel after the change. */
  readonly drive: DriveKind;
  readonly rake: Split<RakeCause>;
  readonly trail: Split<TrailCause>;
  readonly wheelbase: Split<WheelbaseCause>;
  readonly swingarmAngle: Split<SwingarmCause>;
  /** The sum of the two parts below, each of which is a reading. */
  readonly antiSquat: Split<never> | null;
  /** Why the swingarm's part of the anti-squat changed. */
  readonly swingarm: Split<SwingarmPartCause> | null;
  /** Why the part of chain, belt or torque arm changed; null where either bike has none, or only one a torque arm. */
  readonly chain: Split<ChainCause> | null;
  /** Whether that part is a shaft's torque arm's. */
  readonly torqueArm: boolean;
}

/**
 * The change from one stance to another, explained. Every split's
 * parts sum to after − before to rounding: where causes multiply, each gets its mean share over every order in
 * which they could have come (see fair-split.ts). Frame pitch is what the frame turned, as far as it is not a
 * change of the axes in which the bike was described.
 */
export function why(before: StandingBike, after: StandingBike): Why {
  const axis = after.machine.front.axisAngle - before.machine.front.axisAngle;
  const pitch = after.pose.pitch - before.pose.pitch;
  return {
    pitch,
    pivotHeight: { before: before.pose.pivot.y, after: after.pose.pivot.y, parts: [] },
    frontHeight: { ...heightsAt(heightPlace('front'), before, after), parts: [] },
    seatHeight: { before: seatOf(before), after: seatOf(after), parts: [] },
    centreHeight: { before: before.centre.y, after: after.centre.y, parts: [] },
    pivotForward: after.machine.pivotForward - before.machine.pivotForward,
    pivotUp: after.machine.pivotUp - before.machine.pivotUp,
    front: endChange('front', before, after),
    rear: endChange('rear', before, after),
    drive: after.machine.driveKind,
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
    wheelbase: split(
      ['behindPivot', 'aheadOfPivot'],
      ([behind, ahead]) => behind + ahead,
      ({ pose: { pivot, wheelbase } }) => [pivot.x, wheelbase - pivot.x],
      before,
      after,
    ),
    swingarmAngle: split(
      ['pivotHeight', 'axleHeight', 'armLength'],
      ([pivot, axle, arm]) => Math.asin(Math.max(-1, Math.min(1, (pivot - axle) / arm))),
      (s) => [s.pose.pivot.y, s.rearAxle.y, s.machine.rear.arm],
      before,
      after,
    ),
    antiSquat: unsplit(antiSquat, before, after),
    swingarm: swingarmSplit(before, after),
    chain: chainSplit(before, after),
    torqueArm: after.torqueHold !== null,
  };
}

function endChange(end: 'front' | 'rear', before: StandingBike, after: StandingBike): EndChange {
  const travel = after.travel[end] - before.travel[end];
  const was = springsOf(end, before);
  const is = springsOf(end, after);
  if (was === null || is === null) return { travel, rate: 0, preload: 0, push: 0, leverage: 0 };
  return {
    travel,
    rate: is.rate - was.rate,
    preload: is.preload - was.preload,
    push: is.push - was.push,
    leverage: end === 'rear' ? leverageChange(before, after) : 0,
  };
}

function leverageChange(before: StandingBike, after: StandingBike): number {
  const [was, is] = [shockLeverage.read(before), shockLeverage.read(after)];
  return typeof was === 'number' && typeof is === 'number' ? is - was : 0;
}

/** What decides how deep an end rides; null where no balance does. */
function springsOf(end: 'front' | 'rear', { equilibrium, sprung }: StandingBike) {
  if (equilibrium === undefined || sprung === undefined) return null;
  const { rate, preload } = end === 'front' ? sprung.fork : sprung.shock;
  const { frontPush, rearPush } = equilibrium.loads;
  return { rate, preload, push: end === 'front' ? frontPush : rearPush };
}

function seatOf({ pose, machine: { places } }: Stance): number {
  return onGround(pose, places.seat).y;
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

function unsplit(reading: Reading, before: StandingBike, after: StandingBike): Split<never> | null {
  const [was, is] = [reading.read(before), reading.read(after)];
  return typeof was === 'number' && typeof is === 'number' ? { before: was, after: is, parts: [] } : null;
}

/** The swingarm's part is 100 · pivot height / pivot ahead / load-transfer slope. */
function swingarmSplit(before: Stance, after: Stance): Split<SwingarmPartCause> | null {
  if (typeof antiSquatSwingarm.read(before) !== 'number' || typeof antiSquatSwingarm.read(after) !== 'number')
    return null;
  return split(
    ['pivotHeight', 'pivotAhead', 'loadTransfer'],
    ([height, ahead, slope]) => (100 * height) / ahead / slope,
    (s) => [s.swingarmSlope * s.pose.pivot.x, s.pose.pivot.x, s.centre.y / s.pose.wheelbase],
    before,
    after,
  );
}

/** The part of chain, belt or torque arm is −100 · (pull per thrust) · lever / pivot ahead / load-transfer slope. */
function chainSplit(before: Stance, after: Stance): Split<ChainCause> | null {
  if ((before.torqueHold === null) !== (after.torqueHold === null)) return null;
  for (const s of [before, after])
    if (pullOf(s) === null || typeof percentOfLoadTransfer(s, s.chainSlope) !== 'number') return null;
  return split(
    ['pullPerThrust', 'lever', 'pivotAhead', 'loadTransfer'],
    ([pull, lever, ahead, slope]) => (-100 * pull * lever) / ahead / slope,
    (s) => [...(pullOf(s) ?? []), s.pose.pivot.x, s.centre.y / s.pose.wheelbase],
    before,
    after,
  );
}

/**
 * What pulls on arm and wheel for a thrust at the patch, and its lever about the pivot: the upper run, or a torque arm,
 * which is as far from the axle as `aboutAxle` says. null where the swingarm holds all.
 */
function pullOf({ machine, pullLever, torqueHold }: Stance): [pull: number, lever: number] | null {
  if (torqueHold !== null) return [machine.rearRadius / torqueHold.aboutAxle, torqueHold.aboutPivot];
  return hasRuns(machine.driveKind) ? [machine.rearRadius / machine.rearSprocketRadius, pullLever] : null;
}
