/** How surely a measured bike stands where springs carry it: by its measurements, and by how far springs that nobody measured move it from there. */
import type { Setup } from '../../adjusters/setup.ts';
import { standBike, standRide, type StandingBike } from '../../riding/stand-bike.ts';
import type { RideStateKey } from '../../riding/states/all-ride-states.ts';
import { machine } from '../../standing/machine.ts';
import type { Travel } from '../../standing/stance.ts';
import { measureStateOf } from '../held/all-measure-states.ts';
import { buildBike } from '../held/build-bike.ts';
import { slopeOf, type Figures } from './figure-spreads.ts';
import type { Fit } from '../fit-values.ts';
import { postureOf, type Posture } from '../held/hold-bike.ts';
import type { StartingBike } from '../held/starting-bike.ts';
import { sunkAs, withOtherSprings } from '../measured-readings.ts';
import type { SuspensionSetting } from '../held/measure-state.ts';
import { moved } from '../row-figures.ts';
import { setupAs } from '../held/setup-as.ts';
import { SPRING_DOUBT } from './spring-doubt.ts';
import { isOfPhoto, standIn, type TyreSinks } from '../held/unknowns.ts';

/** What no row fixes is taken to be that of the starting bike to so many mm, thousandths of a radian or kg (1 σ). */
const START_DOUBT = 25;
/** Step of the differences, mm or mrad. */
const STEP = 0.05;
/** Half of what is unsure, each way: a central difference over the whole. */
const HALF = 0.5;
/** A figure read with the springs let go may differ so far from that on its springs, as a part of it. */
const SAME = 1e-6;
/** A change by other springs at the same travel below this part of the figure is rounding. */
const ROUNDING = 1e-8;

interface SpringsAsked {
  readonly start: StartingBike;
  readonly ride: RideStateKey;
  readonly setups: readonly Setup[];
  /** Figures of the bike as it stands with each of these setups, null where it does not. */
  readonly read: (stood: readonly (StandingBike | null)[]) => Figures;
}

interface SpringFigure {
  readonly value: number | null;
  /** Standard deviation; null where most of it would come from what no row fixes. */
  readonly u: number | null;
}

/** How far each end is off from where the springs are taken to hold it, standard deviations of each cause. */
interface Astray {
  readonly by: 'springs' | 'start';
  readonly end: keyof Travel;
  readonly much: number;
}

const ENDS = ['front', 'rear'] as const;
const asBuilt = (built: StartingBike): StartingBike => built;

/**
 * Figures in a ride state that springs carry, each with its standard deviation. The bike is held at the travel that its
 * springs give. What it was measured by carries the fit's covariance; from the posture that was measured each end moves by
 * the springs, which adds SPRING_DOUBT of that way. Where a rider's weight was measured too, the way begins there.
 */
export function springSpreads(fit: Fit, asked: SpringsAsked): readonly SpringFigure[] {
  const { origin, values, touched } = fit;
  const built = buildBike(postureOf(origin, values));
  const sprung = built === null ? null : onOwnSprings(built, asked);
  if (built === null || sprung === null) return [];
  const stood = sprung.map((each) => each.stood);
  const value = asked.read(stood);
  const doubt = travelDoubt(fit, built, asked);
  if (doubt === null) return value.map((each) => ({ value: each, u: null }));
  const home = usedIn(built.setup);
  const held = (bike: StartingBike, onSprings = asBuilt, astray: Astray | null = null): Figures => {
    const from = usedIn(bike.setup);
    return asked.read(
      asked.setups.map((setup, i) => {
        const lent = onSprings({ bike: bike.bike, setup });
        const as = setupAs({ asked: lent.setup, found: bike.setup, measuredAs: asked.start.setup });
        const made = machine(lent.bike, as);
        if (!made.ok) return null;
        const at = (end: keyof Travel): number => {
          const own = sprung[i].stood.travel[end];
          const byStart = astray?.by === 'start' ? doubt.sd[end] : SPRING_DOUBT * (own - doubt.from[end]);
          const off = astray?.end === end ? astray.much * byStart : 0;
          // Neither end goes beyond its stops.
          const most = end === 'front' ? made.front.travel : made.rear.wheelTravel;
          return Math.min(most, Math.max(0, from[end] - home[end] + own + off));
        };
        const ride = { kind: 'travel', travel: { front: at('front'), rear: at('rear') }, setBy: {} } as const;
        const found = standRide(sunkAs(made, sprung[i].sinks), ride);
        return found.ok ? found : null;
      }),
    );
  };
  const atValues = (where: readonly number[]): Figures | null => {
    const other = buildBike(postureOf(origin, where));
    return other === null ? null : held(other);
  };
  const slopesBy = (place: number): Figures => {
    if (isOfPhoto(origin.unknowns[place].key)) return value.map(() => 0);
    const [ahead, back] = [atValues(moved(values, place, STEP)), atValues(moved(values, place, -STEP))];
    return value.map((_, i) => slopeOf(ahead?.[i] ?? null, back?.[i] ?? null, 2 * STEP));
  };
  const known = new Set(touched);
  const measured = touched.map(slopesBy);
  const assumed = origin.unknowns.flatMap(({ key }, place) =>
    known.has(place) || !isOfBike(key) ? [] : [slopesBy(place)],
  );
  const ways = ENDS.flatMap((end) =>
    (['springs', 'start'] as const).map((by): Figures => {
      const ahead = held(built, asBuilt, { by, end, much: HALF });
      const back = held(built, asBuilt, { by, end, much: -HALF });
      return value.map((_, i) => slopeOf(ahead[i], back[i], 1));
    }),
  );
  const letGo = held(built);
  const otherwise = held(built, withOtherSprings);
  return value.map((each, i) => {
    const along = byDirection(
      fit,
      measured.map((slope) => slope[i]),
    );
    const still = letGo[i];
    const other = otherwise[i];
    if (each === null || along === null || still === null || other === null) return { value: each, u: null };
    const surely = Math.hypot(...along.fixed, ...ways.map((way) => way[i] ?? NaN));
    const loosely = Math.hypot(...along.free, ...assumed.map((slope) => START_DOUBT * (slope[i] ?? NaN)));
    const isSame = Math.abs(still - each) <= surely + SAME * Math.abs(each);
    // What is read off a spring itself is as that of the start, and nobody knows how near that is.
    const isOfSpring = Math.abs(other - still) > ROUNDING * (1 + Math.abs(still));
    const isFixed = isSame && !isOfSpring && loosely <= Math.max(surely, SAME * Math.abs(each));
    return { value: each, u: isFixed ? Math.hypot(surely, loosely) : null };
  });
}

