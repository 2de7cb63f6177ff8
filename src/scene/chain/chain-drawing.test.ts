/** Tests of the drawn chain where the guide under the pivot bends its lower run. */
import { describe, expect, it } from 'vitest';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Point } from '../../core/plane/point.ts';
import { drivePlaces, guideShapes, lowerRun, pitchLine, type Stretch } from './chain-drawing.ts';

const RADIUS = 62;
const under = standing(withFrame(plainBike, { guideRadius: null, lowerGuideRadius: RADIUS }));
const free = standing(withFrame(plainBike, { guideRadius: null }));

function end(stretch: Stretch, which: 'from' | 'to'): Point {
  if (stretch.kind === 'run') return stretch[which];
  const angle = stretch.from + (which === 'to' ? stretch.sweep : 0);
  const { centre, radius } = stretch;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

describe('the chain drawn under its guide', () => {
  it('is one closed line that keeps the guide’s radius from the pivot', () => {
    const line = pitchLine(drivePlaces(under));
    expect(line.map(({ kind }) => kind)).toEqual(['run', 'wrap', 'run', 'wrap', 'run', 'wrap']);
    line.forEach((stretch, i) => {
      const next = end(line[(i + 1) % line.length], 'from');
      const here = end(stretch, 'to');
      expect(Math.hypot(here.x - next.x, here.y - next.y)).toBeLessThan(1e-9);
    });
    const pivot = under.pose.pivot;
    for (const { from, to } of lowerRun(drivePlaces(under)))
      for (let i = 0; i <= 100; i++) {
        const x = from.x + ((to.x - from.x) * i) / 100;
        const y = from.y + ((to.y - from.y) * i) / 100;
        expect(Math.hypot(x - pivot.x, y - pivot.y)).toBeGreaterThan(RADIUS - 1e-9);
      }
    const wrap = line[3];
    expect(wrap).toMatchObject({ kind: 'wrap', centre: pivot, radius: RADIUS });
    expect(Math.abs(wrap.kind === 'wrap' ? wrap.sweep : Math.PI)).toBeLessThan(0.5);
  });

  it('runs straight where it passes clear', () => {
    expect(pitchLine(drivePlaces(free)).map(({ kind }) => kind)).toEqual(['run', 'wrap', 'run', 'wrap']);
  });

  it('lies on the guide that is drawn: a circle for one radius, a half for each of two', () => {
    const arcs = (upper: number | null, lower: number | null): number[][] =>
      guideShapes(standing(withFrame(plainBike, { guideRadius: upper, lowerGuideRadius: lower })), 5).map(
        (shape) =>
          shape.kind === 'path'
            ? shape.steps.flatMap((step) => (step.op === 'arc' ? [step.radius, step.to - step.from] : []))
            : [],
      );
    expect(arcs(30, null)).toEqual(arcs(30, 30));
    expect(arcs(30, null)).toHaveLength(1);
    expect(arcs(30, 40)).toEqual([
      [25, -Math.PI],
      [35, -Math.PI],
    ]);
    expect(arcs(null, 40)).toEqual([[35, -Math.PI]]);
    expect(arcs(null, null)).toEqual([]);
  });
});
