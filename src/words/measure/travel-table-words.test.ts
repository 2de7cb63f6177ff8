/** Tests of what is said of a travel table: its ±, and when the links serve better. */
import { expect, it } from 'vitest';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { rowOffWords, travelTableWords } from './travel-table-words.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

it('says that rows without a ± count as exact', () => {
  expect(travelTableWords(null, style)).toContain('The rows count as exact');
  expect(travelTableWords(null, style)).toContain('Entering the links serves better');
});

it('says what ± motion ratio and wheel rate have, and sends to the links where those are better', () => {
  const rough = { ratio: { mean: 0.007, most: 0.021 }, rate: { mean: 0.11, most: 0.153 } };
  const words = plain(travelTableWords(rough, style));
  expect(words).toContain('motion ratio is known to ±0.7 % on average over the travel and ±2.1 % at worst');
  expect(words).toContain(
    'Rear wheel rate with this spring: ±11 % on average over the travel and ±15 % at worst.',
  );
  expect(words).toContain(
    'Entering the links serves better where you can reach them (Rear suspension, Layout): bolts measured to 1 mm',
  );
});

it('lets a good table stand beside a rocker’s links', () => {
  const good = { ratio: { mean: 0.004, most: 0.004 }, rate: { mean: 0.02, most: 0.06 } };
  const words = plain(travelTableWords(good, style));
  expect(words).toContain('motion ratio is known to ±0.4 %.');
  expect(words).toContain('as good as the links of a rocker');
  expect(words).not.toContain('serves better where');
});

it('sends to the links where a table is good on average and poor in one place', () => {
  const uneven = { ratio: { mean: 0.02, most: 0.05 }, rate: { mean: 0.097, most: 0.42 } };
  const words = plain(travelTableWords(uneven, style));
  expect(words).toContain('On average that is as good as the links of a rocker, but not where it is worst.');
  expect(words).toContain('(Rear suspension, Layout)');
});

it('speaks of the ratio alone while the springs are not known', () => {
  const words = travelTableWords({ ratio: { mean: 0.01, most: 0.02 }, rate: null }, style);
  expect(words).not.toContain('with this spring');
  expect(words).toContain('More rows make it better.');
});

it('names the row that does not fit, by how much, and which way', () => {
  const words = plain(rowOffWords({ row: 3, off: -2.04, within: 0.9 }, style));
  expect(words).toMatch(/^Row 4 does not fit the others: its stroke is 2\.0 mm less than they make it/);
  expect(words).toContain('explains 0.9 mm at most');
  expect(plain(rowOffWords({ row: 3, off: 2.04, within: 0.9 }, style))).toContain('2.0 mm more');
});
