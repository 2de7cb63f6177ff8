/** What words and close-ups leave in sight: trail triangle, contact patches, instant centre and wheelbase arrow. */
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { instantCentreShown, trailPlaces, wheelbaseHeight } from './construction-drawing.ts';
import type { Box } from '../shapes/label-placing.ts';
import { toScreen, type View } from '../shapes/view.ts';

/** Half the size of what is kept clear about a place and about the wheelbase arrow, px. */
const PATCH_HALF_PX = 6;
const CENTRE_HALF_PX = 8;
const ARROW_HALF_PX = 4;
/** The trail triangle is kept clear in so many slices, each as wide as its lower edge. */
const SLICES = 4;
/** Width of the trail's words, as a part of their size. */
const TRAIL_WORDS = 10;
/** The part of a wheel's radius within which words are kept off it while there is room elsewhere. */
const WHEEL_PART = 0.8;

/** Boxes on the screen that nothing may lie over, px. */
export function keptClear(standing: Stance, view: View): Box[] {
  const { axisGround, patch, top } = trailPlaces(standing);
  const on = (place: Point) => toScreen(view, place);
  const boxes = [
    boxAbout([on({ x: 0, y: 0 })], PATCH_HALF_PX),
    boxAbout([on(patch)], PATCH_HALF_PX),
    // The arrow has its heads above and below its line, and nothing beyond its ends.
    boxAbout(
      [on({ x: 0, y: wheelbaseHeight() }), on({ x: patch.x, y: wheelbaseHeight() })],
      0,
      ARROW_HALF_PX,
    ),
  ];
  for (let i = 0; i < SLICES; i++) {
    const foot = between(axisGround, top, i / SLICES);
    const [low, high] = [between(patch, top, i / SLICES), between(patch, top, (i + 1) / SLICES)];
    boxes.push(boxAbout([on(foot), on(low), on(high)], 1));
  }
  const centre = instantCentreShown(standing);
  if (centre !== null) boxes.push(boxAbout([on(centre)], CENTRE_HALF_PX));
  return boxes;
}

/** Where the trail's figure stands, beside its triangle and under the ground, px: words may, a close-up may not. */
export function trailWordsBox(standing: Stance, view: View, sizePx: number): Box {
  const { x, y } = toScreen(view, trailPlaces(standing).axisGround);
  return { left: x, top: y, right: x + TRAIL_WORDS * sizePx, bottom: y + 2 * sizePx };
}

/** The front wheel as a box on the screen, px: words lie elsewhere while there is room. */
export function frontWheelBox({ frontAxle, machine }: Stance, view: View): Box {
  return boxAbout([toScreen(view, frontAxle)], WHEEL_PART * machine.frontRadius * view.scale);
}

function between(from: Point, to: Point, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}

function boxAbout(places: readonly Point[], half: number, halfHigh = half): Box {
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  return {
    left: Math.min(...xs) - half,
    top: Math.min(...ys) - halfHigh,
    right: Math.max(...xs) + half,
    bottom: Math.max(...ys) + halfHigh,
  };
}
