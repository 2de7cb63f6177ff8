/** What a machine carries: rider, passenger, luggage and fuel as masses at known places. */
import type { FramePoint } from '../parts/frame-point.ts';
import { inFrame } from '../chassis/pose.ts';
import type { Machine } from '../standing/machine.ts';
import { noBalance, type NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import type { Stance } from '../standing/stance.ts';

/** A mass resting on a mark of the frame, its centre held `height` mm above the mark, square to the ground. */
export interface Resting {
  readonly mass: number;
  readonly mark: FramePoint;
  readonly height: number;
}

export interface Rider {
  readonly mass: number;
  /** Centre of gravity above the seat mark, square to the ground, mm. */
  readonly height: number;
  /** How far the rider's centre is moved forward (+) or back (−) on the seat, along the frame's x axis, mm. */
  readonly forward: number;
}

export interface Loads {
  readonly rider: Rider | null;
  /** Passenger, luggage, and whatever else rests on the bike. */
  readonly others: readonly Resting[];
  /** Fuel in the tank, kg and frame coordinates; it becomes part of what the springs carry. */
  readonly fuel: { readonly mass: number; readonly centre: FramePoint } | null;
}

export const NO_LOADS: Loads = { rider: null, others: [], fuel: null };

/** Several resting masses as one that weighs on the frame the same, in every posture; with no mass it rests at the origin. */
export function together(resting: readonly Resting[]): Resting {
  let mass = 0;
  let x = 0;
  let y = 0;
  let height = 0;
  for (const each of resting) {
    mass += each.mass;
    x += each.mass * each.mark.x;
    y += each.mass * each.mark.y;
    height += each.mass * each.height;
  }
  if (!(mass > 0)) return { mass: 0, mark: { x: 0, y: 0 }, height: 0 };
  return { mass, mark: { x: x / mass, y: y / mass }, height: height / mass };
}

/**
 * The machine carrying these loads and no others. Masses in kg; refused when one is below zero or no number.
 * Seats and marks are those of the machine where the load does not bring its own.
 */
export function loaded(machine: Machine, loads: Loads): Machine | NoEquilibrium {
  const { rider, others, fuel } = loads;
  for (const each of [rider, fuel, ...others]) {
    if (each === null) continue;
    if (!(each.mass >= 0)) return noBalance('massNegative', { found: each.mass, limit: 0 });
    const places = 'centre' in each ? [each.centre.x, each.centre.y] : [each.height];
    if ('mark' in each) places.push(each.mark.x, each.mark.y);
    if ('forward' in each) places.push(each.forward);
    if (![each.mass, ...places].every(Number.isFinite)) return noBalance('inputNotANumber');
  }
  const rest = together(others);
  const fuelMass = fuel === null ? 0 : fuel.mass;
  const sprungMass = machine.sprungMass + fuelMass;
  const withFuel = (own: number, tank: number): number =>
    sprungMass > 0 ? (machine.sprungMass * own + fuelMass * tank) / sprungMass : own;
  return {
    ...machine,
    sprungMass,
    sprungX: fuel === null ? machine.sprungX : withFuel(machine.sprungX, fuel.centre.x),
    sprungY: fuel === null ? machine.sprungY : withFuel(machine.sprungY, fuel.centre.y),
    riderMass: rider === null ? 0 : rider.mass,
    riderHeight: rider === null ? machine.riderHeight : rider.height,
    riderX: rider === null ? machine.riderX : machine.seatX + rider.forward,
    passengerMass: 0,
    loadMass: rest.mass,
    loadX: rest.mark.x,
    loadY: rest.mark.y,
    loadHeight: rest.height,
  };
}

/** The same bike on the same springs with nobody and nothing on it. */
export function alone(sprung: SprungMachine): SprungMachine {
  return { ...sprung, machine: { ...sprung.machine, riderMass: 0, passengerMass: 0, loadMass: 0 } };
}

/** The same springs under other loads. Where the wheels hang does not depend on what the springs carry. */
export function withLoads(sprung: SprungMachine, loads: Loads): SprungMachine | NoEquilibrium {
  const made = loaded(sprung.machine, loads);
  return !made.ok ? made : { ...sprung, machine: made };
}

/** What the springs carry, kg and frame coordinates. */
export interface SprungCentre {
  readonly ok: true;
  readonly mass: number;
  readonly centre: FramePoint;
}

/**
 * What the springs carry when the whole bike, without rider and load, weighs `mass` kg with its centre at (x, y)
 * of the ground frame while it stands as `on` does: the whole less both unsprung masses at their axles, turned
 * into frame coordinates. No answer when the unsprung parts weigh as much as the whole.
 */
export function sprungFromWhole(
  on: Stance,
  mass: number,
  x: number,
  y: number,
): SprungCentre | NoEquilibrium {
  const { machine, pose } = on;
  const unsprung = machine.frontUnsprung + machine.rearUnsprung;
  const sprung = mass - unsprung;
  if (!Number.isFinite(x + y)) return noBalance('inputNotANumber');
  if (!(sprung > 0)) return noBalance('unsprungTooHeavy', { found: unsprung, limit: mass });
  const sprungX =
    (mass * x - machine.frontUnsprung * on.frontAxle.x - machine.rearUnsprung * on.rearAxle.x) / sprung;
  const sprungY =
    (mass * y - machine.frontUnsprung * on.frontAxle.y - machine.rearUnsprung * on.rearAxle.y) / sprung;
  return { ok: true, mass: sprung, centre: inFrame(pose, { x: sprungX, y: sprungY }) };
}
