/** The unknowns of a fit with their starting values: what one posture of the bike is made of, and how other states differ. */
import type { Setup } from '../../adjusters/setup.ts';
import { effectiveOffset } from '../../chassis/front-end.ts';
import { onGround, type Pose } from '../../chassis/pose.ts';
import { redrawLinks } from '../../linkage/redraw-links.ts';
import { adjustersIn } from '../../linkage/rear-layout-of.ts';
import { mapBolts } from '../../linkage/map-bolts.ts';
import type { Bike } from '../../parts/bike.ts';
import { FRAME_PLACE_KEYS, FRAME_PLACES } from '../../parts/frame-places.ts';
import { TOUCH_PARTS } from '../../parts/touch-parts.ts';
import type { LinkLayout } from '../../parts/rear-layout.ts';
import { rotate } from '../../plane/point.ts';
import type { RideStateKey } from '../../riding/states/all-ride-states.ts';
import { standMachine } from '../../riding/stand-bike.ts';
import { POINTS } from '../../sketch/points.ts';
import type { Machine } from '../../standing/machine.ts';
import { stance, type Stance } from '../../standing/stance.ts';
import { degrees } from '../../units/convert.ts';
import { MEASURE_STATES, measureStateOf, type MeasureStateKey } from './all-measure-states.ts';
import { MEASURE_PARTS, type MeasurePartKey } from './measure-parts.ts';
import type { SuspensionSetting } from './measure-state.ts';
import { sumOf, unsprungMoment } from './whole-mass.ts';
import { boltsOf } from './bolts.ts';

/** An unknown; lengths in mm, angles in thousandths of a radian, so that one of each counts alike. */
export interface Unknown {
  readonly key: string;
  readonly label: string;
  readonly unit: 'mm' | 'mrad' | 'kg';
  readonly start: number;
}

/** What the fit starts from and does not change. */
export interface Origin {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly machine: Machine;
  /** The state whose posture the unknowns describe. */
  readonly readIn: MeasureStateKey;
  readonly pose: Pose;
  /** The links as they stand in that posture, along the floor, with their adjusters in; null where a table stands in. */
  readonly links: LinkLayout | null;
  readonly unknowns: readonly Unknown[];
  readonly places: ReadonlyMap<string, number>;
  readonly gaugeZeroed: boolean;
  /** How far each tyre sinks under the bike in a setting, mm, by the loads and tyre rates that the bike starts with. */
  readonly sinks: Readonly<Record<SuspensionSetting, TyreSinks>>;
}

/** Free radius less axle height over the floor, mm; 0 for a rigid tyre. */
export interface TyreSinks {
  readonly front: number;
  readonly rear: number;
}

/** Where the bike is taken to stand in a setting before anything is measured. */
const RIDES: Readonly<Record<SuspensionSetting, RideStateKey>> = {
  makers: 'noRider',
  loaded: 'noRider',
  rider: 'riderUp',
  half: 'noRider',
  hanging: 'toppedOut',
};

const SETTINGS = Object.keys(RIDES) as readonly SuspensionSetting[];

function eachSetting<T>(of: (setting: SuspensionSetting) => T): Readonly<Record<SuspensionSetting, T>> {
  const found: Partial<Record<SuspensionSetting, T>> = {};
  for (const setting of SETTINGS) found[setting] = of(setting);
  return found as Record<SuspensionSetting, T>;
}

/** How far a wheel is taken to be off the floor before anything is measured, mm. */
const LIFTED = 80;
/** The same for an axle raised for weighing: less would say little of the height of the weight. */
const RAISED = 300;

export const MARKS = ['markA', 'markB', 'markC'] as const satisfies readonly MeasurePartKey[];

/** Stands the machine as a setting finds it; where springs give no answer, at the travel set by hand or topped out. */
export function standIn(machine: Machine, setup: Setup, setting: SuspensionSetting): Stance | null {
  for (const ride of [RIDES[setting], 'travelByHand', 'toppedOut'] as const) {
    const found = standMachine(machine, setup, ride);
    if (found.ok) return found;
  }
  return null;
}

/** The ends whose travel from hanging is known where the fit begins: by hand as the setup has it, and not by the springs. */
export interface KnownTravel {
  readonly front: boolean;
  readonly rear: boolean;
}

const NONE_KNOWN: KnownTravel = { front: false, rear: false };

/**
 * The posture that the fit begins in: on its springs, but at the travel of its setup where that was measured. Springs that
 * let the bike stand otherwise would turn what no row touches a little further with each fit.
 */
