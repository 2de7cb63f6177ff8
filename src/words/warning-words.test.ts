/** Tests of the warnings in words. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork, withFrame } from '../../tests/support/plain-bike.ts';
import { standing } from '../../tests/support/standing.ts';
import { warningWords } from './warning-words.ts';

const metric = { system: 'metric', decimal: '.' } as const;
const plain = (text: string) => text.replace(/\s/g, ' ');

it('name the reading with its number and say what to do', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 310, leastHeight: 8 });
  const told = warningWords(standing(tight), tight.drive, metric);
  expect(told.map(({ lead }) => plain(lead))).toEqual([
    'Fork tube to spare −3.0 mm',
    'Tyre clearance to lower clamp [bottom yoke], fork bottomed −9.9 mm',
  ]);
  for (const { text, lead, short } of told) {
    expect(text).toMatch(/before riding it\.$/);
    // One line beside the side view at its narrowest on a laptop.
    expect(`${lead}: ${short}`.length).toBeLessThan(90);
  }
});

it('of trail tell a weak steering from one that does not centre itself', () => {
  const text = (clampOffset: number) =>
    warningWords(standing(plainBike, { ...plainSetup, clampOffset }), plainBike.drive, metric)[0].text;
  expect(text(60)).toMatch(/^Little trail/);
  expect(text(150)).toMatch(/Do not ride/);
});

it('call a belt a belt', () => {
  const low = withFrame(plainBike, { countershaft: { x: 75, y: -30 }, guideRadius: 40 });
  const belt = { ...low, drive: { ...low.drive, kind: 'belt' as const } };
  expect(warningWords(standing(belt), belt.drive, metric)[0].text).toMatch(/^The belt lies/);
  expect(warningWords(standing(low), low.drive, metric)[0].text).toMatch(/^The chain lies/);
});

it('name a sprocket that reaches over the pivot or does not go on before all else, with the nearest that does', () => {
  const near = withFrame(plainBike, { countershaft: { x: 36, y: 0 } });
  const [first] = warningWords(standing(near), near.drive, metric);
  expect(first).toMatchObject({ key: 'sprocketInTheWay', lead: 'Front sprocket 15 teeth' });
  expect(first.text).toMatch(/would reach over the swingarm pivot\. 14 teeth or fewer clear it\./);
  expect(first.short).toBe('reaches over the swingarm pivot. Fit 14 teeth.');
  const [small] = warningWords(standing(), { ...plainBike.drive, leastFrontTeeth: 16 }, metric);
  expect(small.text).toContain('It takes 16 teeth or more.');
  expect(`${small.lead}: ${small.short}`.length).toBeLessThan(90);
  expect(warningWords(standing(near), { ...near.drive, kind: 'hub' }, metric)).toEqual([]);
});
