/** Puts the bike of a set of values into a measuring state: where every part is over the floor. */
import { AS_DELIVERED } from '../../linkage/link-adjustments.ts';
import { linkPoints } from '../../linkage/link-points.ts';
import { links as linksOf, shockAt, type Links } from '../../linkage/links.ts';
import { FRAME_PLACE_KEYS } from '../../parts/frame-places.ts';
import { TOUCH_KEYS } from '../../parts/touch-parts.ts';
import { hasRuns } from '../../parts/drive-kind.ts';
import type { LinkLayout } from '../../parts/rear-layout.ts';
import { rotate, type Point } from '../../plane/point.ts';
import { degrees, radians } from '../../units/convert.ts';
import { measureStateOf, type MeasureStateKey } from './all-measure-states.ts';
import { boltsOf, withBolts } from './bolts.ts';
import type { HeldBike } from './held-bike.ts';
import type { MeasurePartKey } from './measure-parts.ts';
import type { SuspensionSetting } from './measure-state.ts';
import { MARKS, type Origin, type TyreSinks } from './unknowns.ts';
import { unsprungMoment } from './whole-mass.ts';

/** A set of values as one posture of the bike, along the floor of the state that readings are taken in. */
export interface Posture {
  readonly origin: Origin;
  readonly get: (key: string) => number;
  /** Rear axle over the floor, mm. */
  readonly rearRadius: number;
  readonly pivot: Point;
  /** Pivot to rear axle, mm, and its line below horizontal, radians. */
  readonly arm: number;
  readonly armAngle: number;
  readonly rake: number;
  /** Fork legs from vertical. */
  readonly legLean: number;
  readonly axleLead: number;
  readonly frontAxle: Point;
  /** Where the axis passes the top clamp. */
  readonly head: Point;
  /** The links drawn in this posture, and in numbers; null where a table stands in or they cannot close. */
  readonly layout: () => LinkLayout | null;
  readonly links: () => Links | null;
}

/** The unknowns that place a part from the pivot: made once, because a fit needs them hundreds of thousands of times. */
interface PlaceKeys {
  readonly x: string;
  readonly y: string;
}
const placeKeys = (part: string): PlaceKeys => ({ x: `${part}X`, y: `${part}Y` });
const PLACES: ReadonlyMap<string, PlaceKeys> = new Map(
  [...FRAME_PLACE_KEYS, ...TOUCH_KEYS, ...MARKS].map((part) => [part, placeKeys(part)]),
);
const BOLT_KEYS = new WeakMap<LinkLayout, readonly PlaceKeys[]>();

/** What the values make of the bike in the posture of the readings. */
export function postureOf(origin: Origin, values: readonly number[]): Posture {
  const { places, bike, setup, readIn } = origin;
  const get = (key: string): number => {
    const at = places.get(key);
    return at === undefined ? 0 : values[at];
  };
  const sinks = sinksOn(origin, readIn);
  const pivot = { x: get('pivotX'), y: get('pivotY') };
  const rearRadius = get('rearRadius') - sinks.rear;
  const down = pivot.y - rearRadius;
  const armAngle = Math.atan2(down, pivot.x);
  const rake = get('rake') / 1000;
  const tilt = -radians(bike.fork.legAngleDeg);
  const legLean = rake + tilt;
  const legLength = get('legLength');
  const axleLead = (get('offset') - setup.clampOffset - legLength * Math.sin(tilt)) / Math.cos(tilt);
  const frontAxle = { x: get('wheelbase'), y: get('frontRadius') - sinks.front };
  const along = legLength * Math.cos(tilt) - axleLead * Math.sin(tilt);
  const head = {
    x: frontAxle.x - get('offset') * Math.cos(rake) - along * Math.sin(rake),
    y: frontAxle.y - get('offset') * Math.sin(rake) + along * Math.cos(rake),
  };
  return {
    origin,
    get,
    rearRadius,
    pivot,
    arm: Math.hypot(pivot.x, down),
    armAngle,
    rake,
    legLean,
    axleLead,
    frontAxle,
    head,
    ...linksOnce(origin.links, get, armAngle),
  };
}

/** How far the tyres sink in a state where they are on the floor, mm. */
export function sinksOn({ sinks }: Pick<Origin, 'sinks'>, state: MeasureStateKey): TyreSinks {
  const { fork, arm } = measureStateOf(state);
  return { front: sinks[fork].front, rear: sinks[arm].rear };
}

/** Most rows speak of no bolt, and links cost more than all the rest: they are made when a row first names one. */
function linksOnce(
  start: LinkLayout | null,
  get: Posture['get'],
  armAngle: number,
): Pick<Posture, 'layout' | 'links'> {
  let drawn: LinkLayout | null = null;
  let made: Links | null | undefined;
  const layout = (): LinkLayout | null => {
    if (start !== null) drawn ??= layoutOf(start, get, armAngle);
    return drawn;
  };
  const links = (): Links | null => {
    if (made !== undefined) return made;
    const seen = layout();
    const found = seen === null ? null : linksOf(seen, AS_DELIVERED);
    made = found?.ok ? found : null;
    return made;
  };
  return { layout, links };
}

/** The unknowns of the layout's bolts, in the order of `boltsOf`. */
function boltKeys(start: LinkLayout): readonly PlaceKeys[] {
  const known = BOLT_KEYS.get(start);
  if (known !== undefined) return known;
  const keys = boltsOf(start).map(({ key }) => placeKeys(key));
  BOLT_KEYS.set(start, keys);
  return keys;
}

