/** The force of a whole end over its stroke: main springs, air, top-out springs and bump stops together. */
import { refuse } from '../numeric/refusal.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { Coil, MainSupport } from '../standing/spring-set.ts';
import { airChambers, airForce, airRate, type AirChamber } from './air-chamber.ts';
import { mainForce, mainRate, mainSpring, type CurvedSpring } from './main-spring.ts';

/** All springs of one end as one, mm and N, stroke measured from full extension. */
export interface SpringLaw {
  readonly ok: true;
  /** Straight main springs alike, N/mm, all legs or shocks together; zero where there are none. */
  readonly rate: number;
  readonly preload: number;
  readonly topOutRate: number;
  readonly topOutLength: number;
  readonly bumpStart: number;
  readonly bumpDepth: number;
  /** Force fully pressed, N. */
  readonly bumpForce: number;
  readonly bumpExponent: number;
  /** The stroke there is before metal meets metal or coil meets coil, mm. */
  readonly stroke: number;
  /** Whether it is the coils that end it. */
  readonly coilsEnd: boolean;
  /** The main springs that are not straight, or are in one of two unlike legs; null where there are none. */
  readonly curved: CurvedSpring | null;
  /** The main spring of the other leg, where the legs are unlike and it holds one. */
  readonly other: CurvedSpring | null;
  /** Null where the air is not counted. */
  readonly air: readonly AirChamber[] | null;
}

/** Powers beyond these are no rubber and no oil lock. */
const LEAST_EXPONENT = 1;
const MOST_EXPONENT = 10;

/** A stroke or travel shorter than this counts as none, mm. */
export const LEAST_STROKE = 0.1;

/** Beyond this no number belongs to a motorcycle's springs, in mm and N/mm, and far beyond it forces overflow. */
const LARGEST = 1e6;

/** A straight spring closes where its travel says, and nowhere by its rate. */
const STRAIGHT = { ok: true, spring: null, closesAt: Infinity } as const;

/** More legs or shocks than this no bike has. */
const MOST_SPRINGS = 4;

/**
 * The springs of one end over `stroke` mm, `count` of them side by side; with an `other` leg the first counts once and
 * the other leg beside it. Refused with the number in the way: a rate of zero or less, no stroke, preload that already
 * closes the coils, a bump stop or top-out spring that lies outside the stroke, and what `mainSpring` and `airChambers`
 * refuse. Coils that close before the stroke is used up are no error: they end the stroke.
 */
export function springLaw(
  coil: Coil,
  count: number,
  stroke: number,
  end: 'front' | 'rear',
  other: MainSupport | null = null,
): SpringLaw | NoEquilibrium {
  const { topOut, bump } = coil;
  if (!(Number.isInteger(count) && count >= 1 && count <= MOST_SPRINGS))
    return refuse('springCountImpossible', { end, found: count, limit: MOST_SPRINGS });
  const wrong = wrongIn(other, wrongIn(coil, wrongIs(stroke, null)));
  if (Number.isNaN(wrong)) return refuse('inputNotANumber', { end });
  if (wrong !== null) return refuse('inputTooLarge', { end, found: wrong, limit: LARGEST });
  if (stroke < LEAST_STROKE) return refuse('noStroke', { end, found: stroke, limit: LEAST_STROKE });
  const straight = coil.spring.kind === 'oneRate' && other === null;
  const rate = straight ? coil.rate : Infinity;
  const leastRate = Math.min(rate, topOut?.rate ?? rate, bump?.rate ?? rate);
  if (leastRate <= 0) return refuse('rateNotAboveZero', { end, found: leastRate, limit: 0 });
  const wrongStop = stopWrong(coil, stroke, end);
  if (wrongStop !== null) return wrongStop;

  const legs =
    other === null ? [{ leg: coil, alike: count }] : [coil, other].map((leg) => ({ leg, alike: 1 }));
  let curved: CurvedSpring | null = null;
  let otherSpring: CurvedSpring | null = null;
  let untilCoils = Infinity;
  for (const { leg, alike } of legs) {
    const made = straight ? STRAIGHT : mainSpring(leg, alike, end);
    if (made === null) continue;
    if (!made.ok) return ofLeg(made, leg === coil);
    const closesAt = Math.min(leg.springTravel ?? Infinity, made.closesAt);
    if (leg.preload > closesAt - LEAST_STROKE)
      return ofLeg(refuse('preloadBeyondSpring', { end, found: leg.preload, limit: closesAt }), leg === coil);
    untilCoils = Math.min(untilCoils, closesAt - leg.preload);
    if (leg === coil) curved = made.spring;
    else otherSpring = made.spring;
  }
  const reach = Math.min(stroke, untilCoils);
  const air: AirChamber[] = [];
  for (const { leg, alike } of legs) {
    if (leg.air === null) continue;
    const made = airChambers(leg.air, alike, stroke, reach, end);
    if (!made.ok) return ofLeg(made, leg === coil);
    air.push(...made.chambers);
  }
  if (!straight && curved === null && otherSpring === null && air.length === 0)
    return refuse('nothingHolds', { end });

  const bumpDepth = bump === null ? 0 : stroke - bump.startsAt;
  return {
    ok: true,
    rate: straight ? count * coil.rate : 0,
    preload: coil.preload,
    topOutRate: topOut === null ? 0 : count * topOut.rate,
    topOutLength: topOut === null ? 0 : topOut.length,
    bumpStart: bump === null ? Infinity : bump.startsAt,
    bumpDepth,
    bumpForce: bump === null ? 0 : count * bump.rate * bumpDepth,
    bumpExponent: bump === null ? 1 : bump.exponent,
    stroke: reach,
    coilsEnd: untilCoils < stroke,
    curved,
    other: otherSpring,
    air: air.length === 0 ? null : air,
  };
}

