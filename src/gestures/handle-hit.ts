/** Which handles lie under a pointer, whose reach is in px of the screen and so the same at every scale. */
import type { PointerKind } from './side-view-input.ts';

export interface HandleSpot {
  readonly id: string;
  readonly xPx: number;
  readonly yPx: number;
}

/** Half of 24 px for a mouse or a pen, half of 44 px for a finger: WCAG 2.2, target sizes of level AA and AAA. */
export function hitRadiusPx(pointer: PointerKind): number {
  return pointer === 'touch' ? 22 : 12;
}

/** The handles within `radiusPx` of a place, the nearest first; of equally near ones the earlier in the list. */
export function handlesAt(
  handles: readonly HandleSpot[],
  xPx: number,
  yPx: number,
  radiusPx: number,
): readonly string[] {
  return handles
    .map(({ id, xPx: x, yPx: y }) => ({ id, away: Math.hypot(x - xPx, y - yPx) }))
    .filter(({ away }) => away <= radiusPx)
    .sort((a, b) => a.away - b.away)
    .map(({ id }) => id);
}
