/** Springs for a wanted sag: the exact rate and preload at each end, and the best of the rates at hand. */
import { refuse } from '../numeric/refusal.ts';
import { alone } from './loads.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { sag } from './ride-changes.ts';
import { AT_REST } from './ride-forces.ts';
import { besidesCoil } from '../springs/spring-law.ts';
import type { SpringSet } from '../standing/spring-set.ts';
import { sprungMachine, type SprungMachine } from '../springs/sprung-machine.ts';
import { stance, type Travel } from '../standing/stance.ts';
import { steadyLoads } from './steady-loads.ts';

/** Sag wanted at both ends, mm from hanging: by the bike's own weight, and with rider and load. */
export interface SagWish {
  readonly free: Travel;
  readonly rider: Travel;
}

export interface CoilAdvice {
  /** N/mm of one leg's or one shock's coil. */
  readonly rate: number;
  /** mm; below zero the spring would have to stand loose at full extension. */
  readonly preload: number;
}

export interface SpringAdvice {
  readonly ok: true;
  readonly front: CoilAdvice;
  readonly rear: CoilAdvice;
  /** The bike with these coils in it. */
  readonly sprung: SprungMachine;
}

/** Top-out springs move where a wheel hangs, and with it the sag: the coils are sought again until it stays, mm. */
const HANGING_TOLERANCE = 1e-7;
const MOST_ROUNDS = 60;

/** What the coils of both ends have to carry at a travel, N, and how far each spring is pressed beyond its preload, mm. */
interface Asked {
  readonly ok: true;
  readonly frontForce: number;
  readonly frontStroke: number;
  readonly rearForce: number;
  readonly rearStroke: number;
}

function askedOfCoils(sprung: SprungMachine, travel: Travel): Asked | NoEquilibrium {
  const on = stance(sprung.machine, travel);
  if (!on.ok) return on;
  const loads = steadyLoads(on, AT_REST, sprung.brake);
  if (!loads.ok) return loads;
  const atShock = (loads.rearPush * on.pose.pivot.x) / on.arm.lever;
  return {
    ok: true,
    frontForce: loads.frontPush - besidesCoil(sprung.fork, travel.front),
    frontStroke: travel.front,
    rearForce: atShock - besidesCoil(sprung.shock, on.arm.shockStroke),
    rearStroke: on.arm.shockStroke,
  };
}

function beyond(hanging: Travel, sagged: Travel): Travel {
  return { front: hanging.front + sagged.front, rear: hanging.rear + sagged.rear };
}

/** The same bike with other coils; everything else of its springs stays. */
function withCoils(
  sprung: SprungMachine,
  front: CoilAdvice,
  rear: CoilAdvice,
): SprungMachine | NoEquilibrium {
  const springs: SpringSet = {
    fork: { ...sprung.springs.fork, rate: front.rate, preload: front.preload },
    shock: { ...sprung.springs.shock, rate: rear.rate, preload: rear.preload },
  };
  return sprungMachine(sprung.machine, springs, sprung.brake);
}

/**
 * The rate and preload of both ends that give exactly the free and the rider sag wanted. Closed form: the loads at
 * the two wanted postures tell the force each coil has there; two forces at two strokes make a straight rate.
 * No answer when rider sag is not more than free sag, when it lies beyond the travel, or when the load at the
 * second is not more than at the first (`sagImpossible`, with the rate in the way).
 */
export function springsForSag(sprung: SprungMachine, wish: SagWish): SpringAdvice | NoEquilibrium {
  let now = sprung;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const free = askedOfCoils(alone(now), beyond(now.hanging, wish.free));
    if (!free.ok) return free;
    const rider = askedOfCoils(now, beyond(now.hanging, wish.rider));
    if (!rider.ok) return rider;
    const front = coilThrough(
      free.frontForce,
      free.frontStroke,
      rider.frontForce,
      rider.frontStroke,
      now.springs.fork.legs,
    );
    if (front.rate === null) return refuse('sagImpossible', { end: 'front', found: front.total, limit: 0 });
    const rear = coilThrough(
      free.rearForce,
      free.rearStroke,
      rider.rearForce,
      rider.rearStroke,
      now.springs.shock.shocks,
    );
    if (rear.rate === null) return refuse('sagImpossible', { end: 'rear', found: rear.total, limit: 0 });
    const advice = {
      front: { rate: front.rate, preload: front.preload },
      rear: { rate: rear.rate, preload: rear.preload },
    };
    const next = withCoils(now, advice.front, advice.rear);
    if (!next.ok) return next;
    const drift = Math.max(
      Math.abs(next.hanging.front - now.hanging.front),
      Math.abs(next.hanging.rear - now.hanging.rear),
    );
    if (drift <= HANGING_TOLERANCE) return { ok: true, ...advice, sprung: next };
    now = next;
  }
  return refuse('notConverged', { limit: HANGING_TOLERANCE });
}

