/** Tests of what the table of ride states says below its figures. */
import { describe, expect, it } from 'vitest';
import type { RideFigures } from '../../core/effects/ride-table.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { columnUnit, restsShort, RIDE_COLUMNS } from './ride-columns.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };
const FIGURES: RideFigures = {
  frontUsed: 36.2,
  frontLeft: 83.8,
  rearUsed: 33,
  rearLeft: 99.5,
  frontRest: 'onSprings',
  rearRest: 'toppedOut',
  frontLoad: 1333,
  rearLoad: 1471,
  frontShare: 47.5,
  rake: 23,
  trail: 96,
  antiSquat: 98,
  noAntiSquat: null,
};

describe('the table of ride states', () => {
  it('tells travel left, and each wheel’s part of the load', () => {
    const besides = RIDE_COLUMNS.map((column) => column.besides(FIGURES, METRIC).replace(/\u00a0/g, ' '));
    expect(besides).toEqual(['83.8 left', '99.5 left', '47.5 %', '52.5 %', '', '', '']);
    const weightless = { ...FIGURES, frontShare: null };
    expect(RIDE_COLUMNS.slice(2, 4).map((column) => column.besides(weightless, METRIC))).toEqual(['', '']);
  });

  it('names how the ends rest, both in one word when they rest alike', () => {
    expect(restsShort(FIGURES)).toBe('front on its springs, rear topped out');
    expect(restsShort({ ...FIGURES, rearRest: 'onSprings' })).toBe('both on their springs');
    expect(restsShort({ ...FIGURES, frontRest: 'bottomed', rearRest: 'bottomed' })).toBe('both bottomed');
    expect(restsShort({ ...FIGURES, rearRest: 'coilsClosed' })).toContain('rear coil-bound');
    expect(restsShort({ ...FIGURES, frontRest: null, rearRest: null })).toBe('');
  });

  it('heads each column with the user’s unit', () => {
    const units = RIDE_COLUMNS.map((column) => columnUnit(column, { system: 'inch', decimal: ',' }));
    expect(units).toEqual(['in', 'in', 'lbf', 'lbf', '°', 'in', '%']);
  });
});
