/** The figures with which another kind of spring, or air, begins on the page: they work, and stand until a person gives better ones. */
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import type { Air, MainSpring, Support } from '../parts/support.ts';
import { springSetOf } from '../standing/spring-set.ts';
import { NEWTON_A_SQUARE_MM_PER_BAR } from '../units/convert.ts';
import { airChambers, pressureFor } from './air-chamber.ts';

/** N/mm where the rate is not known yet. */
const RATE = { fork: 10, shock: 100 };
/** Common sizes of a fork leg and of a small air shock, mm. */
const TUBE = { fork: 43, shock: 46 };
/** A common choice between air that keeps its temperature and air that gives off no heat; from memory. */
const EXPONENT = 1.3;
/** The stroke at which air alone begins by holding what the spring held, as a part of the whole. */
const MIDDLE = 1 / 3;
/** An other spring in series begins so much stiffer, a second rate so much stiffer than the first. */
const STIFFER_IN_SERIES = 3;
const SECOND_STIFFER = 1.3;
const TENTH = 10;

const rounded = (value: number): number => Math.round(value * TENTH) / TENTH;

/** Air by common sizes, without a balance chamber. */
export function startingAir(of: 'fork' | 'shock'): Air {
  return { bore: TUBE[of], slidingTube: TUBE[of], exponent: EXPONENT, steelVolume: 0, balance: null };
}

export interface Starting {
  readonly support: Support;
  /** For the air, bar; null where its pressure stays as it is set. */
  readonly pressure: number | null;
}

/**
 * A kind of spring with figures near those of the spring that the bike has now, its air kept. Air alone begins with the
 * pressure that holds at a third of the stroke what that spring held there.
 */
export function startingSupport(
  kind: MainSpring['kind'],
  of: 'fork' | 'shock',
  bike: Bike,
  setup: Setup,
): Starting {
  const { fork, shock } = springSetOf(bike, setup);
  const { rate: known, preload } = of === 'fork' ? fork : shock;
  const stroke = of === 'fork' ? bike.fork.travel : shock.fullLength - shock.closedLength;
  const rate = known > 0 ? known : RATE[of];
  const air = bike[of].support?.air ?? null;
  if (kind !== 'none')
    return { support: { spring: startingSpring(kind, rate, preload, stroke), air }, pressure: null };
  const alone = air ?? startingAir(of);
  const gap = of === 'fork' ? setup.forkAirGap : setup.shockAirGap;
  const filled = { ...alone, gap, pressure: 0, steelVolume: 0, balance: null };
  const chambers = airChambers(filled, 1, stroke, stroke, of === 'fork' ? 'front' : 'rear');
  const main = chambers.ok ? chambers.chambers[0] : null;
  const at = stroke * MIDDLE;
  const found = main === null ? null : pressureFor(main, rate * Math.max(0, preload + at), at);
  return {
    support: { spring: { kind }, air: alone },
    pressure: found === null ? null : rounded(found / NEWTON_A_SQUARE_MM_PER_BAR),
  };
}

function startingSpring(
  kind: Exclude<MainSpring['kind'], 'none'>,
  rate: number,
  preload: number,
  stroke: number,
): MainSpring {
  switch (kind) {
    case 'oneRate':
      return { kind };
    case 'inSeries':
      return { kind, otherRate: rounded(STIFFER_IN_SERIES * rate), firstCloses: null, otherCloses: null };
    case 'twoRates':
      return {
        kind,
        secondRate: rounded(SECOND_STIFFER * rate),
        changeover: Math.round(Math.max(0, preload) + stroke / 2),
      };
    case 'table':
      return { kind, rows: startingRows(rate, Math.max(0, preload) + stroke) };
  }
}

/** Three rows of a straight spring over all that it is pressed. */
function startingRows(rate: number, whole: number): { pressed: number; force: number }[] {
  return [0, Math.round(whole / 2), Math.round(whole)].map((pressed) => ({
    pressed,
    force: Math.round(rate * pressed),
  }));
}
