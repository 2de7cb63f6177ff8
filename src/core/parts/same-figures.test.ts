/** Tests of whether two bikes are the same in every figure. */
import { expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Bike } from './bike.ts';
import { haveSameFigures } from './same-figures.ts';

const { bike } = SPRUNG_ROAD;

it('a new name or new notes change no figure, nor does a bike that was read anew', () => {
  expect(haveSameFigures(bike, { ...bike, name: 'Other', about: 'Sold', invented: !bike.invented })).toBe(
    true,
  );
  expect(haveSameFigures(bike, JSON.parse(JSON.stringify(bike)) as Bike)).toBe(true);
});

it('a figure of any depth makes another bike', () => {
  expect(haveSameFigures(bike, { ...bike, fork: { ...bike.fork, length: bike.fork.length + 0.1 } })).toBe(
    false,
  );
  const { steeringHead } = bike.frame;
  const frame = { ...bike.frame, steeringHead: { ...steeringHead, x: steeringHead.x + 1 } };
  expect(haveSameFigures(bike, { ...bike, frame })).toBe(false);
});
