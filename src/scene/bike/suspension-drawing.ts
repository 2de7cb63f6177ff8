/** Fork, clamps, swingarm and shock as a mechanic sees them from the side. */
import { onGround } from '../../core/chassis/pose.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { onLegs } from '../../core/chassis/front-end.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { linkShapes, shockEyes } from './linkage-drawing.ts';
import { along, pen, type Placement } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Drawn thicknesses, mm; they carry no measurement. */
const TUBE_HALF = 25;
const SLIDER_HALF = 30;
const CLAMP_HALF = 17;
const ARM_PIVOT_HALF = 36;
const ARM_AXLE_HALF = 24;
const SPRING_HALF = 30;
const SHOCK_BODY_HALF = 17;
const SPRING_TURNS = 7;

/** A placement with its origin at the fork's top clamp and its x axis down the legs. */
function downLegs(standing: Stance): Placement {
  const { front } = standing.machine;
  const { x, y } = onLegs(front, 0, 0);
  return { ...onGround(standing.pose, { x, y }), turn: front.legLean + standing.pose.pitch - Math.PI / 2 };
}

/** Fork legs with tube tops, sliders and axle lugs, and both clamps; behind the bodywork. */
export function forkShapes(standing: Stance, bike: Bike, setup: Setup): Shape[] {
  const place = downLegs(standing);
  const { machine, travel } = standing;
  const leg = machine.front.legLength - travel.front;
  const top = -setup.forkTubes - setup.forkExtenders;
  const lower = bike.frame.headTubeLength + 20;
  const offset = machine.front.clampOffset;
  const lead = machine.front.axleLead;
  const wide = bike.bodywork === 'faired' ? 0 : 1;
  // Upside-down forks show a wide tube above and a bright stanchion below; others the reverse.
  const upper = wide ? TUBE_HALF - 4 : SLIDER_HALF - 2;
  const bottom = wide ? SLIDER_HALF : TUBE_HALF - 3;
  const split = wide ? leg * 0.55 : leg * 0.66;
  return [
    pen(place).move(top, -upper).line(split, -upper, split, upper, top, upper).close().shape('forkTube'),
    pen(place)
      .move(wide ? split - 26 : split, -bottom)
      .line(leg - 8, -bottom, leg + 26, -bottom * 0.6 + lead * 0.5)
      .line(leg + 26, bottom * 0.6 + lead)
      .line(leg - 20, bottom + lead * 0.9, leg - 60, bottom, wide ? split - 26 : split, bottom)
      .close()
      .shape('fork'),
    pen(place).circle(leg, lead, 22).shape('fork'),
    pen(place).circle(leg, lead, 11).shape('axle'),
    clamp(place, 0, offset),
    clamp(place, lower, offset),
    pen(place)
      .move(top - 6, -upper * 0.7)
      .line(top, -upper * 0.7, top, upper * 0.7, top - 6, upper * 0.7)
      .close()
      .shape('clamp'),
  ];
}

function clamp(place: Placement, at: number, offset: number): Shape {
  const half = SLIDER_HALF + 8;
  const back = -Math.max(offset, 10) - 22;
  return pen(place)
    .move(at - CLAMP_HALF, half)
    .line(at - CLAMP_HALF, -half, at - CLAMP_HALF * 0.8, back)
    .line(at + CLAMP_HALF * 0.8, back, at + CLAMP_HALF, -half, at + CLAMP_HALF, half)
    .close()
    .shape('clamp');
}