/** A refusal with the leg it is about, where that is the one unlike the first. */
function ofLeg(no: NoEquilibrium, isFirst: boolean): NoEquilibrium {
  return isFirst ? no : { ...no, leg: 'other' };
}

/** What is wrong with the top-out spring or the bump stop; null when nothing is. */
function stopWrong({ topOut, bump }: Coil, stroke: number, end: 'front' | 'rear'): NoEquilibrium | null {
  if (topOut !== null && !(topOut.length > 0 && topOut.length <= stroke))
    return refuse('topOutImpossible', { end, found: topOut.length, limit: stroke });
  if (bump === null) return null;
  if (!(bump.startsAt >= 0 && bump.startsAt <= stroke - LEAST_STROKE))
    return refuse('bumpStopImpossible', { end, found: bump.startsAt, limit: stroke });
  if (!(bump.exponent >= LEAST_EXPONENT && bump.exponent <= MOST_EXPONENT))
    return refuse('bumpStopImpossible', {
      end,
      found: bump.exponent,
      limit: bump.exponent > MOST_EXPONENT ? MOST_EXPONENT : LEAST_EXPONENT,
    });
  return null;
}

/** NaN where a part, or a part in it, holds one; else the first that is too large; else `before`. */
function wrongIn(part: object | null, before: number | null): number | null {
  let wrong = before;
  for (const key in part) {
    const value = (part as Readonly<Record<string, unknown>>)[key];
    if (typeof value === 'number') wrong = wrongIs(value, wrong);
    else if (typeof value === 'object') wrong = wrongIn(value, wrong);
  }
  return wrong;
}

function wrongIs(value: number, before: number | null): number | null {
  if (!Number.isFinite(value)) return NaN;
  return before === null && Math.abs(value) > LARGEST ? value : before;
}

/**
 * Force at a stroke of everything but the main springs alike, N, pushing the end out: air, an unlike leg’s spring, bump
 * stop, and the top-out spring, which pulls it in.
 */
export function besidesMain(law: SpringLaw, at: number): number {
  let force = 0;
  if (at < law.topOutLength) force -= law.topOutRate * (law.topOutLength - at);
  if (at > law.bumpStart) force += law.bumpForce * ((at - law.bumpStart) / law.bumpDepth) ** law.bumpExponent;
  if (law.air !== null) for (const chamber of law.air) force += airForce(chamber, at);
  if (law.other !== null) force += mainForce(law.other, at);
  return force;
}

/**
 * Force of the end's springs and air at a stroke, N, along the legs or the shock, positive pushing the end out. Below
 * zero a top-out spring or a balance chamber holds it in. Stops are not springs: what they hold is the balance's to say.
 */
export function springForce(law: SpringLaw, at: number): number {
  const force = law.rate * Math.max(0, law.preload + at) + besidesMain(law, at);
  return law.curved === null ? force : force + mainForce(law.curved, at);
}

/** Rate of the end's springs and air at a stroke, N/mm: the slope of `springForce`, at a kink that of pressing further. */
export function springRate(law: SpringLaw, at: number): number {
  let rate = law.preload + at >= 0 ? law.rate : 0;
  if (at < law.topOutLength) rate += law.topOutRate;
  if (at >= law.bumpStart) {
    const part = (at - law.bumpStart) / law.bumpDepth;
    rate += ((law.bumpForce * law.bumpExponent) / law.bumpDepth) * part ** (law.bumpExponent - 1);
  }
  if (law.curved !== null) rate += mainRate(law.curved, at);
  if (law.other !== null) rate += mainRate(law.other, at);
  if (law.air !== null) for (const chamber of law.air) rate += airRate(chamber, at);
  return rate;
}
