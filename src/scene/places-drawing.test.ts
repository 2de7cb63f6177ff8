/** Tests of the ellipses about the points of a measured bike. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../tests/support/plain-bike.ts';
import { standing } from '../../tests/support/standing.ts';
import { normalNumbers } from '../core/numeric/normal-numbers.ts';
import { placesDrawn } from './places-drawing.ts';

const stance = standing(plainBike, plainSetup, { front: 20, rear: 20 });

it('an ellipse holds 95 of 100 points that scatter as its spread says', () => {
  const normal = normalNumbers(3);
  const [a, b, c] = [3, 1.2, 0.9];
  const drawn = placesDrawn({ bike: plainBike, stance }, [
    { key: 'pivot', along: a * a, up: b * b + c * c, both: a * b },
  ]);
  const scale = Number(/×(\d+)/.exec(drawn?.label.text ?? '')?.[1]);
  const { pivot } = stance.pose;
  // Where the ellipse begins and where its first quarter ends: the ends of both half axes.
  const ends = (drawn?.shapes[0].steps ?? []).flatMap((step) => ('x' in step ? [step] : []));
  const [p0, q0] = [ends[0], ends[1]].map(({ x, y }) => ({
    x: (x - pivot.x) / scale,
    y: (y - pivot.y) / scale,
  }));
  const [long, short, turn] = [Math.hypot(p0.x, p0.y), Math.hypot(q0.x, q0.y), Math.atan2(p0.y, p0.x)];
  let inside = 0;
  const all = 20_000;
  for (let i = 0; i < all; i++) {
    const [s, t] = [normal(), normal()];
    const [x, y] = [a * s, b * s + c * t];
    const [p, q] = [x * Math.cos(turn) + y * Math.sin(turn), y * Math.cos(turn) - x * Math.sin(turn)];
    if ((p / long) ** 2 + (q / short) ** 2 < 1) inside++;
  }
  expect(inside / all).toBeCloseTo(0.95, 2);
});

describe('the ellipses of a bike', () => {
  it('are enlarged alike until the middle one is seen, and say by how much', () => {
    const drawn = placesDrawn({ bike: plainBike, stance }, [
      { key: 'pivot', along: 1, up: 1, both: 0 },
      { key: 'steeringHead', along: 4, up: 1, both: 0 },
      { key: 'frontAxle', along: 4, up: 0, both: 0 },
    ]);
    expect(drawn?.label.text).toBe('± of points ×5');
    const [first] = drawn?.shapes ?? [];
    const [move] = first.steps;
    if (move.op !== 'move') throw new Error(move.op);
    const { pivot } = stance.pose;
    expect(Math.hypot(move.x - pivot.x, move.y - pivot.y)).toBeCloseTo(5 * Math.sqrt(-2 * Math.log(0.05)), 9);
  });

  it('draws no ellipse for a point that is exact', () => {
    expect(
      placesDrawn({ bike: plainBike, stance }, [{ key: 'rearPatch', along: 0, up: 0, both: 0 }]),
    ).toBeNull();
  });
});
