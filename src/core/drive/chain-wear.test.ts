/** Tests of chain wear. */
import { expect, it } from 'vitest';
import { chainWear, usualWearLimit } from './chain-wear.ts';

it('is the measured length over the length when new, in per cent', () => {
  const wear = chainWear({ links: 20, length: 20 * 15.875 * 1.02 }, 15.875, 3);
  if (!wear.ok) throw new Error(wear.reason);
  expect(wear.value.percent).toBeCloseTo(2, 10);
  expect(wear.value.done).toBe(false);
  expect(wear.value.lengthAtLimit).toBeCloseTo(327.025, 10);
});

it('is the limit at 3 per cent, or at 200/N with a largest sprocket of more than 67 teeth', () => {
  expect(usualWearLimit(45)).toBe(3);
  expect(usualWearLimit(67)).toBe(3);
  expect(usualWearLimit(80)).toBe(2.5);
  const worn = { links: 16, length: 16 * 12.7 * 1.026 };
  expect(chainWear(worn, 12.7, usualWearLimit(52))).toMatchObject({ ok: true, value: { done: false } });
  expect(chainWear(worn, 12.7, usualWearLimit(80))).toMatchObject({ ok: true, value: { done: true } });
});

it('refuses what cannot have been counted or measured so', () => {
  for (const links of [0, -3, 2.5, NaN])
    expect(chainWear({ links, length: 300 }, 15.875, 3)).toMatchObject({ reason: 'linksImpossible' });
  for (const length of [0, NaN, Infinity, 21.5 * 20 * 15.875, 23 * 15.875])
    expect(chainWear({ links: 20, length }, 15.875, 3)).toMatchObject({ reason: 'lengthImpossible' });
  for (const limit of [0, -1, NaN, 40])
    expect(chainWear({ links: 20, length: 318 }, 15.875, limit)).toMatchObject({ reason: 'limitImpossible' });
});
