/** Tests of the words for chains that do not fit. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { expect, it } from 'vitest';
import { made } from '../../../tests/support/standing.ts';
import { chainLoop } from '../../core/drive/chain-loop.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { axleForChain, type AxleMisfit } from '../../core/standing/axle-in-slot.ts';
import { axleMisfitWords } from './axle-misfit-words.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const misfit: AxleMisfit = {
  ok: false,
  reason: 'chainTooShort',
  links: 110,
  axlePosition: -2.9,
  nearest: [112, 114],
  slot: 40,
};

it('say how far ahead of or behind the slot the axle would stand, and which chains fit', () => {
  expect(axleMisfitWords(misfit, CHAIN, style)).toBe(
    'A chain of 110 links is too short: the axle would stand 2.9\u00a0mm ahead of its slot. With 112 or 114 links it fits.',
  );
  const long: AxleMisfit = {
    ...misfit,
    reason: 'chainTooLong',
    links: 118,
    axlePosition: 61,
    nearest: [114, 112, 110, 108],
  };
  expect(axleMisfitWords(long, CHAIN, style)).toBe(
    'A chain of 118 links is too long: the axle would stand 21.0\u00a0mm behind its slot. With 110, 112 or 114 links it fits.',
  );
});

it('leave out a place that is nowhere near, and say when no chain fits', () => {
  expect(axleMisfitWords({ ...misfit, axlePosition: null, nearest: [] }, CHAIN, style)).toBe(
    'A chain of 110 links is too short. No whole chain puts the axle into its slot with these sprockets.',
  );
});

it('tell of the half link, and of a bike without a pose', () => {
  const odd = axleForChain(
    made(),
    chainLoop(15, 45, 15.875),
    { slot: 30, slack: 0, rearTravel: 0, rule: { halfLink: false } },
    115,
  );
  if (odd.ok) throw new Error('fits');
  expect(axleMisfitWords(odd, CHAIN, style)).toMatch(
    /^A chain of 115 links cannot be joined; an odd number needs a half link\. With /,
  );
  expect(axleMisfitWords({ ...misfit, reason: 'sprocketsOverlap' }, CHAIN, style)).toMatch(
    /^The sprockets overlap/,
  );
  expect(axleMisfitWords({ ...misfit, reason: 'notConverged', nearest: [112] }, CHAIN, style)).toMatch(
    /112 links it fits/,
  );
  expect(axleMisfitWords({ ...misfit, reason: 'slackImpossible' }, CHAIN, style)).toMatch(/Set less\.$/);
});