/** The swingarm: a tapered arm with its slot and axle block. */
export function swingarmShapes(standing: Stance, bike: Bike): Shape[] {
  const pivot = standing.pose.pivot;
  const axle = standing.rearAxle;
  const place = along(pivot, axle);
  const arm = standing.machine.rear.arm;
  const slotFrom = standing.machine.rear.slotFrontArm;
  const end = slotFrom + bike.swingarm.slot + 34;
  const slotTo = slotFrom + bike.swingarm.slot;
  // With the axle behind the pivot, the arm's upper side has negative y in this placement.
  return [
    pen(place)
      .move(0, -ARM_PIVOT_HALF)
      .curve(arm * 0.25, -ARM_PIVOT_HALF - 10, arm * 0.5, -ARM_PIVOT_HALF, arm * 0.8, -ARM_AXLE_HALF)
      .line(end, -ARM_AXLE_HALF + 2, end, ARM_AXLE_HALF)
      .line(arm * 0.78, ARM_AXLE_HALF)
      .curve(arm * 0.5, ARM_AXLE_HALF + 2, arm * 0.25, ARM_PIVOT_HALF - 4, 0, ARM_PIVOT_HALF)
      .arc(0, 0, ARM_PIVOT_HALF, Math.PI / 2, (3 * Math.PI) / 2)
      .close()
      .shape('swingarm'),
    pen(place)
      .move(slotFrom, -9)
      .line(slotTo, -9)
      .arc(slotTo, 0, 9, -Math.PI / 2, Math.PI / 2)
      .line(slotFrom, 9)
      .arc(slotFrom, 0, 9, Math.PI / 2, (3 * Math.PI) / 2)
      .close()
      .shape('axle'),
    pen(place).circle(arm, 0, 15).shape('clamp'),
    pen(place).circle(arm, 0, 7).shape('axle'),
    pen().circle(pivot.x, pivot.y, 19).shape('clamp'),
    pen().circle(pivot.x, pivot.y, 8).shape('axle'),
  ];
}

/** Where the shock is drawn when only a table is known; no number depends on it. */
export function shockEnds(standing: Stance, bike: Bike): { top: Point; bottom: Point } {
  const { seat } = standing.machine.places;
  const arm = standing.machine.rear.arm;
  const angle = standing.arm.angle;
  const onArm = (part: number, off: number): Point =>
    onGround(standing.pose, {
      x: -arm * part * Math.cos(angle) - off * Math.sin(angle),
      y: -arm * part * Math.sin(angle) + off * Math.cos(angle),
    });
  if (bike.bodywork === 'naked')
    return { top: onGround(standing.pose, { x: seat.x - 175, y: seat.y - 75 }), bottom: onArm(0.86, 24) };
  return {
    top: onGround(standing.pose, { x: seat.x * 0.3 - 55, y: seat.y * 0.72 }),
    bottom: onArm(0.24, 12),
  };
}

/** Shock with its spring, and the links that press it. With real links every bolt is where it is. */
export function shockShapes(standing: Stance, bike: Bike): Shape[] {
  const { top, bottom } = shockEyes(standing) ?? shockEnds(standing, bike);
  const place = along(top, bottom);
  const length = Math.hypot(bottom.x - top.x, bottom.y - top.y);
  const springFrom = 34;
  const springTo = length * 0.78;
  const pitch = (springTo - springFrom) / SPRING_TURNS;
  const spring = pen(place);
  for (let i = 0; i < SPRING_TURNS; i++) {
    const at = springFrom + i * pitch;
    spring
      .move(at, -SPRING_HALF)
      .curve(
        at + pitch * 0.2,
        -SPRING_HALF * 0.4,
        at + pitch * 0.4,
        SPRING_HALF * 0.4,
        at + pitch * 0.6,
        SPRING_HALF,
      );
  }
  return [
    ...linkShapes(standing),
    pen(place)
      .move(0, -SHOCK_BODY_HALF)
      .line(length * 0.62, -SHOCK_BODY_HALF, length * 0.62, SHOCK_BODY_HALF, 0, SHOCK_BODY_HALF)
      .close()
      .shape('shock'),
    pen(place)
      .move(length * 0.62, -7)
      .line(length, -7, length, 7, length * 0.62, 7)
      .close()
      .shape('shock'),
    pen(place)
      .move(springFrom - 8, -SPRING_HALF - 3)
      .line(springFrom, -SPRING_HALF - 3, springFrom, SPRING_HALF + 3, springFrom - 8, SPRING_HALF + 3)
      .close()
      .shape('shock'),
    pen(place)
      .move(springTo, -SPRING_HALF - 3)
      .line(springTo + 8, -SPRING_HALF - 3, springTo + 8, SPRING_HALF + 3, springTo, SPRING_HALF + 3)
      .close()
      .shape('shock'),
    spring.shape('spring', { widthMm: 9 }),
    pen(place).circle(0, 0, 15).shape('clamp'),
    pen(place).circle(length, 0, 15).shape('clamp'),
  ];
}
