/** Tests of the line that says what changed most. */
import { expect, it } from 'vitest';
import { READINGS } from '../../core/readings/all-readings.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { changeLine } from './change-line.ts';
import { mostChanged } from './most-changed.ts';

const STYLE: NumberStyle = { system: 'metric', decimal: '.' };
const called = (key: string): Reading => {
  const found = READINGS.find((reading) => reading.key === key);
  if (found === undefined) throw new Error(`there is no reading ${key}`);
  return found;
};
const [rake, trail, wheelbase, pivot] = ['rake', 'trail', 'wheelbase', 'pivotHeight'].map(called);

it('what a rider feels at the bar comes first, then what changed most, and only figures that changed', () => {
  const found = mostChanged(
    [
      { reading: wheelbase, before: 1400, now: 1400.01 },
      { reading: pivot, before: 375, now: 415 },
      { reading: rake, before: 24.3, now: 23.7 },
      { reading: trail, before: 100.1, now: 96.6 },
    ],
    STYLE,
  );
  expect(found.map(({ reading }) => reading.key)).toEqual(['trail', 'rake', 'pivotHeight']);
});

it('the line says how much and what it feels like, then what else changed', () => {
  const readings = [
    { reading: rake, before: 24.27, now: 23.69 },
    { reading: trail, before: 100.1, now: 96.6 },
    { reading: pivot, before: 375, now: 385 },
  ];
  expect(changeLine(readings, STYLE, 2)).toEqual({
    first: 'Trail −3.5\u00a0mm, slightly quicker steering.',
    rest: 'Rake −0.58°.',
  });
});

it('nothing that shows is no line', () => {
  expect(changeLine([{ reading: trail, before: 100.1, now: 100.1001 }], STYLE, 3)).toBeNull();
});
