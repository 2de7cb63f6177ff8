/** The view: where the ground frame lies on the screen, at what scale, turned by how much. */
import type { Point } from '../../core/plane/point.ts';

/**
 * From ground frame (mm, y up) to screen (px, y down): turned counter-clockwise by `turn`, scaled, then shifted so
 * that the ground frame's origin is at (xPx, yPx).
 */
export interface View {
  readonly scale: number;
  readonly turn: number;
  readonly xPx: number;
  readonly yPx: number;
}

/** Smallest and largest scale, px per mm: a whole van on a phone, a bolt on a screen. */
export const LEAST_SCALE = 0.05;
export const MOST_SCALE = 8;

export function toScreen(view: View, p: Point): Point {
  const c = Math.cos(view.turn) * view.scale;
  const s = Math.sin(view.turn) * view.scale;
  return { x: view.xPx + c * p.x - s * p.y, y: view.yPx - s * p.x - c * p.y };
}

export function toGround(view: View, screen: Point): Point {
  const dx = (screen.x - view.xPx) / view.scale;
  const dy = -(screen.y - view.yPx) / view.scale;
  const c = Math.cos(view.turn);
  const s = Math.sin(view.turn);
  return { x: c * dx + s * dy, y: -s * dx + c * dy };
}

/** The view zoomed by a factor about a screen point, which keeps showing the same place. */
export function zoomedAbout(view: View, at: Point, factor: number): View {
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, view.scale * factor));
  const ratio = scale / view.scale;
  return {
    ...view,
    scale,
    xPx: at.x + (view.xPx - at.x) * ratio,
    yPx: at.y + (view.yPx - at.y) * ratio,
  };
}

export function panView(view: View, dxPx: number, dyPx: number): View {
  return { ...view, xPx: view.xPx + dxPx, yPx: view.yPx + dyPx };
}

/** What has to be seen, ground frame, mm. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The level view that shows an extent whole in a window of the size given, with a margin all round. */
export function fitView(extent: Extent, widthPx: number, heightPx: number, marginPx: number): View {
  const width = Math.max(1, extent.right - extent.left);
  const height = Math.max(1, extent.top - extent.bottom);
  const free = (whole: number) => Math.max(whole * 0.5, whole - 2 * marginPx);
  const scale = Math.min(
    MOST_SCALE,
    Math.max(LEAST_SCALE, Math.min(free(widthPx) / width, free(heightPx) / height)),
  );
  return {
    scale,
    turn: 0,
    xPx: widthPx / 2 - (scale * (extent.left + extent.right)) / 2,
    yPx: heightPx / 2 + (scale * (extent.bottom + extent.top)) / 2,
  };
}
