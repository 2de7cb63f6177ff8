/** Words beside a change: left out where the change is too small to be told, kept where zero lies between. */
import { expect, it } from 'vitest';
import { chainSliderClearance } from '../../core/readings/chain-slider-clearance.ts';
import { trail } from '../../core/readings/trail.ts';
import { wheelieLimit } from '../../core/readings/wheelie-limit.ts';
import { waysTold, wordTold } from './ways-told.ts';

it('a change that nobody notices has its figure only', () => {
  expect(waysTold(trail, 100, 99.1)).toEqual({ more: '', less: '' });
  expect(wordTold(trail, 100, 99.1)).toBe('');
  expect(wordTold(wheelieLimit, 1, 1.01)).toBe('');
});

it('a feel is named by the size of the change: not at all, slight, or as it is', () => {
  expect(wordTold(trail, 100, 98.5)).toBe(', shorter');
  expect(wordTold(trail, 100, 98)).toBe(', slightly quicker steering');
  expect(wordTold(trail, 100, 104)).toBe(', steadier steering');
  expect(waysTold(trail, 100, 90)).toEqual({ more: 'steadier steering', less: 'quicker steering' });
  // Below zero trail has no size of a feel: it pulls off straight.
  expect(wordTold(trail, -1, -3)).toBe(', pulls off straight more');
});

it('a chain that has come to rub is named however little it moved', () => {
  expect(waysTold(chainSliderClearance, 0.2, -0.2).less).toBe(chainSliderClearance.acrossZero?.less);
});

it('a quantity without such a bound keeps its words', () => {
  const speed = { quantity: 'speed', more: 'faster', less: 'slower' } as const;
  expect(waysTold(speed, 100, 100.1).more).toBe('faster');
});
