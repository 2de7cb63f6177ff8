/** Words beside a change: left out where the change is too small to be told, kept where zero lies between. */
import { expect, it } from 'vitest';
import { chainSliderClearance } from '../core/readings/chain-slider-clearance.ts';
import { trail } from '../core/readings/trail.ts';
import { wheelieLimit } from '../core/readings/wheelie-limit.ts';
import { waysTold, wordTold } from './ways-told.ts';

it('a change that nobody notices has its figure only', () => {
  expect(waysTold(trail, 100, 99.1)).toEqual({ more: '', less: '' });
  expect(wordTold(trail, 100, 99.1)).toBe('');
  expect(wordTold(trail, 100, 99)).toBe(', quicker steering');
  expect(waysTold(trail, 100, 99)).toEqual({ more: 'steadier steering', less: 'quicker steering' });
});

it('a chain that has come to rub is told however little it moved', () => {
  expect(waysTold(chainSliderClearance, 0.2, -0.2).less).toBe(chainSliderClearance.acrossZero?.less);
});

it('a quantity without such a bound keeps its words', () => {
  expect(waysTold(wheelieLimit, 1, 1.001).more).toBe(wheelieLimit.more);
});
