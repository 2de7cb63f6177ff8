/** Ghosts: the bike in other ride states or setups as outlines beside the present one, each with its name. */
import { onGround } from '../core/chassis/pose.ts';
import type { Bike } from '../core/parts/bike.ts';
import type { Point } from '../core/plane/point.ts';
import type { Stance } from '../core/standing/stance.ts';
import type { WantedLabel } from './shapes/label-placing.ts';
import { alignedAt, outlineShapes, shiftShapes, type ShadowAlign } from './shadow-drawing.ts';
import type { Role, Shape } from './shapes/shape.ts';
import { anchors } from './bike/silhouette-anchors.ts';

export interface Ghost {
  readonly name: string;
  readonly bike: Bike;
  readonly stance: Stance;
  /** A line unlike the others’; quiet dots where it is left out. */
  readonly role?: Role;
}

/** How far above the seat's line the tail's name points, mm: at the silhouette's upper edge. */
const TAIL_UP = 30;

/** The outlines of all ghosts, each with its place of `align` at `here`. */
export function ghostShapes(ghosts: readonly Ghost[], align: ShadowAlign, here: Point): Shape[] {
  return ghosts.flatMap(({ stance, bike, role = 'ghost' }) =>
    shiftShapes(outlineShapes(stance, bike, role), alignedAt(stance, align), here),
  );
}

/**
 * The names of all ghosts. They would crowd at one place of the bike, so they are named by turns at the steering
 * head, at the tail and at the front axle, where states differ most.
 */
export function ghostLabels(
  ghosts: readonly Ghost[],
  align: ShadowAlign,
  here: Point,
  sizePx: number,
): WantedLabel[] {
  return ghosts.map(({ name, stance, bike, role = 'ghost' }, i) => {
    const there = alignedAt(stance, align);
    const { hx, hy, lx, ly } = anchors(stance, bike);
    const spots = [
      { at: onGround(stance.pose, { x: hx, y: hy }), spot: 'right' as const },
      { at: onGround(stance.pose, { x: lx, y: ly + TAIL_UP }), spot: 'left' as const },
      {
        at: { x: stance.frontAxle.x + stance.machine.frontRadius, y: stance.frontAxle.y },
        spot: 'right' as const,
      },
    ];
    const { at, spot } = spots[i % spots.length];
    return {
      role,
      text: name,
      at: { x: at.x + here.x - there.x, y: at.y + here.y - there.y },
      spot,
      sizePx,
    };
  });
}
