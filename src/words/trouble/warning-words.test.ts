/** Tests of the warnings in words. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { gravestFirst, warningLine, warningWords, type WarningWords } from './warning-words.ts';

const metric = { system: 'metric', decimal: '.' } as const;
/** What is said of a bike as it stands, its trail judged there too. */
function told(bike: Bike, setup: Setup = plainSetup): WarningWords[] {
  const stance = standing(bike, setup);
  return warningWords({ bike, setup, stance, rested: stance }, metric);
}

const plain = (text: string) => text.replace(/\s/g, ' ');

it('name the reading with its number and say what to do', () => {
  const tight = withFork(plainBike, { lowerClampDepth: 310, leastHeight: 8 });
  const words = told(tight);
  expect(words.map(({ lead }) => plain(lead))).toEqual([
    'Fork tube to spare −3.0 mm',
    'Tyre clearance to lower clamp [bottom yoke], fork bottomed −9.9 mm',
  ]);
  for (const { text, lead, short } of words) {
    expect(text).toMatch(/^(Do not ride like this|The clamps hold less).*\.$/);
    // One line beside the side view at its narrowest on a laptop.
    expect(`${lead}: ${short}`.length).toBeLessThan(90);
  }
});

it('stand in one line beside the side view, the worst two named and wear of parts last', () => {
  const hanging = {
    key: 'chainOnGuideHanging',
    lead: 'Chain with the wheel hanging',
    text: '',
    short: 'it lies on its slider.',
  } as const;
  expect(warningLine([])).toBeNull();
  expect(warningLine([hanging])).toBe('Chain with the wheel hanging: it lies on its slider.');
  const tight = told(withFork(plainBike, { lowerClampDepth: 310, leastHeight: 8 }));
  const all = gravestFirst([hanging, ...tight]);
  expect(plain(warningLine(all.slice(1)) ?? '')).toBe(
    'Tyre clearance to lower clamp [bottom yoke], fork bottomed −9.9 mm: the tyre hits it. Chain with the wheel hanging: it lies on its slider.',
  );
  expect(plain(warningLine(all) ?? '')).toBe(
    'Fork tube to spare −3.0 mm: too little tube in the clamps. Do not ride like this. Tyre clearance to lower clamp [bottom yoke], fork bottomed −9.9 mm: the tyre hits it. And 1 more, below the adjusters.',
  );
});

it('of trail tell a weak steering from one that does not centre itself', () => {
  const text = (clampOffset: number) => told(plainBike, { ...plainSetup, clampOffset })[0].text;
  expect(text(60)).toMatch(/^Little trail/);
  expect(text(150)).toMatch(/Do not ride/);
});

it('call a belt a belt', () => {
  const low = withFrame(plainBike, { countershaft: { x: 75, y: -30 }, guideRadius: 40 });
  const belt = { ...low, drive: { ...low.drive, kind: 'belt' as const } };
  expect(told(belt)[0].text).toMatch(/^The belt lies/);
  expect(told(low)[0].text).toMatch(/^The chain lies/);
});

it('name a sprocket that reaches over the pivot or does not go on before all else, with the nearest that does', () => {
  const near = withFrame(plainBike, { countershaft: { x: 36, y: 0 } });
  const [first] = told(near);
  expect(first).toMatchObject({ key: 'sprocketInTheWay', lead: 'Front sprocket 15 teeth' });
  expect(first.text).toMatch(/would reach over the swingarm pivot\. 14 teeth or fewer clear it\./);
  expect(first.short).toBe('reaches over the swingarm pivot. Fit 14 teeth.');
  const [small] = told({ ...plainBike, drive: { ...plainBike.drive, leastFrontTeeth: 16 } });
  expect(small.text).toContain('It takes 16 teeth or more.');
  expect(`${small.lead}: ${small.short}`.length).toBeLessThan(90);
  expect(told({ ...near, drive: { ...near.drive, kind: 'hub' } })).toEqual([]);
});

it('of a bike that cannot be say which figures to check', () => {
  const words = told(plainBike, { ...plainSetup, rearTyre: { diameter: 210 } });
  const found = words.find(({ key }) => key === 'rearSprocketOnGround');
  expect(found?.lead).toBe(`Rear sprocket ${plainSetup.rearTeeth} teeth`);
  expect(found?.text).toMatch(/would reach the ground .* Check teeth, pitch and tyre\.$/);
});

it('of trail judged at rest while the bike is read elsewhere name that state', () => {
  const setup = { ...plainSetup, clampOffset: 60 };
  const stance = standing(plainBike, setup);
  const rested = standing(plainBike, setup, { front: 30, rear: 30 });
  const [first] = warningWords({ bike: plainBike, setup, stance, rested }, metric);
  expect(plain(first.lead)).toMatch(/^Trail \d+\.\d mm, rider on board$/);
});

it('name an adjuster that a file holds beyond its range', () => {
  const [found] = told(plainBike, { ...plainSetup, riderMass: 900 });
  expect(found.key).toBe('riderMass');
  expect(plain(`${found.lead}: ${found.short}`)).toMatch(
    /^Rider weight 900\.0 kg: its range goes from 0\.0 kg to /,
  );
});
