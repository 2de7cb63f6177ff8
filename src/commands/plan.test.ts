/** Tests of the command that finds setups. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { planCommand } from './plan.ts';

const fixture = (path: string): string => fileURLToPath(new URL(`../../fixtures/${path}`, import.meta.url));
const command = fileURLToPath(new URL('./plan.js', import.meta.url));
const SPRUNG = fixture('bikes/linked.json');
const BARE = fixture('bikes/plain.json');

interface Entry {
  readonly reading: string;
  readonly formerly?: string;
  readonly state: string;
  readonly value: number;
  readonly unit: string;
}
interface PrintedPlan {
  readonly forkExtenders: string | null;
  readonly minutes: number;
  readonly steps: readonly {
    readonly turn: readonly { readonly adjuster: string; readonly to: number; readonly unit: string }[];
    readonly readings: readonly Entry[];
  }[];
  readonly readings: readonly Entry[];
}
interface PrintedWider {
  readonly adjuster: string;
  readonly to: number;
  readonly by: number;
  readonly unit: string;
  readonly plan: PrintedPlan;
}
interface Printed {
  readonly combinations: { readonly tried: number; readonly total: number; readonly all: boolean };
  readonly plans: readonly PrintedPlan[];
  readonly none: {
    readonly why: string;
    readonly smallestChange: string;
    readonly relaxation: { readonly target: number; readonly to: number; readonly plan: PrintedPlan } | null;
    readonly widerRange: string | null;
    readonly wider: PrintedWider | null;
    readonly oneMoreAdjuster: string | null;
    readonly other: PrintedWider | null;
  } | null;
}

async function printed(...args: string[]): Promise<Printed & { readonly told: readonly string[] }> {
  const told: string[] = [];
  const { code, out, err } = await planCommand(args, (line) => told.push(line));
  if (code !== 0) throw new Error(err);
  return { ...(JSON.parse(out) as Printed), told };
}

const ASKED = ['--target', 'rake@toppedOut=23.5±0.2', '--with', 'shockLength=-5..5,forkTubes=0..10'];

describe('the plan command', () => {
  it('prints plans with their steps, the readings after each, and how many combinations it tried', async () => {
    const { combinations, plans, none, told } = await printed(SPRUNG, ...ASKED);
    expect(combinations.all).toBe(true);
    expect(combinations.tried).toBe(combinations.total);
    expect(none).toBe(null);
    expect(plans.length).toBeGreaterThan(0);
    for (const { steps, readings, minutes } of plans) {
      expect(Math.abs(readings[0].value - 23.5)).toBeLessThanOrEqual(0.2 + 1e-9);
      expect(readings[0]).toMatchObject({ reading: 'rake', state: 'toppedOut', unit: 'deg' });
      expect(steps[steps.length - 1].readings).toEqual(readings);
      expect(minutes).toBe(10 * steps.length);
    }
    expect(told[told.length - 1]).toContain(`${combinations.total} of ${combinations.total}`);
  });

  it('takes former names of adjusters, readings and ride states, and prints them beside the present ones', async () => {
    const { plans } = await printed(SPRUNG, ...ASKED);
    const former = ASKED.map((word) => word.replace('forkTubes', 'forkHeight'));
    expect((await printed(SPRUNG, ...former)).plans).toEqual(plans);
    for (const { key, formerly } of READINGS)
      if (formerly !== undefined) {
        const [now, then] = await Promise.all(
          [key, formerly].map((name) => {
            const args = [SPRUNG, '--keep', `${name}@toppedOut`, '--with', 'forkTubes=5..6'];
            return planCommand(args, () => undefined);
          }),
        );
        expect(then, formerly).toEqual(now);
        if (now.code === 0) expect(now.out).toContain(`"formerly": "${formerly}"`);
      }
    for (const { key, formerly } of RIDE_STATES)
      if (formerly !== undefined)
        expect(
          (await printed(SPRUNG, '--keep', `rake@${formerly}`, '--with', 'forkTubes=5..6')).plans,
        ).toEqual((await printed(SPRUNG, '--keep', `rake@${key}`, '--with', 'forkTubes=5..6')).plans);
  });

  it('says why there is no plan, and the smallest change that gives one', async () => {
    const { plans, none } = await printed(
      SPRUNG,
      '--target',
      'rake@toppedOut=40',
      '--with',
      'forkTubes=0..10',
    );
    expect(plans).toEqual([]);
    expect(none?.why).toBe('Of 11 combinations, 11 miss Rake (topped out).');
    expect(none?.relaxation?.target).toBe(0);
    expect(none?.relaxation?.plan.steps[0].turn).toMatchObject([
      { adjuster: 'forkTubes', to: 0, unit: 'mm' },
    ]);
    expect(none?.smallestChange).toMatch(
      /^The smallest change that gives a plan: let Rake \(topped out\) be \d/,
    );
    expect(none?.wider).toBe(null);
    expect(none?.widerRange).toBe('No single range gives a plan, however far its adjuster goes.');
    expect(none?.other).toBe(null);
    expect(none?.oneMoreAdjuster).toBe('No other adjuster alone gives a plan within its usual range.');
  });

  it('says how long the fork extenders of a plan have to be', async () => {
    const args = ['--target', 'rake@toppedOut=24.03±0.03', '--with', 'forkExtenders=0..5'];
    const { plans } = await printed(SPRUNG, ...args);
    for (const { steps, forkExtenders } of plans) {
      const [{ to }] = steps[0].turn;
      expect(forkExtenders).toBe(`Fork extenders needed: ${to.toFixed(1)}\u00a0mm long, one for each leg.`);
    }
    expect(plans.length).toBeGreaterThan(0);
    const bare = await printed(SPRUNG, ...ASKED);
    expect(bare.plans[0].forkExtenders).toBe(null);
  });

  it('says which adjuster to allow besides, and how far it turns', async () => {
    const asked = ['--target', 'rake@toppedOut=24.6±0.05', '--with', 'rearTeeth'];
    const { none } = await printed(SPRUNG, ...asked);
    const { adjuster, to, by, unit, plan } = none?.other ?? {};
    expect(unit).toBe('mm');
    expect(Math.abs(Number(plan?.readings[0].value) - 24.6)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(none?.oneMoreAdjuster).toMatch(/^Or allow one more adjuster: [^.]+ at [−\d]/);
    expect(none?.oneMoreAdjuster).toContain(
      `${by?.toFixed(1)}\u00a0mm from where it stands. Then every target is met.`,
    );
    // Allowed, it gives that plan.
    const open = await printed(SPRUNG, ...asked.slice(0, 3), `${adjuster}=${to}..${to}`);
    expect(open.plans[0].readings).toEqual(plan?.readings);
  });

  it('says which range to widen, and by how much', async () => {
    const { none } = await printed(
      SPRUNG,
      '--target',
      'rake@toppedOut=23.6±0.05',
      '--with',
      'forkTubes=4..6',
    );
    expect(none?.wider).toMatchObject({ adjuster: 'forkTubes', unit: 'mm' });
    const { to, by, plan } = none?.wider ?? { to: NaN, by: NaN, plan: { readings: [] } };
    expect(by).toBeCloseTo(Math.max(4 - to, to - 6), 9);
    expect(Math.abs(plan.readings[0].value - 23.6)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(none?.widerRange).toContain(
      `let Fork tubes above clamp [yoke] go to ${to.toFixed(1)} mm, ${by.toFixed(1)} mm beyond it.`.replaceAll(
        ' mm',
        '\u00a0mm',
      ),
    );
  });

  it('takes no less and no more than a figure or than now, and tyres by their sizes', async () => {
    const asked = [SPRUNG, '--target', 'trail@toppedOut=now..', '--target', 'seatHeight@toppedOut=..now'];
    const { plans, combinations } = await printed(...asked, '--with', 'forkTubes=0..10');
    const now = await printed(SPRUNG, '--keep', 'trail@toppedOut', '--with', 'forkTubes=5..5');
    expect(combinations.total).toBe(11);
    for (const { readings } of plans)
      expect(readings[0].value).toBeGreaterThanOrEqual(now.plans[0].readings[0].value - 1e-9);
    const high = await printed(SPRUNG, '--target', 'rake@toppedOut=..23.8', '--with', 'forkTubes=0..10');
    expect(high.plans.length).toBeGreaterThan(0);
    for (const { readings } of high.plans) expect(readings[0].value).toBeLessThanOrEqual(23.8 + 1e-9);
    const sizes = '160/60-17+200/60-17';
    const { plans: tyred, combinations: three } = await printed(
      ...[SPRUNG, '--target', 'rake@toppedOut=..23.7', '--with', `rearTyre=${sizes}`],
    );
    expect(three.total).toBe(3);
    expect(tyred.flatMap(({ steps }) => steps.flatMap(({ turn }) => turn))).toContainEqual(
      expect.objectContaining({ adjuster: 'rearTyre', to: { code: '200/60-17' } }),
    );
  });

  it('prints what it has, and says so, once it is ended', async () => {
    const args = [SPRUNG, '--keep', 'rake@toppedOut', '--with', 'shockLength,forkTubes,clampOffset'];
    const told: string[] = [];
    const { code, out, err } = await planCommand(
      args,
      (line) => told.push(line),
      () => told.length > 0,
    );
    expect(code).toBe(130);
    const { combinations, plans } = JSON.parse(out) as Printed;
    expect(combinations.all).toBe(false);
    expect(plans.length).toBeGreaterThan(0);
    expect(err).toBe(
      `Ended by Ctrl+C after ${combinations.tried} of ${combinations.total} combinations. What was found until then is printed.\n`,
    );
  });

  it('hears Ctrl+C while it searches', async () => {
    const args = ['--keep', 'rake@riderUp', '--with', 'shockLength,forkTubes,clampOffset'];
    const child = spawn(process.execPath, [command, SPRUNG, ...args]);
    let [out, err, isAsked] = ['', '', false];
    child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => {
      err += chunk.toString();
      if (isAsked || !err.includes('combinations tried')) return;
      isAsked = true;
      child.kill('SIGINT');
    });
    const [code] = (await once(child, 'close')) as [number | null];
    expect(code).toBe(130);
    expect((JSON.parse(out) as Printed).combinations.all).toBe(false);
    expect(err).toContain('Ended by Ctrl+C');
  }, 120_000);

  it('says why no bike stands', async () => {
    const { none } = await printed(BARE, '--target', 'trail@riderUp=100', '--with', 'forkTubes=0..10');
    expect(none?.why).toMatch(/^Of 11 combinations, 11 cannot be built\. Why not: .*rate/);
    expect(none?.smallestChange).toBe('No change of a single target gives a plan.');
  });

  it('takes windows, weights, tolerances, units, steps, minutes, and the sag by one word', async () => {
    const args = [
      '--target',
      'rake@toppedOut=20..30',
      '--keep',
      'sag+-2 x3',
      '--with',
      'forkTubes=0..0.2in/2 mm',
    ];
    const { plans, combinations } = await printed(SPRUNG, ...args, '--minutes', 'forkTubes=25');
    expect(combinations.total).toBeGreaterThan(1);
    expect(combinations.total).toBeLessThan(4);
    expect(plans[0].readings.map(({ reading, state }) => `${reading}@${state}`)).toEqual([
      'rake@toppedOut',
      'frontTravel@riderUp',
      'rearTravel@riderUp',
    ]);
    for (const { steps, minutes } of plans) expect(minutes).toBe(25 * steps.length);
  });

  it('lists every reading, every ride state and the adjusters of the bike under --help', async () => {
    const { out, code } = await planCommand(['--help'], () => undefined);
    expect(code).toBe(0);
    for (const { key } of [...READINGS, ...RIDE_STATES]) expect(out).toMatch(new RegExp(`^  ${key} `, 'm'));
    for (const { key } of ADJUSTERS.filter(({ kind }) => kind !== 'part'))
      expect(out.slice(0, out.indexOf('Readings, with'))).not.toMatch(new RegExp(`^  ${key} `, 'm'));
    expect((await planCommand([SPRUNG, '--help'], () => undefined)).out).toMatch(/^ {2}pivotUp /m);
  });

  it.each([
    [[], 'Which file?'],
    [[SPRUNG, SPRUNG], 'One file at a time'],
    [['nowhere.json', ...ASKED], 'cannot be read: there is no such file'],
    [[SPRUNG], 'There is no target'],
    [[SPRUNG, '--aim', 'x'], 'There is no option --aim'],
    [[SPRUNG, '--target'], '--target needs more'],
    [[SPRUNG, '--target', 'rake'], '--target names a reading and its value'],
    [[SPRUNG, '--target', 'rake=3'], 'in which ride state?'],
    [[SPRUNG, '--target', 'rack@riderUp=3'], 'There is no reading named "rack"'],
    [[SPRUNG, '--target', 'rake@parked=3'], 'There is no ride state named "parked"'],
    [[SPRUNG, '--target', 'rake@riderUp=steep'], '"steep" is no figure that fits here'],
    [[SPRUNG, '--target', 'rake@riderUp=25 kg'], '"25 kg" is no figure that fits here'],
    [[SPRUNG, '--target', 'rake@riderUp=25 x1.2.3'], 'is not a number'],
    [[SPRUNG, '--target', 'rake@riderUp=25..24', '--with', 'forkTubes'], 'the window begins above its end'],
    [
      [SPRUNG, '--keep', 'rake@riderUp', '--target', 'rake@riderUp=9', '--with', 'forkTubes'],
      'no number meets both target 1 and target 2',
    ],
    [[SPRUNG, '--target', 'rake@riderUp=25'], 'No adjuster is available'],
    [[SPRUNG, '--with', 'forks'], 'There is no adjuster named "forks"'],
    [[SPRUNG, '--with', 'forkTubes=3'], 'is no adjuster with its range'],
    [[SPRUNG, '--keep', 'rake@riderUp', '--with', 'forkTubes=0..5/0'], 'the step has to be above zero'],
    [
      [SPRUNG, '--keep', 'rake@riderUp', '--with', 'forkTubes=0..99'],
      'Fork tubes above clamp [yoke]: this bike allows −20.0',
    ],
    [[SPRUNG, '--keep', 'rake@riderUp', '--with', 'riderMass'], 'nothing that a mechanic adjusts'],
    [
      [SPRUNG, '--keep', 'rake@riderUp', '--with', 'forkTubes', '--minutes', 'forkTubes'],
      '--minutes names an adjuster',
    ],
    [[SPRUNG, '--minutes', 'forkTubes=5'], '--minutes names forkTubes, which --with does not'],
    [
      [SPRUNG, '--keep', 'rake@riderUp', '--with', 'shockLength,forkTubes,clampOffset,forkExtenders,pivotUp'],
      'combinations are too many to try them all. Hold ',
    ],
  ])('refuses %j in one line', async (args, words) => {
    const { code, out, err } = await planCommand(args, () => undefined);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^[^\n]+\n$/);
    expect(err).toContain(words);
  });
});
