/** Springs for a wanted sag: what gives it at each end, and the best of the rates at hand. */
import { refuse } from '../numeric/refusal.ts';
import { alone } from './loads.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { sag } from './ride-changes.ts';
import { AT_REST } from './equilibrium/ride-forces.ts';
import { airForce, pressureFor } from '../springs/air-chamber.ts';
import { pressedBy } from '../springs/main-spring.ts';
import { besidesMain } from '../springs/spring-law.ts';
import { NEWTON_A_SQUARE_MM_PER_BAR } from '../units/convert.ts';
import type { MainSupport, SpringSet } from '../standing/spring-set.ts';
import { sprungMachine, type SprungMachine } from '../springs/sprung-machine.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';
import { standOnTyres } from './equilibrium/tyre-sink.ts';
import { steadyLoads, type SteadyLoads } from './equilibrium/steady-loads.ts';

/** Sag wanted at both ends, mm from hanging: by the bike's own weight, and with rider and load. */
export interface SagWish {
  readonly free: Travel;
  readonly rider: Travel;
}

export interface CoilAdvice {
  /** N/mm of one leg's or one shock's coil. */
  readonly rate: number;
  /** N/mm of the coil in the other fork leg where it is not the same; left out where both are. */
  readonly otherRate?: number;
  /** mm; below zero the spring would have to stand loose at full extension. */
  readonly preload: number;
}

/**
 * What gives the sag at one end: rate and preload of a spring with one rate give both sags; of any other spring the
 * preload, and of air alone the pressure, give the rider sag, and the free sag follows.
 */
export type EndAdvice =
  | ({ readonly kind: 'coil' } & CoilAdvice)
  | { readonly kind: 'preload'; readonly preload: number }
  /** As a gauge shows it, bar. */
  | { readonly kind: 'pressure'; readonly pressure: number };

export interface SpringAdvice {
  readonly ok: true;
  readonly front: EndAdvice;
  readonly rear: EndAdvice;
  /** The bike so set. */
  readonly sprung: SprungMachine;
}

/** Top-out springs move where a wheel hangs, and with it the sag: the coils are sought again until it stays, mm. */
const HANGING_TOLERANCE = 1e-7;
const MOST_ROUNDS = 60;

/** What the main springs alike of both ends have to carry at a travel, N, and how far they are pressed beyond preload, mm. */
interface Asked {
  readonly ok: true;
  readonly frontForce: number;
  readonly frontStroke: number;
  readonly rearForce: number;
  readonly rearStroke: number;
}

interface Carried {
  readonly ok: true;
  readonly on: Stance;
  readonly loads: SteadyLoads;
}

function askedOfCoils(sprung: SprungMachine, travel: Travel): Asked | NoEquilibrium {
  const stood = standOnTyres<Carried>(sprung, ({ machine }) => {
    const on = stance(machine, travel);
    if (!on.ok) return on;
    const loads = steadyLoads(on, AT_REST, sprung.brake);
    return loads.ok ? { ok: true, on, loads } : loads;
  });
  if (!stood.ok) return stood;
  const { on, loads } = stood;
  const atShock = (loads.rearPush * on.pose.pivot.x) / on.arm.lever;
  return {
    ok: true,
    frontForce: loads.frontPush - besidesMain(sprung.fork, travel.front),
    frontStroke: travel.front,
    rearForce: atShock - besidesMain(sprung.shock, on.arm.shockStroke),
    rearStroke: on.arm.shockStroke,
  };
}

function beyond(hanging: Travel, sagged: Travel): Travel {
  return { front: hanging.front + sagged.front, rear: hanging.rear + sagged.rear };
}

/** The same bike with both ends set so; everything else of its springs stays. */
function withAdvice(sprung: SprungMachine, front: EndAdvice, rear: EndAdvice): SprungMachine | NoEquilibrium {
  const { fork, shock } = sprung.springs;
  const springs: SpringSet = {
    fork: { ...fork, ...setTo(fork, front) },
    shock: { ...shock, ...setTo(shock, rear) },
  };
  return sprungMachine(sprung.machine, springs, sprung.brake);
}

function setTo(end: MainSupport, advice: EndAdvice): Partial<MainSupport> {
  if (advice.kind === 'coil')
    return { rate: meanRate(advice), preload: advice.preload, spring: { kind: 'oneRate' } };
  if (advice.kind === 'preload') return { preload: advice.preload };
  const pressure = advice.pressure * NEWTON_A_SQUARE_MM_PER_BAR;
  return end.air === null ? {} : { air: { ...end.air, pressure } };
}

type Coils = Pick<CoilAdvice, 'rate' | 'otherRate'>;

/** Two legs pressed alike push as if each held a spring of their mean rate. */
function meanRate({ rate, otherRate = rate }: Coils): number {
  return (rate + otherRate) / 2;
}