function coilThrough(
  freeForce: number,
  freeStroke: number,
  riderForce: number,
  riderStroke: number,
  count: number,
): { readonly rate: number | null; readonly total: number; readonly preload: number } {
  const total = (riderForce - freeForce) / (riderStroke - freeStroke);
  if (!(total > 0 && riderStroke > freeStroke && Number.isFinite(total)))
    return { rate: null, total, preload: 0 };
  return { rate: total / count, total, preload: freeForce / total - freeStroke };
}

/** The rates a user keeps for one end, and its preload adjuster. */
export interface RatesAtHand {
  readonly rates: readonly number[];
  /** The adjuster's range, mm of preload. */
  readonly leastPreload: number;
  readonly mostPreload: number;
  /** Preload per turn of the adjuster, mm; null when it has no thread. */
  readonly thread: number | null;
}

export interface RateChoice extends CoilAdvice {
  /** Turns of the adjuster in from no preload; null without a thread. */
  readonly turns: number | null;
  /** Whether the adjuster reaches the preload. */
  readonly inRange: boolean;
  /** Sag this choice gives at its end, mm; the other end on the exact springs. */
  readonly freeSag: number;
  readonly riderSag: number;
}

export interface RateChoices {
  readonly ok: true;
  /** The choice in range whose free sag comes nearest to the wanted one. */
  readonly best: RateChoice;
  /** All that were tried, nearest free sag first, and those that cannot be used, with why. */
  readonly choices: readonly RateChoice[];
  readonly refused: readonly { readonly rate: number; readonly why: NoEquilibrium }[];
}

/**
 * Of the rates at hand for one end, each with the preload that gives the rider sag wanted, the one that comes
 * nearest to the wanted free sag. No answer when none of them can give the rider sag within the adjuster's range.
 */
export function pickRate(
  advice: SpringAdvice,
  wish: SagWish,
  end: 'front' | 'rear',
  atHand: RatesAtHand,
): RateChoices | NoEquilibrium {
  const { sprung } = advice;
  const asked = askedOfCoils(sprung, beyond(sprung.hanging, wish.rider));
  if (!asked.ok) return asked;
  const force = end === 'front' ? asked.frontForce : asked.rearForce;
  const stroke = end === 'front' ? asked.frontStroke : asked.rearStroke;
  const count = end === 'front' ? sprung.springs.fork.legs : sprung.springs.shock.shocks;
  const choices: RateChoice[] = [];
  const refused: { rate: number; why: NoEquilibrium }[] = [];
  for (const rate of atHand.rates) {
    if (!(rate > 0 && Number.isFinite(rate))) {
      refused.push({ rate, why: refuse('rateNotAboveZero', { end, found: rate, limit: 0 }) });
      continue;
    }
    const coil: CoilAdvice = { rate, preload: force / (count * rate) - stroke };
    const bike = withCoils(
      sprung,
      end === 'front' ? coil : advice.front,
      end === 'rear' ? coil : advice.rear,
    );
    const sits = bike.ok ? sag(bike) : bike;
    if (!sits.ok) {
      refused.push({ rate, why: sits });
      continue;
    }
    choices.push({
      ...coil,
      turns: atHand.thread === null ? null : preloadTurns(coil.preload, atHand.thread),
      inRange: coil.preload >= atHand.leastPreload && coil.preload <= atHand.mostPreload,
      freeSag: sits.free[end],
      riderSag: sits.rider[end],
    });
  }
  const miss = (choice: RateChoice): number => Math.abs(choice.freeSag - wish.free[end]);
  choices.sort((a, b) => miss(a) - miss(b));
  const best = choices.find((choice) => choice.inRange);
  if (best === undefined) return refuse('noRateFits', { end });
  return { ok: true, best, choices, refused };
}

/**
 * Turns of a preload adjuster that give `preload` mm at `thread` mm a turn; null where the thread is none.
 * Example: preload 6 mm, thread 1.5 mm → 4.
 */
export function preloadTurns(preload: number, thread: number): number | null {
  return thread > 0 && Number.isFinite(preload / thread) ? preload / thread : null;
}
