/** Tests of the command that prints readings. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import { ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import { namedAdjusters } from '../core/adjusters/named-adjusters.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { machine } from '../core/standing/machine.ts';
import { stance } from '../core/standing/stance.ts';
import { degrees } from '../core/units/convert.ts';
import { SCHEMA } from '../document/document.ts';
import { openJson } from '../document/open-json.ts';
import { readingsCommand } from './readings.ts';

const fixture = (path: string): string => fileURLToPath(new URL(`../../fixtures/${path}`, import.meta.url));
const PLAIN = fixture('bikes/plain.json');
const LINKED = fixture('bikes/linked.json');

interface Entry {
  readonly value: number | null;
  readonly unit: string;
  readonly reason?: string;
}
interface Printed {
  readonly bike: string;
  readonly schema: number;
  readonly warnings: readonly { readonly warning: string; readonly state: string; readonly words: string }[];
  readonly states: Readonly<Record<'toppedOut' | 'travelByHand', Readonly<Record<string, Entry>>>>;
}

function printed(...args: string[]): Printed {
  const { code, out, err } = readingsCommand(args);
  if (code !== 0) throw new Error(err);
  return JSON.parse(out) as Printed;
}

const temporary = mkdtempSync(join(tmpdir(), 'sidestance-readings-'));
afterAll(() => rmSync(temporary, { recursive: true }));

function written(name: string, value: unknown): string {
  const file = join(temporary, name);
  writeFileSync(file, JSON.stringify(value));
  return file;
}

describe('the warnings printed', () => {
  const { bike, setup } = plain;
  const { frame, swingarm } = bike;

  it.each([
    ['pivotInTyre', { ...bike, swingarm: { ...swingarm, length: 250 } }, setup],
    ['tyresOverlap', { ...bike, frame: { ...frame, steeringHead: { x: -300, y: 455 } } }, setup],
    ['frontSprocketOnGround', { ...bike, frame: { ...frame, countershaft: { x: 80, y: -440 } } }, setup],
    ['rearSprocketOnGround', { ...bike, drive: { chainPitch: 25.4 } }, { ...setup, rearTeeth: 85 }],
    ['tubeOutOfClamp', bike, { ...setup, forkTubes: -25 }],
    ['forkTubes', bike, { ...setup, forkTubes: 300 }],
    ['shockLength', bike, { ...setup, shockLength: 60 }],
  ])('name %s of a file, and the ride state they are read in', (warning, madeBike, madeSetup) => {
    const file = written('impossible.json', { ...plain, bike: madeBike, setup: madeSetup });
    const { code, out, err } = readingsCommand([file]);
    expect([code, err]).toEqual([0, '']);
    const found = (JSON.parse(out) as Printed).warnings.find((each) => each.warning === warning);
    // Without spring rates no other state has readings.
    expect(found?.state).toBe('toppedOut');
    expect(found?.words).toMatch(/Check|slide/);
  });

  it('are empty for a plain bike', () => {
    expect(printed(PLAIN).warnings).toEqual([]);
  });
});

describe('the readings printed', () => {
  it('are all there, in every ride state, with the units of a file', () => {
    const { bike, schema, states } = printed(LINKED);
    expect([bike, schema]).toEqual(['Linked road bike, invented', SCHEMA]);
    const keys = RIDE_STATES.flatMap(({ key, formerly }) =>
      formerly === undefined ? [key] : [key, formerly],
    );
    expect(Object.keys(states)).toEqual(keys);
    for (const entries of Object.values(states)) {
      const both = READINGS.flatMap(({ key, formerly }) => [
        key,
        ...(formerly === undefined ? [] : [formerly]),
      ]);
      expect(Object.keys(entries)).toEqual(both);
      for (const { value, reason } of Object.values(entries))
        expect(value === null ? (reason?.length ?? 0) > 0 : Number.isFinite(value)).toBe(true);
    }
    expect([states.toppedOut.rake.unit, states.toppedOut.trail.unit]).toEqual(['deg', 'mm']);
  });

  it('of a state that the springs carry are a reason while no rate is known', () => {
    const states: Readonly<Record<string, object>> = printed(PLAIN).states;
    for (const state of ['noRider', 'riderUp', 'accelerating', 'braking', 'midCorner'])
      expect(states[state]).toEqual({
        noAnswer:
          'A rate at the front end is zero or less, which holds nothing up. Give the rate printed on the fork spring, bump stop or top-out spring.',
      });
  });

  it('are the core’s own numbers to the last digit', () => {
    const opened = openJson(plain);
    if (!opened.ok) throw new Error(opened.reason.sentence);
    const { bike, setup } = opened.value.document;
    const made = machine(bike, setup);
    if (!made.ok) throw new Error(made.reason);
    const standing = stance(made, { front: setup.frontTravelUsed, rear: setup.rearTravelUsed });
    if (!standing.ok) throw new Error(standing.reason);
    const { travelByHand } = printed(PLAIN).states;
    expect(travelByHand.wheelbase.value).toBe(standing.pose.wheelbase);
    expect(travelByHand.rake.value).toBe(degrees(standing.rake));
  });

  it('differ between the states by the travel used', () => {
    const { toppedOut, travelByHand } = printed(PLAIN).states;
    expect(travelByHand.swingarmAngle.value).toBeLessThan(toppedOut.swingarmAngle.value ?? 0);
    const still = printed(PLAIN, '--set', 'frontTravelUsed=0', '--set=rearTravelUsed=0').states;
    expect(still.travelByHand).toEqual(toppedOut);
  });

  it('give a sentence for one without a number', () => {
    const { bike, ...rest } = plain;
    const frame = { ...bike.frame, sprungMass: 0 };
    const wheels = { frontWheel: { unsprungMass: 0 }, rearWheel: { unsprungMass: 0 } };
    const file = written('massless.json', { ...rest, bike: { ...bike, frame, ...wheels } });
    expect(printed(file, '--set', 'riderMass=0').states.toppedOut.antiSquat).toEqual({
      value: null,
      unit: '%',
      reason: 'Anti-squat: needs a weight: enter that of the bike, the rider or the load.',
    });
  });

  it('come with every repair on the error stream and exit code 0', () => {
    const { code, out, err } = readingsCommand([fixture('broken/wrong-optional.json')]);
    expect([code, out.startsWith('{')]).toEqual([0, true]);
    expect(err.trimEnd().split('\n')).toHaveLength(5);
    expect(err).toContain('The fork travel (bike.fork.travel) is "long" but must be');
  });
});

/** The linked bike with air beside its springs, in a file. */
function withAir(): string {
  const linked = JSON.parse(readFileSync(LINKED, 'utf8')) as typeof plain;
  const air = { bore: 42, slidingTube: 43 };
  const support = { spring: { kind: 'oneRate' }, air };
  const { fork, shock, ...bike } = linked.bike as typeof plain.bike & { shock?: object };
  return written('air.json', {
    ...linked,
    bike: { ...bike, fork: { ...fork, support }, shock: { ...shock, support } },
  });
}

