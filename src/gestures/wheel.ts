/** What a turn of the wheel does: zooms, and pans where it turns sideways. */
import type { SideViewEffect } from './side-view-effect.ts';
import type { WheelInput } from './side-view-input.ts';

/** A px of the wheel enlarges by this part; one event by no more px than this, so that a coarse wheel steps by 28 %. */
const ZOOM_PER_PX = 0.01;
const MOST_ZOOM_PX = 25;

export function wheelEffect({ xPx, yPx, dxPx, dyPx, ctrl }: WheelInput): SideViewEffect {
  // Never −0, which is not the same as 0.
  if (!ctrl && Math.abs(dxPx) > Math.abs(dyPx)) return { kind: 'pan', dxPx: 0 - dxPx, dyPx: 0 - dyPx };
  const turned = Math.min(MOST_ZOOM_PX, Math.max(-MOST_ZOOM_PX, dyPx));
  return { kind: 'zoom', xPx, yPx, factor: Math.exp(-ZOOM_PER_PX * turned) };
}
