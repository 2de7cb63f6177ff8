/** The chart of one figure over the setup sheets of a bike, in their order. */
import type { QuantityKey } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { chartCurve } from './chart-curve.ts';
import { chartField } from './chart-field.ts';
import { chartMark } from './chart-line.ts';
import type { Chart } from './chart.ts';
import type { ChartSize } from './floor-chart.ts';

export interface SeasonCurve {
  /** What the figure is called, and what it counts. */
  readonly name: string;
  readonly quantity: QuantityKey;
  /** Metric, one a sheet; null where a sheet has none. */
  readonly values: readonly (number | null)[];
}

/** Room above and below a figure that never changes, in its metric unit. */
const LEAST_SPAN = 1;

export function seasonChart(
  { name, quantity, values }: SeasonCurve,
  style: NumberStyle,
  size: ChartSize,
): Chart {
  const numbers = values.filter((value): value is number => value !== null);
  const least = numbers.length === 0 ? 0 : Math.min(...numbers);
  const most = numbers.length === 0 ? 0 : Math.max(...numbers);
  const spare = Math.max(0, LEAST_SPAN - (most - least)) / 2;
  const field = chartField({
    across: { name: 'Sheet', quantity: 'count', from: 1, to: Math.max(2, values.length) },
    up: { name, quantity, from: least - spare, to: most + spare },
    style,
    ...size,
    rows: 1,
  });
  const { view, leftPx, rightPx, topPx, bottomPx, place } = field;
  const sheets = values.map((_, i) => i + 1);
  const marks = values.flatMap((value, i) =>
    value === null ? [] : [chartMark('curveNow', 'dot', place(i + 1, value))],
  );
  return {
    scene: [
      {
        name: 'construction',
        ink: 1,
        shapes: [...field.grid, ...chartCurve('curveNow', field, sheets, values), ...marks],
      },
      { name: 'labels', ink: 1, shapes: [...field.words] },
    ],
    view,
    leftPx,
    rightPx,
    topPx,
    bottomPx,
  };
}
