/** Tests of the rows of printed pages. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../tests/support/sprung-bikes.ts';
import { walk } from '../core/effects/walk.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { trail } from '../core/readings/trail.ts';
import { wheelbase } from '../core/readings/wheelbase.ts';
import { standBike } from '../core/riding/stand-bike.ts';
import {
  adjustersPrinted,
  beforeTheWork,
  differencesPrinted,
  readingsPrinted,
  sagPrinted,
  stepsPrinted,
} from './paper-words.ts';

const style = { system: 'metric', decimal: '.' } as const;
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');
const { bike, setup } = SPRUNG_ROAD;
const stand = (asked: Setup) => {
  const on = standBike(bike, asked, 'riderUp');
  return on.ok ? on : null;
};

describe('readings on paper', () => {
  it('say the change of the figures as they are written, with the word for its direction', () => {
    const to = { ...setup, forkTubes: setup.forkTubes + 6 };
    const [row] = readingsPrinted([trail], stand(setup), stand(to), style);
    const [was, is] = [row.before, row.now].map((text) => Number(plain(text).split(' ')[0]));
    expect(is).toBeLessThan(was);
    expect(plain(row.change)).toBe(`▼ −${(was - is).toFixed(1)} mm, ${trail.less}`);
  });

  it('have a dash and no change where the bike does not stand', () => {
    const [row] = readingsPrinted([wheelbase], null, stand(setup), style);
    expect([row.before, row.change]).toEqual(['–', '']);
  });

  it('call equal figures the same', () => {
    expect(readingsPrinted([wheelbase], stand(setup), stand(setup), style)[0].change).toBe('same');
  });
});

describe('steps on paper', () => {
  it('go from each step’s figure to the next, the front last', () => {
    const to = { ...setup, forkTubes: setup.forkTubes + 4, shockLength: setup.shockLength + 3 };
    const steps = stepsPrinted(walk(setup, to, stand), setup, bike, [trail], style);
    expect(steps).toHaveLength(2);
    expect(plain(steps[0].turns[0])).toMatch(/^Shock length 0\.0 mm → 3\.0 mm/);
    expect(plain(steps[1].turns[0])).toMatch(/^Fork tubes above clamp \[yoke\] \d+\.\d mm → \d+\.\d mm/);
    const [now] = readingsPrinted([trail], null, stand(to), style);
    expect(steps[1].readings).toEqual([now.now]);
  });
});

it('every adjuster of the bike is printed once with its figure', () => {
  const printed = adjustersPrinted(['part'], bike, setup, style);
  expect(new Set(printed.map(({ key }) => key)).size).toBe(printed.length);
  expect(printed.length).toBeGreaterThan(10);
  expect(plain(printed.find(({ key }) => key === 'shockLength')?.value ?? '')).toBe('0.0 mm');
});

it('sag that is not known is a dash', () => {
  expect(sagPrinted(null, style).map(({ computed }) => computed)).toEqual(['–', '–', '–', '–']);
});

it('load and riding are no work, and the work begins under the load of now', () => {
  const to = { ...setup, forkTubes: setup.forkTubes + 2, riderMass: setup.riderMass + 10 };
  const { work, loads } = differencesPrinted(setup, to, bike, style);
  expect(work.map(({ key }) => key)).toEqual(['forkTubes']);
  expect(loads.map(({ key }) => key)).toEqual(['riderMass']);
  expect(beforeTheWork(setup, to)).toEqual({ ...setup, riderMass: to.riderMass });
});
