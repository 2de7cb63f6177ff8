/** Tests of the rows of printed pages. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { ADJUSTERS } from '../../core/adjusters/all-adjusters.ts';
import { walk } from '../../core/effects/walk.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { trail } from '../../core/readings/trail.ts';
import { wheelbase } from '../../core/readings/wheelbase.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import {
  adjustersPrinted,
  beforeTheWork,
  countsPrinted,
  differencesPrinted,
  doneWords,
  plusMinusLine,
  readingsPrinted,
  sagPrinted,
  stepsPrinted,
  writeKept,
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
    expect(plain(row.change)).toBe(`▼ −${(was - is).toFixed(1)} mm, ${trail.felt?.gauge?.less}`);
  });

  it('have a dash and no change where the bike does not stand', () => {
    const [row] = readingsPrinted([wheelbase], null, stand(setup), style);
    expect([row.before, row.change]).toEqual(['–', '']);
  });

  it('call equal figures the same', () => {
    expect(readingsPrinted([wheelbase], stand(setup), stand(setup), style)[0].change).toBe('same');
  });
});

it('the ± of a table is one line of the readings that have one, and none of a bike that nobody measured', () => {
  const now = stand(setup);
  const known = ({ key }: { key: string }) => ({
    value: '',
    error: key === 'trail' ? '± 5 mm' : null,
    change: '',
  });
  expect(plusMinusLine([trail, wheelbase], now, known)).toBe('These figures are sure to: trail ± 5 mm.');
  expect(plusMinusLine([trail], now, () => null)).toBeNull();
  expect(plusMinusLine([trail], null, known)).toBeNull();
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

it('turns say which way they go in a step, and count from zero on the setup sheet', () => {
  const threaded = { ...bike, swingarm: { ...bike.swingarm, shockThread: 1.5 } };
  const to = { ...setup, shockLength: -3 };
  const there = stepsPrinted([{ turned: ['shockLength'], setup: to, on: null }], setup, threaded, [], style);
  expect(there.map(({ turns }) => turns.map(plain))).toEqual([
    ['Shock length 0.0 mm → −3.0 mm (2 turns shorter)'],
  ]);
  const back = stepsPrinted([{ turned: ['shockLength'], setup, on: null }], to, threaded, [], style);
  expect(back.map(({ turns }) => turns.map(plain))).toEqual([
    ['Shock length −3.0 mm → 0.0 mm (2 turns longer)'],
  ]);
  const [printed] = adjustersPrinted(['part'], threaded, to, style).filter(
    ({ key }) => key === 'shockLength',
  );
  expect(plain(printed.value)).toBe('−3.0 mm (−2 turns)');
});

it('what changes nothing is not printed: the height of a passenger who is not there', () => {
  const keys = (to: Setup) => adjustersPrinted(['load'], bike, to, style).map(({ key }) => key);
  expect(keys({ ...setup, passengerMass: 0 })).not.toContain('passengerHeight');
  expect(keys({ ...setup, passengerMass: 60 })).toContain('passengerHeight');
});

it('every figure of a part in mm, degrees, bar or N/mm says from where it is counted, in less than two lines', () => {
  const counts = countsPrinted(
    ADJUSTERS.map(({ key }) => key),
    'belt',
  );
  expect(counts.find(({ key }) => key === 'shockLength')).toEqual({
    key: 'shockLength',
    label: 'Shock length',
    text: 'Shock longer (+) or shorter (−) than as delivered, eye to eye.',
    isSigned: true,
  });
  expect(counts.find(({ key }) => key === 'axlePosition')).toMatchObject({
    text: 'Rear axle back from the front end of its slot.',
    isSigned: false,
  });
  expect(counts.find(({ key }) => key === 'forkSpringRate')?.text).toBe(
    'Rate of one fork spring, as printed on it.',
  );
  expect(counts.length).toBeGreaterThan(12);
  expect(counts.map(({ key }) => key)).not.toContain('rearTeeth');
  for (const { text } of counts) {
    expect(text).toMatch(/^[A-Z].*[^.]\.$/);
    expect(text.length).toBeLessThan(130);
  }
});

it('what a kept sheet read is written as on the page, and a dash where nothing was kept', () => {
  expect(plain(writeKept(trail, { trail: 96.44 }, style))).toBe('96.4 mm');
  expect(plain(writeKept(trail, { trail: 96.44 }, style, { trail: 2.5 }))).toBe('96 ± 5 mm');
  expect(writeKept(trail, {}, style)).toBe('–');
  expect(writeKept(trail, undefined, style)).toBe('–');
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

it('tell a customer what was done by how much and which way', () => {
  const to = { ...setup, shockLength: setup.shockLength + 7, forkTubes: setup.forkTubes + 3, rearTeeth: 47 };
  const told = differencesPrinted(setup, to, bike, style).work.map((each) =>
    plain(doneWords(each, { before: setup, after: to }, style)),
  );
  expect(told).toEqual([
    'Shock length: 7.0 mm longer',
    'Fork tubes above clamp [yoke]: tubes up 3.0 mm',
    `Rear sprocket: 47 teeth instead of ${setup.rearTeeth} teeth`,
  ]);
  const back = differencesPrinted(to, setup, bike, style).work.map((each) =>
    plain(doneWords(each, { before: to, after: setup }, style)),
  );
  expect(back.slice(0, 2)).toEqual([
    'Shock length: 7.0 mm shorter',
    'Fork tubes above clamp [yoke]: tubes down 3.0 mm',
  ]);
});