function standFirst(
  machine: Machine,
  setup: Setup,
  setting: SuspensionSetting,
  known: KnownTravel,
): Stance | null {
  const sprung = standIn(machine, setup, setting);
  if (sprung === null || setting === 'hanging' || !(known.front || known.rear)) return sprung;
  const sinks = sinksIn(machine, sprung);
  const sunk = {
    ...machine,
    frontRadius: machine.frontRadius - sinks.front,
    rearRadius: machine.rearRadius - sinks.rear,
  };
  const found = stance(sunk, {
    front: known.front ? setup.frontTravelUsed : sprung.travel.front,
    rear: known.rear ? setup.rearTravelUsed : sprung.travel.rear,
  });
  return found.ok ? found : sprung;
}

/** The sink of both tyres of a machine that stands in a setting; zero when it does not stand. */
function sinksIn({ frontRadius, rearRadius }: Machine, on: Stance | null): TyreSinks {
  if (on === null) return { front: 0, rear: 0 };
  return { front: frontRadius - on.frontAxle.y, rear: rearRadius - on.rearAxle.y };
}

/** The links of a stance with their adjusters in, along the floor; null where a table stands in. */
function linksAlongFloor({ swingarm }: Bike, setup: Setup, { arm, pose }: Stance): LinkLayout | null {
  if (swingarm.links === null) return null;
  const seen = redrawLinks(swingarm.links, arm.angle, adjustersIn(setup));
  if ('ok' in seen) return null;
  const onFrame = (p: { readonly x: number; readonly y: number }) => rotate(p, pose.pitch);
  const turned = mapBolts(seen, { onFrame, onArm: (p) => p });
  return { ...turned, drawnAngleDeg: degrees(arm.angle + pose.pitch) };
}

/** A length in mm. */
const mm = (key: string, label: string, start: number): Unknown => ({ key, label, unit: 'mm', start });
/** An angle, given in radians. */
const turn = (key: string, label: string, radians: number): Unknown => ({
  key,
  label,
  unit: 'mrad',
  start: 1000 * radians,
});

/** Every unknown that this bike can have, with its start; null where the bike does not stand. */
export function originOf(
  bike: Bike,
  setup: Setup,
  machine: Machine,
  readIn: MeasureStateKey,
  gaugeZeroed: boolean,
  known: KnownTravel = NONE_KNOWN,
): Origin | null {
  const state = MEASURE_STATES.find(({ key }) => key === readIn);
  const on = state === undefined ? null : standFirst(machine, setup, state.arm, known);
  const hanging = standIn(machine, setup, 'hanging');
  if (on === null || hanging === null || state === undefined) return null;
  const links = linksAlongFloor(bike, setup, on);
  const { pose, frontAxle, rearAxle } = on;
  const { front } = machine;
  const list: Unknown[] = [
    mm('frontRadius', 'Front tyre radius', machine.frontRadius),
    mm('rearRadius', 'Rear tyre radius', machine.rearRadius),
    mm('wheelbase', 'Wheelbase', frontAxle.x),
    turn('rake', 'Rake', on.rake),
    mm('offset', 'Offset of the front axle', effectiveOffset(front, on.travel.front)),
    mm('legLength', 'Top clamp to front axle', front.legLength - on.travel.front),
    mm('headTubeLength', 'Head tube length', bike.frame.headTubeLength),
    mm('pivotX', 'Pivot ahead of the rear axle', pose.pivot.x),
    mm('pivotY', 'Pivot over the floor', pose.pivot.y),
  ];
  for (const key of FRAME_PLACE_KEYS) {
    // Scales weigh the whole bike; what the springs carry of it follows.
    if (key === 'sprungCentre') continue;
    const at = rotate(machine.places[key], pose.pitch);
    const { label } = FRAME_PLACES[key];
    list.push(
      mm(`${key}X`, `${label}, ahead of the pivot`, at.x),
      mm(`${key}Y`, `${label}, over the pivot`, at.y),
    );
  }
  for (const { key, at: stored } of machine.touching) {
    const at = rotate(stored, pose.pitch);
    const { label } = TOUCH_PARTS[key];
    list.push(
      mm(`${key}X`, `${label}, ahead of the pivot`, at.x),
      mm(`${key}Y`, `${label}, over the pivot`, at.y),
    );
  }
  list.push(...wholeBike(bike, setup, machine, on));
  for (const { key, on: carrier, at } of links === null ? [] : boltsOf(links)) {
    const { label } = POINTS[key];
    list.push(
      mm(`${key}X`, carrier === 'arm' ? `${label}, along the arm` : `${label}, ahead of the pivot`, at.x),
      mm(`${key}Y`, carrier === 'arm' ? `${label}, over the arm` : `${label}, over the pivot`, at.y),
    );
  }
  for (const [i, key] of MARKS.entries()) {
    const { label } = MEASURE_PARTS[key];
    list.push(
      mm(`${key}X`, `${label}, ahead of the pivot`, MARK_PLACES[i].x),
      mm(`${key}Y`, `${label}, over the pivot`, MARK_PLACES[i].y),
    );
  }
  list.push(
    turn('rail', 'Frame rail', 0),
    turn('slope', 'Slope of the floor', 0),
    mm('exposedTube', 'Exposed fork tube', Math.max(20, front.travel - on.travel.front)),
  );
  const stances = eachSetting((setting) => standIn(machine, setup, setting));
  for (const setting of SETTINGS) {
    const there = stances[setting];
    if (there === null || setting === state.arm) continue;
    const where = SETTING_LABELS[setting];
    list.push(
      mm(`fork:${setting}`, `Fork travel used, ${where}`, there.travel.front - on.travel.front),
      turn(`arm:${setting}`, `Swingarm lower, ${where}`, there.arm.angle - on.arm.angle),
    );
  }
  for (const { key, label, frontOnFloor, rearOnFloor, weighed } of MEASURE_STATES) {
    const lift = weighed ? RAISED : LIFTED;
    if (!frontOnFloor)
      list.push(mm(`front:${key}`, `Front axle over the floor, ${label}`, frontAxle.y + lift));
    if (!rearOnFloor) list.push(mm(`rear:${key}`, `Rear axle over the floor, ${label}`, rearAxle.y + lift));
  }
  const places = new Map(list.map(({ key }, i) => [key, i]));
  const sinks = eachSetting((setting) => sinksIn(machine, stances[setting]));
  return { bike, setup, machine, readIn, pose, links, unknowns: list, places, gaugeZeroed, sinks };
}