/** How the bike is held in other states, and what is marked on it, say nothing of the bike itself; how far its ends hang does. */
function isOfBike(key: string): boolean {
  if (/^(?:fork|arm):hanging$/.test(key)) return true;
  return !isOfPhoto(key) && !/^(?:(?:fork|arm|front|rear):|mark|rail$|slope$|exposedTube$)/.test(key);
}

/** Slopes by the touched unknowns, by one standard deviation along each direction: those that the rows fix, and the free ones as loose as the start. */
function byDirection(
  { parts, rank }: Pick<Fit, 'parts' | 'rank'>,
  slopes: readonly (number | null)[],
): { readonly fixed: readonly number[]; readonly free: readonly number[] } | null {
  if (slopes.includes(null)) return null;
  const along = parts.right.map((right, k) => {
    const slope = right.reduce((sum, each, j) => sum + each * (slopes[j] ?? 0), 0);
    return k < rank ? slope / parts.values[k] : slope * START_DOUBT;
  });
  return { fixed: along.slice(0, rank), free: along.slice(rank) };
}

/** The bike with each setup on its own springs, and how far its tyres sink; null where it does not stand with one of them. */
function onOwnSprings(
  built: StartingBike,
  { start, ride, setups }: SpringsAsked,
): readonly { readonly stood: StandingBike; readonly sinks: TyreSinks }[] | null {
  const found = setups.map((asked) => {
    const setup = setupAs({ asked, found: built.setup, measuredAs: start.setup });
    const made = machine(built.bike, setup);
    const stood = standBike(built.bike, setup, ride);
    if (!made.ok || !stood.ok) return null;
    return {
      stood,
      sinks: {
        front: made.frontRadius - stood.machine.frontRadius,
        rear: made.rearRadius - stood.machine.rearRadius,
      },
    };
  });
  return found.includes(null) ? null : found.filter((each) => each !== null);
}

function usedIn({ frontTravelUsed, rearTravelUsed }: Setup): Travel {
  return { front: frontTravelUsed, rear: rearTravelUsed };
}

interface TravelDoubt {
  /** Travel that the springs give in the posture from which they move the bike, mm. */
  readonly from: Travel;
  /** Standard deviation of the travel there: of its measurement, and half of what tape and springs differ by. */
  readonly sd: Travel;
}

/** From where the springs move each end; null where the bike does not stand there. */
function travelDoubt(fit: Fit, built: StartingBike, { ride, start }: SpringsAsked): TravelDoubt | null {
  const made = machine(built.bike, built.setup);
  if (!made.ok) return null;
  const posture = postureOf(fit.origin, fit.values);
  const reference = measureStateOf(fit.origin.readIn);
  const loads = { ...start.setup, frontTravelUsed: 0, rearTravelUsed: 0 };
  const of = (end: keyof Travel): { readonly from: number; readonly sd: number } | null => {
    const own: SuspensionSetting = end === 'front' ? reference.fork : reference.arm;
    const rider = ride === 'noRider' || own === 'rider' ? null : riderTravel(fit, posture, end);
    const stood = standIn(made, loads, rider === null ? own : 'rider');
    if (stood === null) return null;
    const from = stood.travel[end];
    const { way, sd } = rider ?? { way: 0, sd: 0 };
    return { from, sd: Math.hypot(sd, (from - usedIn(built.setup)[end] - way) / 2) };
  };
  const [front, rear] = [of('front'), of('rear')];
  if (front === null || rear === null) return null;
  return { from: { front: front.from, rear: rear.from }, sd: { front: front.sd, rear: rear.sd } };
}

/** How far the rider's weight presses an end in from the posture of the readings, mm, as measured; null where no row fixes it. */
function riderTravel(
  fit: Fit,
  { origin, get, arm, armAngle }: Posture,
  end: keyof Travel,
): { readonly way: number; readonly sd: number } | null {
  const key = end === 'front' ? 'fork:rider' : 'arm:rider';
  const place = origin.places.get(key);
  const at = place === undefined ? -1 : fit.touched.indexOf(place);
  if (at === -1) return null;
  const along = byDirection(
    fit,
    fit.touched.map((_, i) => (i === at ? 1 : 0)),
  );
  const u = along === null ? NaN : Math.hypot(...along.fixed, ...along.free);
  // As loose as the start is not measured.
  if (!(u < START_DOUBT)) return null;
  if (end === 'front') return { way: get(key), sd: u };
  const angle = armAngle - origin.pose.pitch + origin.machine.rear.framePitch;
  const lower = get(key) / 1000;
  return {
    way: arm * (Math.sin(angle) - Math.sin(angle + lower)),
    sd: (arm * Math.abs(Math.cos(angle)) * u) / 1000,
  };
}
