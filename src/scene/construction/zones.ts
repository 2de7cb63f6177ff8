/** Squat, neutral and lift as areas that can be told apart from the back of a room. */
import { engineBrakingSlopeOf } from '../../core/standing/drive-slopes.ts';
import { neutralAntiSquat } from '../../core/riding/equilibrium/neutral-anti-squat.ts';
import { throttleIsClosed } from '../../core/riding/throttle-closed.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import type { Point } from '../../core/plane/point.ts';
import { clipLine } from '../shapes/clip.ts';
import { pen } from '../shapes/outline.ts';
import { squatConstruction } from './squat-construction.ts';
import type { Role, Shape } from '../shapes/shape.ts';

/** How far the areas reach ahead of the front tyre, mm, and how far up and down as parts of the load-transfer slope. */
const AHEAD = 170;
const LIFT_REACH = 1.75;
const PRO_SQUAT_REACH = 0.22;
/** How wide the hatched end of an area is, and how far apart its strokes are, mm. */
const HATCHED = 120;
const HATCH_APART = 75;
/** How far above its lower edge the lift area's name stands, as a part of the same slope. */
const LIFT_NAME_ABOVE = 0.08;
/** The squat area's name stands low, ahead of where the front tyre has rounded away. */
const PRO_SQUAT_NAME_BELOW = 0.18;
const SQUAT_NAME_ABOVE = 0.065;

/** Below the neutral zone, in it, above it and below the ground: on the gas, and with the throttle closed. */
export type Zone = OpenZone | ClosedZone;
type OpenZone = 'squat' | 'neutral' | 'lift' | 'proSquat';
type ClosedZone = 'rise' | 'level' | 'drop' | 'riseMore';

/** With the throttle closed load leaves the rear, so each side of the load-transfer line means the opposite. */
const TURNED: Readonly<Record<OpenZone, ClosedZone>> = {
  squat: 'rise',
  neutral: 'level',
  lift: 'drop',
  proSquat: 'riseMore',
};

/** Where the areas end to the right, ground frame, mm. */
export function zonesEnd(standing: Stance): number {
  return standing.pose.wheelbase + standing.machine.frontRadius + AHEAD;
}

/**
 * The zone that a bike's squat line runs in, or with the throttle closed its engine-braking line; null without a
 * load-transfer line. `band` is ± per cent of anti-squat or anti-rise.
 */
export function zoneOf(standing: StandingBike, band: number): Zone | null {
  const { squatSlope, loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return null;
  const closed = throttleIsClosed(standing);
  const slope = closed ? engineBrakingSlope(standing) : squatSlope;
  const zone = openZoneOf(slope, loadPoint, neutralOf(standing), band);
  return closed ? TURNED[zone] : zone;
}

function engineBrakingSlope(on: Stance): number {
  const { swingarm, chain } = engineBrakingSlopeOf(on);
  return swingarm + chain;
}

/** The anti-squat in the middle of the neutral zone, per cent: the computed neutral point; with the throttle closed 100. */
function neutralOf(standing: StandingBike): number {
  if (throttleIsClosed(standing)) return 100;
  const found = neutralAntiSquat(standing);
  return found.ok ? found.neutral : 100;
}

function openZoneOf(slope: number, loadPoint: Point, neutral: number, band: number): OpenZone {
  if (slope < 0) return 'proSquat';
  const percent = (100 * slope * loadPoint.x) / loadPoint.y;
  if (Math.abs(percent - neutral) <= band) return 'neutral';
  return percent < neutral ? 'squat' : 'lift';
}

/** The areas from back to front, each a wedge from the rear patch. */
export function zoneShapes(standing: StandingBike, band: number): Shape[] {
  const { loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return [];
  const x = zonesEnd(standing);
  const rise = (loadPoint.y / loadPoint.x) * x;
  const neutral = neutralOf(standing);
  const low = (rise * (neutral - band)) / 100;
  const high = (rise * (neutral + band)) / 100;
  // One colour for the rear that sinks and one for the rear that comes up, on the gas and off it.
  const [below, above]: readonly [Role, Role] = throttleIsClosed(standing)
    ? ['liftZone', 'squatZone']
    : ['squatZone', 'liftZone'];
  const wedge = (role: Role, from: number, to: number): Shape =>
    pen().move(0, 0).line(x, from, x, to).close().shape(role);
  const [bottom, top] = [-PRO_SQUAT_REACH * rise, LIFT_REACH * rise];
  const edges = pen();
  for (const y of [bottom, low, high]) edges.move(0, 0).line(x, y);
  return [
    wedge('proSquatZone', bottom, 0),
    wedge(below, 0, low),
    wedge('neutralZone', low, high),
    wedge(above, high, top),
    hatch(x, bottom, 0, ['up', 'down']),
    hatch(x, 0, low, ['up']),
    hatch(x, high, top, ['down']),
    edges.line(x, top).shape('zoneEdge'),
  ];
}

/** Strokes along the right end of an area, ahead of the bike, which tell it by their slant from its neighbours. */
function hatch(x: number, from: number, to: number, slants: readonly ('up' | 'down')[]): Shape {
  const start = x - HATCHED;
  const part = start / x;
  const area = [
    { x: start, y: part * from },
    { x, y: from },
    { x, y: to },
    { x: start, y: part * to },
  ];
  const drawn = pen();
  const least = Math.min(from, part * from);
  const most = Math.max(to, part * to);
  for (const slant of slants)
    for (let y = least - HATCHED; y < most + HATCHED; y += HATCH_APART) {
      const [left, right] = slant === 'up' ? [y, y + HATCHED] : [y + HATCHED, y];
      const stroke = clipLine({ x: start, y: left }, { x, y: right }, area);
      if (stroke !== null) drawn.move(stroke.from.x, stroke.from.y).line(stroke.to.x, stroke.to.y);
    }
  return drawn.shape('zoneHatch');
}

/** Where the name of an area stands, at its right edge, and how far above that place the area goes on there, mm. */
export interface ZoneNamePlace {
  readonly zone: Zone;
  readonly x: number;
  readonly y: number;
  readonly above: number;
}

export function zoneNamePlaces(standing: StandingBike, band: number): ZoneNamePlace[] {
  const { loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return [];
  const x = zonesEnd(standing);
  const rise = (loadPoint.y / loadPoint.x) * x;
  const neutral = neutralOf(standing);
  const [squatTo, liftFrom] = [neutral - band, neutral + band].map((percent) => (rise * percent) / 100);
  const closed = throttleIsClosed(standing);
  const places: readonly [OpenZone, number, number][] = [
    ['lift', liftFrom + LIFT_NAME_ABOVE * rise, LIFT_REACH * rise],
    ['neutral', (rise * neutral) / 100, liftFrom],
    ['squat', SQUAT_NAME_ABOVE * rise, squatTo],
    ['proSquat', -PRO_SQUAT_NAME_BELOW * rise, 0],
  ];
  return places.map(([zone, y, top]) => ({ zone: closed ? TURNED[zone] : zone, x, y, above: top - y }));
}
