/** Tests of the digits that figures in one sentence need to read apart. */
import { expect, it } from 'vitest';
import { writeApart } from './write-apart.ts';

const mm = { system: 'metric', decimal: '.' } as const;
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const used = (...figures: readonly number[]): string =>
  plain(writeApart((write) => figures.map((figure) => write(figure, 'length')).join(' of '), mm));

it('adds digits until two figures that differ read apart', () => {
  expect(used(54.62, 54.6)).toBe('54.62 mm of 54.60 mm');
  expect(used(54.6, 50)).toBe('54.6 mm of 50.0 mm');
});

it('adds none to tell apart two figures that are the same, or that no digits tell apart', () => {
  expect(used(54.6, 54.6)).toBe('54.6 mm of 54.6 mm');
  expect(used(54.6, 54.6 + 1e-12)).toBe('54.6 mm of 54.6 mm');
});

it('adds only what the figures that differ need, beside two that are the same', () => {
  expect(used(54.6, 54.6, 54.62)).toBe('54.60 mm of 54.60 mm of 54.62 mm');
});
