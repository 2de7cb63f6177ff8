/** The whole motorcycle as shapes, from back to front. */
import { onGround } from '../../core/chassis/pose.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { bodyShapes, frameShapes } from './bodywork-drawing.ts';
import { bracketShapes, frontStayShapes } from './bracket-drawing.ts';
import { driveShapes } from './drive-drawing.ts';
import { hubMotorShapes } from './hub-drawing.ts';
import { mudguardShapes } from './mudguard-drawing.ts';
import { rearBrakeShapes } from './rear-brake-drawing.ts';
import { riderShapes } from './rider-drawing.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';
import { forkShapes, shockShapes, swingarmShapes } from './suspension-drawing.ts';
import { wheelShapes } from './wheel-drawing.ts';

/** Brake disc radii drawn, mm; they carry no measurement. */
const FRONT_DISC = 155;
const REAR_DISC = 110;

/** Radius at which a part that may touch is drawn, mm; it carries no measurement. */
const TOUCH_RADIUS = 9;

/** The measured parts that may touch, each as a small boss. */
function touchShapes({ machine, pose }: Stance): Shape[] {
  return machine.touching.map(({ at }) => {
    const { x, y } = onGround(pose, at);
    return pen().circle(x, y, TOUCH_RADIUS).shape('axle');
  });
}

/** `linksOnTop` draws shock and links over all else, for a hand that moves their bolts. */
export function bikeShapes(standing: Stance, bike: Bike, setup: Setup, linksOnTop = false): Shape[] {
  const { machine } = standing;
  const { bodywork } = bike;
  const shock = shockShapes(standing, bike);
  const shockLies = linksOnTop ? 'onTop' : bodywork === 'naked' ? 'overArm' : 'inside';
  return [
    ...wheelShapes({
      x: standing.rearAxle.x,
      y: standing.rearAxle.y,
      radius: machine.rearRadius,
      rimRadius: bike.rearWheel.rimDiameter / 2,
      discRadius: REAR_DISC,
      bodywork,
    }),
    ...rearBrakeShapes(standing),
    ...(machine.driveKind === 'hub' ? hubMotorShapes(standing, bike.rearWheel.rimDiameter / 2) : []),
    ...wheelShapes({
      x: standing.frontAxle.x,
      y: standing.frontAxle.y,
      radius: machine.frontRadius,
      rimRadius: bike.frontWheel.rimDiameter / 2,
      discRadius: FRONT_DISC,
      bodywork,
    }),
    ...bracketShapes(standing, bike),
    ...(shockLies === 'inside' ? shock : []),
    ...frontStayShapes(standing, bike, FRONT_DISC),
    ...mudguardShapes(standing, bike),
    ...forkShapes(standing, bike, setup),
    ...frameShapes(standing, bike),
    ...riderShapes(standing, bike),
    ...bodyShapes(standing, bike),
    ...swingarmShapes(standing, bike),
    ...(shockLies === 'overArm' ? shock : []),
    ...driveShapes(standing, bike.drive.chainPitch),
    ...touchShapes(standing),
    ...(shockLies === 'onTop' ? shock : []),
  ];
}
