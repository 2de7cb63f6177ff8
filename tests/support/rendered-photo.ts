/** Photos of bikes as a camera would take them, painted pixel by pixel in grey from true figures. */
import { onPicture, onPlane, type Camera } from '../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import type { Origin } from '../../src/core/measure/held/unknowns.ts';
import { DEPTHS, RIM_DEPTH, RIM_RADIUS } from './pictured-bike.ts';

export interface RenderedPhoto {
  readonly widthPx: number;
  readonly heightPx: number;
  /** One level of grey a pixel, by rows. */
  readonly light: Uint8Array;
}

/** Levels of grey. */
const FLOOR = 205;
const TYRE = 45;
const RIM = 190;
const WITHIN = 120;
const MARK = 20;
const RIM_WIDTH = 14;
const MARK_RADIUS = 9;
const MARK_DOT = 3;
/** Photographic noise, levels of grey (1 σ). */
export const LIGHT_NOISE = 3;

/** From 0 to 1 as a distance passes zero, over about one pixel and a half. */
const step = (px: number): number => {
  const t = Math.min(1, Math.max(0, px / 1.6 + 0.5));
  return t * t * (3 - 2 * t);
};

const mix = (from: number, to: number, part: number): number => from + (to - from) * part;

/** The bike of these values on its wheels: tyres and rims, and a ring with a dot where each part is. */
export function renderedPhoto(
  origin: Origin,
  values: readonly number[],
  camera: Camera,
  normal: () => number,
): RenderedPhoto {
  const held = holdBike(postureOf(origin, values), 'onWheels');
  if (held === null) throw new Error('the bike cannot be held so');
  const place = (part: MeasurePartKey) => {
    const at = held.place(part);
    if (at === null) throw new Error(part);
    return at;
  };
  const { widthPx, heightPx } = camera;
  const levels = new Float32Array(widthPx * heightPx).fill(FLOOR);
  const disc = (at: { x: number; y: number }, depth: number, reach: number, paint: Paint): void => {
    const corners = [-1, 1].flatMap((i) =>
      [-1, 1].map((j) => onPicture(camera, { x: at.x + i * reach, y: at.y + j * reach, z: depth })),
    );
    const xs = corners.map((c) => c?.x ?? 0);
    const ys = corners.map((c) => c?.y ?? 0);
    for (
      let row = Math.max(0, Math.floor(Math.min(...ys)) - 3);
      row < Math.min(heightPx, Math.max(...ys) + 3);
      row++
    )
      for (
        let column = Math.max(0, Math.floor(Math.min(...xs)) - 3);
        column < Math.min(widthPx, Math.max(...xs) + 3);
        column++
      ) {
        const met = onPlane(camera, { x: column + 0.5, y: row + 0.5 }, depth);
        if (met === null) continue;
        const away = Math.hypot(met.x - at.x, met.y - at.y);
        const i = row * widthPx + column;
        levels[i] = paint(levels[i], (radius) => step((radius - away) * met.pxPerMm));
      }
  };
  for (const [axle, radius] of [
    ['rearAxle', held.freeRadius.rear],
    ['frontAxle', held.freeRadius.front],
  ] as const) {
    const at = place(axle);
    disc(at, 0, radius, (level, inside) => mix(level, TYRE, inside(radius)));
    disc(at, RIM_DEPTH, RIM_RADIUS, (level, inside) =>
      mix(mix(level, RIM, inside(RIM_RADIUS)), WITHIN, inside(RIM_RADIUS - RIM_WIDTH)),
    );
  }
  for (const [part, depth] of DEPTHS)
    disc(place(part), depth, MARK_RADIUS, (level, inside) =>
      mix(mix(mix(level, 255, inside(MARK_RADIUS)), MARK, inside(MARK_RADIUS - 3)), 255, inside(MARK_DOT)),
    );
  return {
    widthPx,
    heightPx,
    light: Uint8Array.from(levels, (level) =>
      Math.min(255, Math.max(0, Math.round(level + LIGHT_NOISE * normal()))),
    ),
  };
}

type Paint = (level: number, inside: (radius: number) => number) => number;