describe('--set', () => {
  it.each(ADJUSTERS.map((adjuster) => adjuster.key))(
    'takes the adjuster %s and changes some reading by it',
    (key) => {
      const values: Partial<Record<string, string>> = {
        frontTyre: 'diameter=610',
        rearTyre: '180/55-17',
        frontTeeth: '16',
        rearTeeth: '46',
        chainLinks: '114',
        acceleration: '0.3',
        braking: '0.3',
        cornerAcceleration: '0.1',
        engineDeceleration: '0.05',
        closedBraking: '0.1',
        cornerEngineDeceleration: '0.05',
        cornerBraking: '0.1',
        forkAirGap: '150',
        shockAirGap: '30',
      };
      const needs: Partial<Record<string, string>> = {
        loadHeight: 'loadMass=20',
        passengerHeight: 'passengerMass=60',
        chainSlack: 'chainLinks=114',
        dragHeight: 'dragForce=200',
      };
      const needed = needs[key];
      const before = needed === undefined ? [] : ['--set', needed];
      const file = key.includes('Air') ? withAir() : LINKED;
      const changed = printed(file, ...before, '--set', `${key}=${values[key] ?? '3'}`).states;
      expect(changed).not.toEqual(printed(file, ...before).states);
      // A change that only makes a state refuse would prove nothing of the adjuster.
      for (const entries of Object.values(changed)) expect(entries).not.toHaveProperty('noAnswer');
    },
  );

  it.each([
    ['gas=-0.12', 'Slower is engine braking (engineDeceleration, ride state “Throttle closed”)'],
    ['cornerGas=-0.2', 'set cornerBraking, or cornerEngineDeceleration for a closed throttle'],
    ['brake=-1', 'To gain speed set acceleration (ride state “Accelerating”)'],
  ])('refuses %s and names what to set instead', (set, instead) => {
    const { code, err } = readingsCommand([PLAIN, '--set', set]);
    expect(code).toBe(1);
    expect(err).toContain('must be a number from 0 to 10.');
    expect(err).toContain(instead);
  });

  it('understands units, a decimal comma and every way to state a tyre', () => {
    const trail = (...sets: string[]) =>
      printed(PLAIN, ...sets.flatMap((set) => ['--set', set])).states.toppedOut.trail;
    expect(trail('forkTubes=1/4 in')).toEqual(trail('forkTubes=6,35'));
    expect(trail('frontTyre=600')).toEqual(trail('frontTyre=diameter=600 mm'));
    expect(trail(`frontTyre=circumference=${600 * Math.PI}`).value).toBeCloseTo(
      trail('frontTyre=600').value ?? 0,
      9,
    );
    expect(trail('frontTyre=120/70 ZR17')).toEqual(trail());
  });

  it('says that a value lies outside the adjuster’s range, and takes it all the same', () => {
    const { code, err } = readingsCommand([PLAIN, '--set', 'forkTubes=45']);
    expect([code, err]).toEqual([
      0,
      'The adjuster forkTubes is set to 45, outside the adjuster’s range of -20 to 40 mm on this bike.\n',
    ]);
  });

  it.each([
    ['forkheight=5', 'There is no adjuster named "forkheight". The adjusters are shockLength, forkTubes,'],
    ['forkTubes', '--set takes an adjuster and its value'],
    ['=5', '--set takes an adjuster and its value'],
    ['__proto__=5', 'There is no adjuster named "__proto__"'],
    ['forkTubes=', 'cannot be "": it is empty.'],
    ['forkTubes=NaN', 'cannot be "NaN": it is not a number.'],
    ['forkTubes=Infinity', 'it is not a number.'],
    ['forkTubes=1e999', 'it is not a number.'],
    ['forkTubes=1/0', 'it is not a number.'],
    ['forkTubes=5 kg', 'its unit does not fit.'],
    ['forkTubes=9999999', 'far larger'],
    ['forkTubes=999999', 'must be a number from -100000 to 100000'],
    ['frontTeeth=15.5', 'must be a whole number'],
    ['frontTeeth=5', 'The front sprocket cannot have 5 teeth.'],
    ['riderMass=-80', 'The adjuster “Rider weight” is -80 but must be'],
    ['rearTyre=big', 'it is neither a size code such as 190/55-17'],
    ['rearTyre=20', 'no wheel has a tyre of that outside diameter.'],
  ])('refuses %s in one line', (words, reason) => {
    const { code, out, err } = readingsCommand([PLAIN, '--set', words]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(reason);
    expect(err.match(/\n/g)).toHaveLength(1);
  });
});

describe('refusing', () => {
  it.each([
    [
      ['--set', 'frontTravelUsed=130'],
      'The bike cannot stand in the ride state “Travel set by hand”: Fork travel used is 130.0',
    ],
    [['--set', 'forkTubes=700'], 'The bike cannot stand in the ride state “Topped out”: Only 40.0'],
    [['--set', 'shockLength=-900'], 'The bike cannot be put together: The swingarm cannot reach that far'],
  ])('says in which state the bike cannot stand with %j, and why', (sets, reason) => {
    const { code, out, err } = readingsCommand([PLAIN, ...sets]);
    expect([code, out]).toEqual([1, '']);
    expect(err.replaceAll('\u00a0', ' ')).toContain(reason);
    expect(err.match(/\n/g)).toHaveLength(1);
  });

  it.each([
    [[], 'Which file?'],
    [[PLAIN, PLAIN], 'One file at a time'],
    [[PLAIN, '--verbose'], 'There is no option --verbose'],
    [[PLAIN, '--set'], '--set takes an adjuster and its value'],
    [['no-such-file.json'], 'cannot be read: there is no such file.'],
    [[fixture('bikes')], 'cannot be read: it is a folder.'],
    [[fixture('broken/cut-off.json')], 'The file breaks off before its end'],
    [[fixture('broken/utf16.json')], 'saved as UTF-16'],
    [[fixture('broken/negative-fork.json')], 'The fork length (bike.fork.length) is -740'],
  ] as [string[], string][])('%j is refused in one line', (args, reason) => {
    const { code, out, err } = readingsCommand(args);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(reason);
    expect(err.match(/\n/g)).toHaveLength(1);
  });
});

describe('--help', () => {
  it('names every adjuster with its unit and range and every reading with its unit, without a file', () => {
    const { code, out, err } = readingsCommand(['--help']);
    expect([code, err]).toEqual([0, '']);
    for (const { key, label } of [...namedAdjusters('chain'), ...READINGS]) {
      const line = out.split('\n').find((each) => each.startsWith(`  ${key} `));
      expect(line).toContain(label);
    }
    expect(out).toMatch(/ {2}forkTubes +mm +-20 to 40 in steps of 1 /);
    expect(out).toMatch(/ {2}rake +deg /);
  });

  it('gives the ranges of the bike in the file, when there is one', () => {
    const { out } = readingsCommand([PLAIN, '--help']);
    expect(out).toContain('"Plain road bike, invented"');
    expect(out).toMatch(/ {2}axlePosition +mm +0 to 40 in steps of 1 /);
  });
});

it('adjusters and readings with a new name are read and written under the former one too', () => {
  const { states } = printed(LINKED) as unknown as {
    states: Record<string, Record<string, { value: number | null }>>;
  };
  for (const { key, formerly } of RIDE_STATES.filter((each) => each.formerly !== undefined))
    expect(states[formerly ?? '']).toEqual(states[key]);
  for (const { key, formerly } of READINGS.filter((each) => each.formerly !== undefined))
    expect(states.toppedOut[formerly ?? '']).toEqual(states.toppedOut[key]);
  const renamed = ADJUSTERS.flatMap((each) =>
    each.formerly !== undefined ? [[each.key, each.formerly]] : [],
  );
  expect(renamed.length).toBeGreaterThan(0);
  for (const [key, former] of renamed)
    expect(printed(LINKED, '--set', `${former}=3`)).toEqual(printed(LINKED, '--set', `${key}=3`));
});
