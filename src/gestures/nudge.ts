/** Moving a point with the arrow keys. */
import type { Point } from '../core/plane/point.ts';
import type { KeyInput } from './side-view-input.ts';

/** Unit vectors of the ground frame, y up. */
const ARROWS: ReadonlyMap<string, Point> = new Map([
  ['ArrowLeft', { x: -1, y: 0 }],
  ['ArrowRight', { x: 1, y: 0 }],
  ['ArrowDown', { x: 0, y: -1 }],
  ['ArrowUp', { x: 0, y: 1 }],
]);

/** One press of an arrow key, mm; with Shift and with Alt that many times as far. */
const STEP = 1;
const SHIFT_TIMES = 10;
const ALT_TIMES = 0.1;

/** How far a key moves a point, ground frame, mm; null for a key that moves none, as with Ctrl the arrows do. */
export function nudge({ key, shift, alt, ctrl }: Omit<KeyInput, 'type'>): Point | null {
  const arrow = ctrl ? undefined : ARROWS.get(key);
  if (arrow === undefined) return null;
  const by = STEP * (shift ? SHIFT_TIMES : 1) * (alt ? ALT_TIMES : 1);
  return { x: arrow.x * by, y: arrow.y * by };
}
