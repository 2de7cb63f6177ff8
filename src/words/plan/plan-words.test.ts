/** Tests of plans, first steps and raised ends in words. */
import { expect, it } from 'vitest';
import type { FirstStep } from '../../core/plan/first-steps.ts';
import { elsewhereWords, riseWords, twoEndsWords } from './plan-words.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const style = { system: 'metric', decimal: '.' } as const;
const inches = { ...style, system: 'inch' } as const;

it('what a step does elsewhere is a size, in points where the reading is a percentage', () => {
  const step = (reading: string, elsewhere: number | null): FirstStep => ({
    adjuster: 'shockLength',
    from: 0,
    to: 1,
    moved: { reading, before: 100, after: 102 },
    helps: true,
    elsewhere,
    there: 1,
  });
  expect(plain(elsewhereWords(step('trail', 0.42), style))).toBe('0.4 mm');
  expect(plain(elsewhereWords(step('antiSquat', 1.84), style))).toBe('1.8 points');
  expect(elsewhereWords(step('trail', null), style)).toBe('–');
});

it('raised ends say how high they were to come, in the unit of the person, and how far each came', () => {
  expect(plain(twoEndsWords(5, 'riderUp', style))).toBe(
    'Each end raised above its axle by the step that comes nearest to 5.0 mm, and both together, rider on board.',
  );
  expect(plain(twoEndsWords(5, 'riderUp', inches))).toContain('0.20 in');
  expect(plain(riseWords(-0.128, style))).toBe('−0.1 mm');
});
