/** About the instant centre, larger: swingarm line, upper run and squat line, before and now. */
import { antiSquat } from '../core/readings/anti-squat.ts';
import { throttleIsClosed } from '../core/riding/throttle-closed.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { degrees } from '../core/units/convert.ts';
import { shownDifference, writeChange } from '../core/units/number-style.ts';
import type { Point } from '../core/plane/point.ts';
import { isLess } from '../core/units/least-told.ts';
import { closeUpFrame, leastSizes, type Drawer } from './close-up-frame.ts';
import { changeLines, LEAST_TIMES, pageOf, type MakeCloseUp } from './close-up.ts';
import { instantCentreShown } from './construction/construction-drawing.ts';
import { squatConstruction } from './construction/squat-construction.ts';
import type { Role } from './shapes/shape.ts';

/** Instant centres far apart are shown at the side view's scale, or a little smaller, without the bike over them. */
const LEAST_OF_CENTRES = 0.6;
/** The two instant centres lie so far apart, as a part of the picture's width and height, at the first of these scales that holds them, in times of the side view's. */
const CENTRES_APART = 0.45;
const TIMES = [8, 5, 3, 2, LEAST_TIMES];

export const rearCloseUp: MakeCloseUp = (live, baseline, { style, sizePx, view }) => {
  const [before, now] = [antiSquat.read(baseline), antiSquat.read(live)];
  if (typeof before !== 'number' || typeof now !== 'number' || throttleIsClosed(live)) return null;
  const [angleBefore, angleNow] = [degrees(baseline.swingarmAngle), degrees(live.swingarmAngle)];
  const isSame = isLess(now - before, 'percent');
  if (isSame && isLess(angleNow - angleBefore, 'angle')) return null;
  const centres = [instantCentreShown(baseline), instantCentreShown(live)];
  const [centreBefore, centreNow] = centres;
  if (centreBefore === null || centreNow === null) return null;
  const squatWords = changeLines('Anti-squat', before, now, 'percent', style);
  const angleWords = changeLines('Swingarm', angleBefore, angleNow, 'angle', style);
  const lines = isSame ? angleWords : [...squatWords, ...angleWords.slice(0, 1)];
  const points = writeChange(shownDifference(before, now, 'percent', style), 'percent', style);
  // The label of the squat line has the sign of its figure beside it.
  const heading = { lines, short: isSame ? lines[0] : `Anti-squat ${points.digits}` };
  return {
    key: 'rear',
    at: centreNow,
    ...leastSizes(heading.lines, heading.short, sizePx),
    draw(box) {
      const frame = closeUpFrame(pageOf(box, heading, sizePx, style, view));
      const across = Math.abs(centreNow.x - centreBefore.x) / frame.widthPx;
      const up = Math.abs(centreNow.y - centreBefore.y) / frame.heightPx;
      const most = CENTRES_APART / (view.scale * Math.max(across, up));
      const times = TIMES.find((each) => each <= most) ?? most;
      if (times < LEAST_OF_CENTRES) return [];
      const scale = times * view.scale;
      const middle = { x: (centreBefore.x + centreNow.x) / 2, y: (centreBefore.y + centreNow.y) / 2 };
      const drawer = frame.look(middle, scale);
      drawLines(drawer, baseline, centreBefore, true);
      drawLines(drawer, live, centreNow, false);
      drawer.arrow('dimension', centreBefore, centreNow);
      // Below the squat line, which rises to the right, nothing is drawn.
      drawer.finish('right');
      return drawer.shapes;
    },
  };
};

/** Swingarm line, upper run and squat line through the instant centre, from the rear patch. */
function drawLines(drawer: Drawer, standing: StandingBike, centre: Point, isBefore: boolean): void {
  const { swingarm, chain } = squatConstruction(standing);
  const beyond = { x: 2 * centre.x, y: 2 * centre.y };
  const role = (live: Role): Role => (isBefore ? 'shadow' : live);
  drawer.line(role('swingarmLine'), swingarm.from, centre);
  if (chain !== null) drawer.line(role('chainLine'), chain.from, centre);
  drawer.line(role('squatLine'), { x: 0, y: 0 }, beyond);
  drawer.mark(isBefore ? 'shadow' : 'axle', standing.pose.pivot, 'dot', 4);
  drawer.mark(role('instantCentre'), centre, 'ring', 6);
}
