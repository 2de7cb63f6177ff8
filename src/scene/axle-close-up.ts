/** The rear axle in its slot, larger, before and now. */
import type { Point } from '../core/plane/point.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { shownDifference, writeNumber } from '../core/units/number-style.ts';
import { axleMoved } from '../words/change/axle-moved.ts';
import { isLess } from '../core/units/least-told.ts';
import { shownChange } from '../words/change/shown-change.ts';
import { closeUpFrame, leastSizes } from './close-up-frame.ts';
import { AROUND, changeLines, doubledFor, LEAST_TIMES, pageOf, type MakeCloseUp } from './close-up.ts';

/** Half the height of arm and slot, and the axle's radius, mm: as on the side view. */
const ARM_HALF = 22;
const SLOT_HALF = 9;
const AXLE_RADIUS = 8;
/** How far the arm goes on behind its slot, mm. */
const BEHIND_SLOT = 24;
/** How far above the axle its way is drawn, mm: the scale's words stand below. */
const WAY_ABOVE = 15;
/** Corners of a circle. */
const ROUND = 32;

export const axleCloseUp: MakeCloseUp = (live, baseline, { style, sizePx, view }) => {
  const { chain } = live.machine;
  const [before, now] = [placeInSlot(baseline), placeInSlot(live)];
  if (chain === null || isLess(now - before, 'length')) return null;
  const change = shownChange(shownDifference(before, now, 'length', style), 'length', style);
  const [from, to] = [before, now].map((value) => writeNumber(value, 'length', style));
  const base = changeLines('Wheelbase', baseline.pose.wheelbase, live.pose.wheelbase, 'length', style);
  const heading = {
    lines: [axleMoved(change), `${from.digits} → ${to.text}`, ...base.slice(0, 1)],
    short: `Axle ${change.signed}`,
  };
  const { slot } = chain.slot;
  return {
    key: 'axle',
    at: live.rearAxle,
    ...leastSizes(heading.lines, heading.short, sizePx),
    draw(box) {
      const frame = closeUpFrame(pageOf(box, heading, sizePx, style, view));
      const whole = frame.widthPx / ((1 + 2 * AROUND) * Math.max(slot, Math.abs(now - before), 1));
      const scale = doubledFor(Math.min(whole, frame.heightPx / (3 * ARM_HALF)), Math.abs(now - before));
      if (scale < LEAST_TIMES * view.scale) return [];
      const { cos, sin } = Math;
      const { swingarmAngle: angle } = live;
      // So far back along the arm from the slot's front end, and so far above it.
      const on = (back: number, up: number): Point => ({
        x: -back * cos(angle) - up * sin(angle),
        y: -back * sin(angle) + up * cos(angle),
      });
      const reach = frame.widthPx / scale;
      const bar = (start: number, end: number, half: number): Point[] => [
        on(start, half),
        on(end, half),
        on(end, -half),
        on(start, -half),
      ];
      const circle = (back: number, radius: number): Point[] =>
        Array.from({ length: ROUND }, (_, i) => {
          const turn = (2 * Math.PI * i) / ROUND;
          return on(back + radius * cos(turn), radius * sin(turn));
        });
      const drawer = frame.look(on((before + now) / 2, 0), scale);
      drawer.area('swingarm', bar(-reach, slot + BEHIND_SLOT, ARM_HALF));
      drawer.area('axle', bar(-SLOT_HALF, slot + SLOT_HALF, SLOT_HALF));
      drawer.area('shadowBody', circle(before, AXLE_RADIUS));
      drawer.area('trailTriangle', circle(now, AXLE_RADIUS));
      for (const [role, back] of [
        ['shadow', before],
        ['trailLine', now],
      ] as const)
        drawer.line(role, on(back, SLOT_HALF), on(back, ARM_HALF));
      drawer.arrow('dimension', on(before, WAY_ABOVE), on(now, WAY_ABOVE));
      drawer.finish('right');
      return drawer.shapes;
    },
  };
};

/** How far back from the front end of its slot the axle is clamped, mm. */
function placeInSlot({ machine }: StandingBike): number {
  return machine.rear.arm - machine.rear.slotFrontArm;
}
