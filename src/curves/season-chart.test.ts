/** Tests of the chart of one figure over the setup sheets. */
import { expect, it } from 'vitest';
import { seasonChart } from './season-chart.ts';

const style = { system: 'metric', decimal: '.' } as const;
const size = { widthPx: 400, heightPx: 160, textPx: 12 };

it('has a mark for each sheet with a figure, from left to right, higher for more', () => {
  const chart = seasonChart({ name: 'Trail', quantity: 'length', values: [96, null, 99, 94] }, style, size);
  const marks = chart.scene[0].shapes.flatMap((shape) =>
    shape.kind === 'mark' && shape.role === 'curveNow' ? [shape.at] : [],
  );
  // The first figure stands alone, so its curve is a dot as well.
  const places = [...new Map(marks.map((at) => [at.x, at])).values()].sort((a, b) => a.x - b.x);
  expect(places).toHaveLength(3);
  expect(places[0].x).toBeCloseTo(chart.leftPx, 6);
  expect(places[2].x).toBeCloseTo(chart.rightPx, 6);
  // The scene's y goes up.
  expect(places[1].y).toBeGreaterThan(places[0].y);
  expect(places[2].y).toBeLessThan(places[0].y);
});

it('has a field for a figure that never changes, and for none at all', () => {
  for (const values of [[5, 5], [null, null], []]) {
    const { topPx, bottomPx, scene } = seasonChart({ name: 'Rake', quantity: 'angle', values }, style, size);
    expect(bottomPx).toBeGreaterThan(topPx);
    expect(JSON.stringify(scene)).not.toMatch(/null|NaN/);
  }
});
