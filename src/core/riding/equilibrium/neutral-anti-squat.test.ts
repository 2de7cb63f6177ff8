/** Tests of the neutral point of anti-squat. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../../tests/support/standing.ts';
import { neutralAntiSquat } from './neutral-anti-squat.ts';

it('lies about two points above 100 % with 20 kg of wheel and arm: the worked number of its description', () => {
  const on = stanceWith({
    machine: { rearUnsprung: 20 },
    mass: 280,
    centre: { y: 650 },
    rearAxle: { y: 320 },
    pose: { pivot: { x: 500, y: 390 }, wheelbase: 1400 },
  });
  const found = neutralAntiSquat(on);
  if (!found.ok) throw new Error(found.reason);
  expect(found.neutral).toBeCloseTo(102.15, 2);
  expect(found.shift).toBeCloseTo(2.15, 2);
});

it('is 100 % without unsprung mass, and with an arm that lies level', () => {
  expect(neutralAntiSquat(stanceWith({ machine: { rearUnsprung: 0 } }))).toMatchObject({
    neutral: 100,
    shift: 0,
  });
  const level = stanceWith({ rearAxle: { y: 320 }, pose: { pivot: { y: 320 } } });
  expect(neutralAntiSquat(level)).toMatchObject({ neutral: 100 });
});

it('needs a centre of gravity above the ground', () => {
  expect(neutralAntiSquat(stanceWith({ mass: 0 }))).toMatchObject({ reason: 'noMass' });
  expect(neutralAntiSquat(stanceWith({ centre: { y: 0 } }))).toMatchObject({ ok: false });
});
