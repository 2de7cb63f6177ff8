/** Tests of the readings in the words of a drive. */
import { expect, it } from 'vitest';
import { namedAdjusters } from '../core/adjusters/named-adjusters.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { Reading } from '../core/readings/reading.ts';
import { readingsOf } from './worded-readings.ts';

const textOf = ({ label, more, less, help }: Reading): string => JSON.stringify([label, more, less, help]);

it('a bike with a belt reads of its belt alone, but where chain and belt are named side by side', () => {
  const belts = readingsOf('belt').map(textOf);
  expect(belts.filter((text) => /belt/i.test(text)).length).toBeGreaterThan(5);
  expect(belts.filter((text) => /chain(?! or belt)/i.test(text))).toEqual([]);
});

it.each(['chain', 'shaft', 'hub'] as const)('a bike with %s reads what is written for a chain', (kind) => {
  expect(readingsOf(kind)).toBe(READINGS);
});

it('keys and figures are the same for a belt', () => {
  expect(readingsOf('belt').map(({ key, read }) => [key, read])).toEqual(
    READINGS.map(({ key, read }) => [key, read]),
  );
});

/** Every text that readings and adjusters bring with them, for both drives. */
const TEXTS = (['chain', 'belt'] as const).flatMap((kind) => [
  ...readingsOf(kind).map(textOf),
  ...namedAdjusters(kind).map(({ label, help }) => JSON.stringify([label, help])),
]);

it('no text has a decimal sign, which some readers write as a comma', () => {
  expect(TEXTS.filter((text) => /\d[.,]\d/.test(text))).toEqual([]);
});

it('a weight is called weight, and what the fork goes in fork travel', () => {
  expect(TEXTS.length).toBeGreaterThan(150);
  expect(TEXTS.filter((text) => /\bmass(es)?\b|front travel|countershaft sprocket/i.test(text))).toEqual([]);
});