/** Springs alike that the rate and preload of an end set. */
function springsAlike({ springs: { fork, shock } }: SprungMachine, end: 'front' | 'rear'): number {
  if (end === 'rear') return shock.shocks;
  return fork.otherLeg === null ? fork.legs : 1;
}

/**
 * What of both ends gives the free and the rider sag wanted. Closed form: the loads at the two wanted postures tell the
 * force each spring has there; two forces at two strokes make a straight rate, and the second alone makes the preload of
 * another spring, or the pressure of air alone. No answer when rider sag is not more than free sag, when it lies beyond
 * the travel, or when the load at the second is not more than at the first (`sagImpossible`, with the rate in the way).
 */
export function springsForSag(sprung: SprungMachine, wish: SagWish): SpringAdvice | NoEquilibrium {
  let now = sprung;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const free = askedOfCoils(alone(now), beyond(now.hanging, wish.free));
    if (!free.ok) return free;
    const rider = askedOfCoils(now, beyond(now.hanging, wish.rider));
    if (!rider.ok) return rider;
    const front = adviceFor(now, 'front', free, rider);
    if ('reason' in front) return front;
    const rear = adviceFor(now, 'rear', free, rider);
    if ('reason' in rear) return rear;
    const next = withAdvice(now, front, rear);
    if (!next.ok) return next;
    const drift = Math.max(
      Math.abs(next.hanging.front - now.hanging.front),
      Math.abs(next.hanging.rear - now.hanging.rear),
    );
    if (drift <= HANGING_TOLERANCE) return { ok: true, front, rear, sprung: next };
    now = next;
  }
  return refuse('notConverged', { limit: HANGING_TOLERANCE });
}

function adviceFor(
  sprung: SprungMachine,
  end: 'front' | 'rear',
  free: Asked,
  rider: Asked,
): EndAdvice | NoEquilibrium {
  const law = end === 'front' ? sprung.fork : sprung.shock;
  const { spring, air } = end === 'front' ? sprung.springs.fork : sprung.springs.shock;
  const [freeForce, freeStroke, force, stroke] =
    end === 'front'
      ? [free.frontForce, free.frontStroke, rider.frontForce, rider.frontStroke]
      : [free.rearForce, free.rearStroke, rider.rearForce, rider.rearStroke];
  const impossible = (found: number): NoEquilibrium => refuse('sagImpossible', { end, found, limit: 0 });
  if (spring.kind === 'oneRate') {
    const total = (force - freeForce) / (stroke - freeStroke);
    if (!(total > 0 && stroke > freeStroke && Number.isFinite(total))) return impossible(total);
    const rate = total / springsAlike(sprung, end);
    return { kind: 'coil', rate, preload: freeForce / total - freeStroke };
  }
  if (law.curved !== null) {
    const pressed = pressedBy(law.curved, force);
    return pressed === null ? impossible(force) : { kind: 'preload', preload: pressed - stroke };
  }
  // The first chamber is the one whose pressure the adjuster sets, where the first leg has air.
  const main = air === null ? undefined : law.air?.[0];
  const pressure = main === undefined ? null : pressureFor(main, force + airForce(main, stroke), stroke);
  return pressure === null
    ? impossible(force)
    : { kind: 'pressure', pressure: pressure / NEWTON_A_SQUARE_MM_PER_BAR };
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

/** The rates to try: each alone and, in a fork with two legs alike, each with the next stiffer one in the other leg. */
function coilsToTry(sprung: SprungMachine, end: 'front' | 'rear', rates: readonly number[]): Coils[] {
  const { legs, otherLeg } = sprung.springs.fork;
  const alike = rates.map((rate) => ({ rate }));
  if (end === 'rear' || legs !== 2 || otherLeg !== null) return alike;
  const inOrder = rates.filter((rate) => rate > 0 && Number.isFinite(rate)).sort((a, b) => a - b);
  return [...alike, ...inOrder.slice(1).map((otherRate, i) => ({ rate: inOrder[i], otherRate }))];
}

/**
 * Of the rates at hand for one end, each with the preload that gives the rider sag wanted, the one that comes
 * nearest to the wanted free sag. A fork with two legs alike can also take two neighbouring rates, one in each leg,
 * which push as a pair of their mean. No answer when none of them can give the rider sag within the adjuster's range.
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
  const count = springsAlike(sprung, end);
  const choices: RateChoice[] = [];
  const refused: { rate: number; why: NoEquilibrium }[] = [];
  for (const coils of coilsToTry(sprung, end, atHand.rates)) {
    const { rate } = coils;
    if (!(rate > 0 && Number.isFinite(rate))) {
      refused.push({ rate, why: refuse('rateNotAboveZero', { end, found: rate, limit: 0 }) });
      continue;
    }
    const coil: CoilAdvice = { ...coils, preload: force / (count * meanRate(coils)) - stroke };
    const set: EndAdvice = { kind: 'coil', ...coil };
    const bike = withAdvice(sprung, end === 'front' ? set : advice.front, end === 'rear' ? set : advice.rear);
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
