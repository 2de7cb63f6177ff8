/** The ground that the bike stands on, with hatching below it as on a workshop drawing. */
import { pen } from './shapes/outline.ts';
import type { Shape } from './shapes/shape.ts';

/** How far the ground is drawn to both sides of the rear patch, mm, and its hatching. */
const REACH = 6000;
const HATCH_STEP = 60;
const HATCH_DEPTH = 16;

const GROUND: readonly Shape[] = (() => {
  const line = pen().move(-REACH, 0).line(REACH, 0);
  const hatch = pen();
  for (let x = -REACH; x < REACH; x += HATCH_STEP) hatch.move(x, 0).line(x - HATCH_DEPTH, -HATCH_DEPTH);
  return [hatch.shape('heightLine'), line.shape('ground')];
})();

export function groundShapes(): readonly Shape[] {
  return GROUND;
}