/** Mass and centre of the whole bike as it starts, with its fuel and nobody on it. */
function wholeBike(bike: Bike, { fuelMass }: Setup, { places }: Machine, on: Stance): readonly Unknown[] {
  const { pose, frontAxle, rearAxle, swingarmAngle } = on;
  const { pivot } = pose;
  const parts = unsprungMoment(bike, { front: frontAxle, rear: rearAxle, pivot, armAngle: swingarmAngle });
  const { sprungMass } = bike.frame;
  const carried = sumOf([
    [sprungMass, onGround(pose, places.sprungCentre)],
    [fuelMass, onGround(pose, places.tank)],
  ]);
  const mass = parts.mass + carried.mass;
  const per = (moment: number): number => (mass > 0 ? moment / mass : 0);
  return [
    { key: 'mass', label: 'Mass of the whole bike', unit: 'kg', start: mass },
    mm('centreX', 'Centre of gravity, ahead of the pivot', per(parts.x + carried.x) - pivot.x),
    mm('centreY', 'Centre of gravity, over the pivot', per(parts.y + carried.y) - pivot.y),
  ];
}

/** Where marks are taken to be before anything is measured, from the pivot, mm. */
const MARK_PLACES = [
  { x: -150, y: 350 },
  { x: 150, y: 300 },
  { x: 350, y: 420 },
] as const;

const SETTING_LABELS: Readonly<Record<SuspensionSetting, string>> = {
  makers: 'as in the papers',
  loaded: 'on its wheels',
  rider: 'rider on',
  half: 'frame held up',
  hanging: 'hanging',
};

/** The same with further unknowns behind its own, such as those of a camera. */
export function withUnknowns(origin: Origin, more: readonly Unknown[]): Origin {
  const unknowns = [...origin.unknowns, ...more];
  return { ...origin, unknowns, places: new Map(unknowns.map(({ key }, i) => [key, i])) };
}

/** Whether an unknown can change how the bike is held in a state, by its key: what is of one setting or one state changes no other. */
export function isInState(key: string, state: MeasureStateKey): boolean {
  const [what, of] = key.split(':', 2);
  const { fork, arm } = measureStateOf(state);
  if (what === 'fork') return of === fork;
  if (what === 'arm') return of === arm;
  return what === 'front' || what === 'rear' ? of === state : true;
}

/** Whether an unknown is of a photo and not of the bike, by its key. */
export function isOfPhoto(key: string): boolean {
  return key.startsWith('photo');
}
