/** Tests of figures kept as they were typed. */
import { expect, it } from 'vitest';
import { figureValue, typedFigure } from './typed-figure.ts';

const metric = { system: 'metric', decimal: '.' } as const;
const inch = { system: 'inch', decimal: '.' } as const;

it.each([
  ['1420', metric, 'length', '1420', 'mm', 1420],
  ['25,4', metric, 'length', '25,4', 'mm', 25.4],
  ['17 3/4"', metric, 'length', '17 3/4', '"', 450.85],
  ['17 3/4', inch, 'length', '17 3/4', 'in', 450.85],
  ['1.5 m', inch, 'length', '1.5', 'm', 1500],
  ['24.5', metric, 'angle', '24.5', '°', 24.5],
  ['−3°', metric, 'angle', '−3', '°', -3],
  ['190 lb', metric, 'mass', '190', 'lb', 190 * 0.45359237],
  ['15', metric, 'teeth', '15', 'teeth', 15],
] as const)('%s means the same in either unit system', (words, style, quantity, figure, unit, value) => {
  const typed = typedFigure(words, quantity, style);
  expect(typed).toEqual({ figure, unit });
  expect(figureValue(typed, quantity)).toBeCloseTo(value, 8);
});

it('nothing typed is no number', () => {
  expect(figureValue({ figure: '', unit: '' }, 'length')).toBeNull();
});
