/** What the springs carry: the bike alone, and the sprung part of a bike that was weighed whole. */
import { refuse } from '../numeric/refusal.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { inFrame } from '../chassis/pose.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import type { Stance } from '../standing/stance.ts';

/** The same bike on the same springs with nobody and nothing on it. */
export function alone(sprung: SprungMachine): SprungMachine {
  const { machine } = sprung;
  return { ...sprung, machine: { ...machine, carried: machine.carried.filter(({ aboard }) => !aboard) } };
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
  // The arm's share on the pivot hangs on the frame, but is not of it.
  const onPivot = machine.carried.find(({ key }) => key === 'swingarm')?.mass ?? 0;
  const unsprung = machine.frontUnsprung + machine.rearUnsprung + onPivot;
  const armX = onPivot * pose.pivot.x - machine.armMoment * Math.sin(on.swingarmAngle);
  const armY = onPivot * pose.pivot.y + machine.armMoment * Math.cos(on.swingarmAngle);
  const sprung = mass - unsprung;
  if (!Number.isFinite(x + y)) return refuse('inputNotANumber');
  if (!(sprung > 0)) return refuse('unsprungTooHeavy', { found: unsprung, limit: mass });
  const sprungX =
    (mass * x - machine.frontUnsprung * on.frontAxle.x - machine.rearUnsprung * on.rearAxle.x - armX) /
    sprung;
  const sprungY =
    (mass * y - machine.frontUnsprung * on.frontAxle.y - machine.rearUnsprung * on.rearAxle.y - armY) /
    sprung;
  return { ok: true, mass: sprung, centre: inFrame(pose, { x: sprungX, y: sprungY }) };
}
