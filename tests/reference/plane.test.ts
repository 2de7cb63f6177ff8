/** Tangents and crossings of circles against published ones. */
import { describe, expect, it } from 'vitest';
import plane from '../../fixtures/reference/plane.json';
import { outerTangent } from '../../src/core/plane/circle.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { thirdCorner } from '../../src/core/plane/triangle.ts';

function expectPoint(ours: Point, theirs: Point, digits: number): void {
  expect(ours.x).toBeCloseTo(theirs.x, digits);
  expect(ours.y).toBeCloseTo(theirs.y, digits);
}

// Source: beside each row of fixtures/reference/plane.json.
describe('circles', () => {
  it.each(['left', 'right'] as const)('have their %s outer tangent', (side) => {
    const [first, second] = plane.outerTangents.circles;
    const tangent = outerTangent(first, second, side);
    if (tangent === 'oneInsideOther') throw new Error(tangent);
    // Printed to 8 digits, one of the eight numbers to 7.
    expectPoint(tangent.from, plane.outerTangents[side][0], 6);
    expectPoint(tangent.to, plane.outerTangents[side][1], 6);
  });

  it('have their two crossing points', () => {
    const [a, b] = plane.circleCrossings.circles;
    const [dx, dy] = [b.centre.x - a.centre.x, b.centre.y - a.centre.y];
    const crossings = ([1, -1] as const).map((side) => {
      const corner = thirdCorner(dx, dy, a.radius ** 2, b.radius ** 2, side);
      if (corner === null) throw new Error('the circles do not meet');
      return { x: a.centre.x + corner.x, y: a.centre.y + corner.y };
    });
    crossings.sort((p, q) => p.x - q.x);
    crossings.forEach((crossing, i) => expectPoint(crossing, plane.circleCrossings.crossings[i], 12));
  });
});
