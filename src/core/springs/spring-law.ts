/** The force of a whole end's springs over its own stroke: coil, top-out spring and bump stop together. */
import { refuse } from '../numeric/refusal.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { Coil } from '../standing/spring-set.ts';

/** All springs of one end as one, mm and N, stroke measured from full extension. */
export interface SpringLaw {
  readonly ok: true;
  /** N/mm, all legs or shocks together. */
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
}

/** Powers beyond these are no rubber and no oil lock. */
const LEAST_EXPONENT = 1;
const MOST_EXPONENT = 10;

/** A stroke or travel shorter than this is none, mm. */
export const LEAST_STROKE = 0.1;

/** Beyond this no number belongs to a motorcycle's springs, in mm and N/mm, and far beyond it forces overflow. */
const LARGEST = 1e6;

/** More legs or shocks than this no bike has. */
const MOST_SPRINGS = 4;

/**
 * The springs of one end over `stroke` mm, `count` of them side by side. Refused with the number in the way: a
 * rate of zero or less, no stroke, preload that already closes the coils, a bump stop or top-out spring that lies
 * outside the stroke. Coils that close before the stroke is used up are no error: they end the stroke.
 */
export function springLaw(
  coil: Coil,
  count: number,
  stroke: number,
  end: 'front' | 'rear',
): SpringLaw | NoEquilibrium {
  const { rate, preload, springTravel, topOut, bump } = coil;
  if (!(Number.isInteger(count) && count >= 1 && count <= MOST_SPRINGS))
    return refuse('springCountImpossible', { end, found: count, limit: MOST_SPRINGS });
  const numbers = [stroke, ...numbersIn(coil), ...numbersIn(topOut), ...numbersIn(bump)];
  if (!numbers.every(Number.isFinite)) return refuse('inputNotANumber', { end });
  const tooLarge = numbers.find((number) => Math.abs(number) > LARGEST);
  if (tooLarge !== undefined) return refuse('inputTooLarge', { end, found: tooLarge, limit: LARGEST });
  if (stroke < LEAST_STROKE) return refuse('noStroke', { end, found: stroke, limit: LEAST_STROKE });
  const leastRate = Math.min(rate, topOut?.rate ?? rate, bump?.rate ?? rate);
  if (leastRate <= 0) return refuse('rateNotAboveZero', { end, found: leastRate, limit: 0 });
  if (springTravel !== null && preload > springTravel - LEAST_STROKE)
    return refuse('preloadBeyondSpring', { end, found: preload, limit: springTravel });
  if (topOut !== null && !(topOut.length > 0 && topOut.length <= stroke))
    return refuse('topOutImpossible', { end, found: topOut.length, limit: stroke });
  if (bump !== null) {
    if (!(bump.startsAt >= 0 && bump.startsAt <= stroke - LEAST_STROKE))
      return refuse('bumpStopImpossible', { end, found: bump.startsAt, limit: stroke });
    if (!(bump.exponent >= LEAST_EXPONENT && bump.exponent <= MOST_EXPONENT))
      return refuse('bumpStopImpossible', {
        end,
        found: bump.exponent,
        limit: bump.exponent > MOST_EXPONENT ? MOST_EXPONENT : LEAST_EXPONENT,
      });
  }
  const untilCoils = springTravel === null ? Infinity : springTravel - preload;
  const bumpDepth = bump === null ? 0 : stroke - bump.startsAt;
  return {
    ok: true,
    rate: count * rate,
    preload,
    topOutRate: topOut === null ? 0 : count * topOut.rate,
    topOutLength: topOut === null ? 0 : topOut.length,
    bumpStart: bump === null ? Infinity : bump.startsAt,
    bumpDepth,
    bumpForce: bump === null ? 0 : count * bump.rate * bumpDepth,
    bumpExponent: bump === null ? 1 : bump.exponent,
    stroke: Math.min(stroke, untilCoils),
    coilsEnd: untilCoils < stroke,
  };
}

function numbersIn(part: object | null): number[] {
  return Object.values(part ?? {}).filter((value): value is number => typeof value === 'number');
}

/** Force of everything but the coil spring at a stroke, N, pushing the end out; the top-out spring pulls it in. */
export function besidesCoil(law: SpringLaw, at: number): number {
  let force = 0;
  if (at < law.topOutLength) force -= law.topOutRate * (law.topOutLength - at);
  if (at > law.bumpStart) force += law.bumpForce * ((at - law.bumpStart) / law.bumpDepth) ** law.bumpExponent;
  return force;
}

/**
 * Force of the end's springs at a stroke, N, along the legs or the shock, positive pushing the end out. Below zero
 * a top-out spring holds it in. Stops are not springs: what they hold is the balance's to say.
 */
export function springForce(law: SpringLaw, at: number): number {
  return law.rate * Math.max(0, law.preload + at) + besidesCoil(law, at);
}

/** Rate of the end's springs at a stroke, N/mm: the slope of `springForce`, at a kink that of pressing further. */
export function springRate(law: SpringLaw, at: number): number {
  let rate = law.preload + at >= 0 ? law.rate : 0;
  if (at < law.topOutLength) rate += law.topOutRate;
  if (at >= law.bumpStart) {
    const part = (at - law.bumpStart) / law.bumpDepth;
    rate += ((law.bumpForce * law.bumpExponent) / law.bumpDepth) * part ** (law.bumpExponent - 1);
  }
  return rate;
}
