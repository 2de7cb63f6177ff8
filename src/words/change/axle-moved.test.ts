/** Tests of the words for an axle that has moved in its slot. */
import { expect, it } from 'vitest';
import { axleMoved } from './axle-moved.ts';
import { shownChange } from './shown-change.ts';

it('a longer way from the slot’s front is back, a shorter one forward, and one that no figure shows neither', () => {
  const words = (mm: number) => axleMoved(shownChange(mm, 'length', { system: 'metric', decimal: '.' }));
  expect(words(5)).toBe('Axle 5.0\u00a0mm back');
  expect(words(-4)).toBe('Axle 4.0\u00a0mm forward');
  expect(words(0.01)).toBe('Axle 0.0\u00a0mm as before');
});