function layoutOf(start: LinkLayout, get: Posture['get'], armAngle: number): LinkLayout {
  const keys = boltKeys(start);
  const moved = withBolts(start, (bolt) => ({ x: get(keys[bolt].x), y: get(keys[bolt].y) }));
  return { ...moved, drawnAngleDeg: degrees(armAngle) };
}

/** Fork travel used beyond that of the readings, mm, and how much lower the arm hangs, radians. */
export function settingOf(
  { get, origin }: Pick<Posture, 'get' | 'origin'>,
  fork: SuspensionSetting,
  arm: SuspensionSetting,
): { readonly fork: number; readonly arm: number } {
  const reference = measureStateOf(origin.readIn);
  return {
    fork: fork === reference.fork ? 0 : get(`fork:${fork}`),
    arm: arm === reference.arm ? 0 : get(`arm:${arm}`) / 1000,
  };
}

/** The posture's bike as a state holds it; null where the axles cannot stand at their heights. */
export function holdBike(posture: Posture, state: MeasureStateKey): HeldBike | null {
  const { get, origin, pivot, arm, armAngle, rake, legLean, frontAxle, head, links } = posture;
  const { fork, arm: armSetting, frontOnFloor, rearOnFloor } = measureStateOf(state);
  const change = settingOf(posture, fork, armSetting);
  const { bike } = origin;
  const angle = armAngle + change.arm;
  const rear = { x: pivot.x - arm * Math.cos(angle), y: pivot.y - arm * Math.sin(angle) };
  const front = {
    x: frontAxle.x - change.fork * Math.sin(legLean),
    y: frontAxle.y + change.fork * Math.cos(legLean),
  };
  const sinks = sinksOn(origin, state);
  const frontRadius = get('frontRadius') - sinks.front;
  const rearRadius = get('rearRadius') - sinks.rear;
  const rearHeight = rearOnFloor ? rearRadius : get(`rear:${state}`);
  const frontHeight = frontOnFloor ? frontRadius : get(`front:${state}`);
  const sine = (frontHeight - rearHeight) / Math.hypot(front.x - rear.x, front.y - rear.y);
  if (!(Math.abs(sine) < 1)) return null;
  const pitch = Math.asin(sine) - Math.atan2(front.y - rear.y, front.x - rear.x);
  const onFloor = (p: Point): Point => {
    const turned = rotate({ x: p.x - rear.x, y: p.y - rear.y }, pitch);
    return { x: turned.x, y: turned.y + rearHeight };
  };
  const fromPivot = (x: number, y: number): Point => onFloor({ x: pivot.x + x, y: pivot.y + y });
  const find = (part: MeasurePartKey): Point | null => {
    if (part === 'rearAxle') return onFloor(rear);
    if (part === 'frontAxle') return onFloor(front);
    if (part === 'pivot') return onFloor(pivot);
    if (part === 'steeringHead') return onFloor(head);
    if (part === 'axisFoot') {
      const length = get('headTubeLength');
      return onFloor({ x: head.x + length * Math.sin(rake), y: head.y - length * Math.cos(rake) });
    }
    const keys = PLACES.get(part);
    if (keys !== undefined) return fromPivot(get(keys.x), get(keys.y));
    const made = links();
    const bolt = made === null ? undefined : linkPoints(made, angle)?.find(({ key }) => key === part);
    return bolt === undefined ? null : fromPivot(bolt.place.x, bolt.place.y);
  };
  const known = new Map<MeasurePartKey, Point | null>();
  const place = (part: MeasurePartKey): Point | null => {
    let at = known.get(part);
    if (at === undefined) {
      at = find(part);
      known.set(part, at);
    }
    return at;
  };
  const { machine } = origin;
  return {
    pitch,
    frontRadius,
    freeRadius: { front: get('frontRadius'), rear: get('rearRadius') },
    unknown: get,
    place,
    rake: rake + pitch,
    legTilt: radians(bike.fork.legAngleDeg),
    offset: get('offset') - change.fork * Math.sin(legLean - rake),
    sprockets: hasRuns(bike.drive.kind)
      ? { front: machine.frontSprocketRadius, rear: machine.rearSprocketRadius }
      : null,
    rail: get('rail') / 1000,
    slope: origin.gaugeZeroed ? 0 : get('slope') / 1000,
    exposedTube: get('exposedTube') - change.fork,
    eyeToEye: () => {
      const made = links();
      return made === null ? null : (shockAt(made, angle)?.length ?? null);
    },
    weighed: () => wholeMass(posture, angle, onFloor, { front, rear }),
  };
}

/** The bike with its fuel and nobody on it: what the springs carry goes with the frame, axles and arm go their way. */
function wholeMass(
  { get, rearRadius, pivot, origin, frontAxle, armAngle }: Posture,
  angle: number,
  onFloor: (p: Point) => Point,
  axles: { readonly front: Point; readonly rear: Point },
): { readonly mass: number; readonly centre: Point } {
  const { bike } = origin;
  const mass = get('mass');
  const reference = { x: 0, y: rearRadius };
  const before = unsprungMoment(bike, { front: frontAxle, rear: reference, pivot, armAngle });
  const now = unsprungMoment(bike, { ...axles, pivot, armAngle: angle });
  const centre = {
    x: pivot.x + get('centreX') + (now.x - before.x) / mass,
    y: pivot.y + get('centreY') + (now.y - before.y) / mass,
  };
  return { mass, centre: onFloor(mass > 0 ? centre : pivot) };
}
