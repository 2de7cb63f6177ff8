/** Two fingers on the side view: what lies under each of them stays there as far as a pan and a zoom can do it. */
import type { SideViewEffect } from './side-view-effect.ts';

export interface Finger {
  readonly id: number;
  readonly xPx: number;
  readonly yPx: number;
}

/** Fingers nearer than this to each other say nothing about scale, px. */
const LEAST_APART_PX = 8;

type Two = readonly [Finger, Finger];

/** First the pan of the place between both fingers, then the zoom about where it is now. */
export function pinchEffects(before: Two, after: Two): SideViewEffect[] {
  const from = middle(before);
  const to = middle(after);
  const effects: SideViewEffect[] = [];
  const dxPx = to.xPx - from.xPx;
  const dyPx = to.yPx - from.yPx;
  if (dxPx !== 0 || dyPx !== 0) effects.push({ kind: 'pan', dxPx, dyPx });
  const factor = apart(after) / apart(before);
  if (factor !== 1) effects.push({ kind: 'zoom', ...to, factor });
  return effects;
}

function middle([a, b]: Two): { xPx: number; yPx: number } {
  return { xPx: (a.xPx + b.xPx) / 2, yPx: (a.yPx + b.yPx) / 2 };
}

function apart([a, b]: Two): number {
  return Math.max(LEAST_APART_PX, Math.hypot(b.xPx - a.xPx, b.yPx - a.yPx));
}
