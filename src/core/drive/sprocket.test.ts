/** Tests of sprockets. */
import { expect, it } from 'vitest';
import { pitchPossible, pitchRadius, teethPossible } from './sprocket.ts';

it('six teeth lie on a circle of one pitch, the hexagon’s', () => {
  expect(pitchRadius(6, 15.875)).toBeCloseTo(15.875, 12);
});

it('neighbouring pins are one pitch apart', () => {
  for (const teeth of [11, 16, 45]) {
    const radius = pitchRadius(teeth, 12.7);
    const turn = (2 * Math.PI) / teeth;
    expect(Math.hypot(radius - radius * Math.cos(turn), radius * Math.sin(turn))).toBeCloseTo(12.7, 11);
  }
});

it('whole teeth from 6 to 120 are possible and nothing else', () => {
  for (const teeth of [6, 15, 120]) expect(teethPossible(teeth)).toBe(true);
  for (const teeth of [5, 121, 15.5, -15, 0, NaN, Infinity]) expect(teethPossible(teeth)).toBe(false);
});

it('pitches of roller chains are possible, none and negative ones are not', () => {
  for (const pitch of [12.7, 15.875]) expect(pitchPossible(pitch)).toBe(true);
  for (const pitch of [0, -12.7, 3.9, 40.1, NaN, Infinity]) expect(pitchPossible(pitch)).toBe(false);
});
