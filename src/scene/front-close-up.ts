/** The front patch larger: trail triangle and steering axis, before and now. */
import { groundTrail } from '../core/readings/trail.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { degrees } from '../core/units/convert.ts';
import type { Point } from '../core/plane/point.ts';
import { isLess } from '../core/units/least-told.ts';
import { closeUpFrame, leastSizes, SCALE_ROOM, type Drawer } from './close-up-frame.ts';
import { AROUND, changeLines, doubledFor, LEAST_TIMES, pageOf, type MakeCloseUp } from './close-up.ts';
import { trailPlaces } from './construction/construction-drawing.ts';
import type { Role } from './shapes/shape.ts';

/** How far below the ground the change of the trail is drawn, px. */
const BELOW_PX = 9;
/** The part of a picture that lies below the ground at most. */
const MOST_BELOW = 0.55;

export const frontCloseUp: MakeCloseUp = (live, baseline, { style, sizePx, view }) => {
  const trailOf = ({ machine, rake, offset }: StandingBike) => groundTrail(machine.frontRadius, rake, offset);
  const [before, now] = [trailOf(baseline), trailOf(live)];
  const [rakeBefore, rakeNow] = [degrees(baseline.rake), degrees(live.rake)];
  const isSame = isLess(now - before, 'length');
  if (isSame && isLess(rakeNow - rakeBefore, 'angle')) return null;
  const trailWords = changeLines('Trail', before, now, 'length', style);
  const rakeWords = changeLines('Rake', rakeBefore, rakeNow, 'angle', style);
  const lines = isSame ? rakeWords : [...trailWords, ...rakeWords.slice(0, 1)];
  const heading = { lines, short: lines[0] };
  return {
    key: 'front',
    at: { x: live.pose.wheelbase, y: 0 },
    ...leastSizes(heading.lines, heading.short, sizePx),
    draw(box) {
      const frame = closeUpFrame(pageOf(box, heading, sizePx, style, view));
      const [least, most] = [Math.min(0, before, now), Math.max(0, before, now)];
      const whole = frame.widthPx / ((1 + 2 * AROUND) * Math.max(most - least, 1));
      const scale = isSame ? whole : doubledFor(whole, Math.abs(now - before));
      if (scale < LEAST_TIMES * view.scale) return [];
      // The whole triangle where the change shows in it; otherwise the foot of the axis, with the patch to one side.
      const middle = scale > whole ? (before + now) / 2 : (least + most) / 2;
      const aside = scale > whole ? 0.8 : 0.5;
      // The scale and the change lie below the ground, where the triangle is not.
      const belowPx = Math.max(2.4 * BELOW_PX, SCALE_ROOM * sizePx);
      const ground = Math.min(MOST_BELOW, belowPx / frame.heightPx);
      const drawer = frame.look({ x: middle, y: 0 }, scale, aside, ground);
      const reach = frame.widthPx / scale;
      drawTriangle(drawer, baseline, 'shadowBody', 'shadow');
      drawTriangle(drawer, live, 'trailTriangle', 'steeringAxis');
      drawer.line('ground', { x: middle - reach, y: 0 }, { x: middle + reach, y: 0 });
      drawer.line('trailLine', { x: 0, y: 0 }, { x: now, y: 0 });
      if (!isSame) {
        const y = -BELOW_PX / scale;
        drawer.line('highlight', { x: before, y: 0 }, { x: now, y: 0 });
        drawer.arrow('dimension', { x: before, y }, { x: now, y });
      }
      drawer.mark('axle', { x: 0, y: 0 }, 'dot', 3.5);
      drawer.finish('left');
      return drawer.shapes;
    },
  };
};

/** The trail triangle and the axis beyond it, laid with the patch at the origin. */
function drawTriangle(drawer: Drawer, standing: StandingBike, area: Role, axis: Role): void {
  const { axisGround, patch, top, head } = trailPlaces(standing);
  const fromPatch = ({ x, y }: Point): Point => ({ x: x - patch.x, y });
  drawer.area(area, [axisGround, patch, top].map(fromPatch));
  drawer.line(axis, fromPatch(axisGround), fromPatch(head));
}
