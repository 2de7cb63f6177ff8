/** Tests of finding a setup: the targets, the adjusters in the van, the search, and a plan that is tried. */
import { describe, expect, it, vi } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster, setBaseline } from '../../document/edits.ts';
import { COMPLAINTS } from '../../core/plan/all-complaints.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import { beginHistory } from '../../document/history.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Planning } from './planning.svelte.ts';

const [first] = DEMO_BIKES;

function started() {
  const session = new BikeSession(first);
  return { session, planning: new Planning({ session }) };
}

async function searched(planning: Planning): Promise<void> {
  planning.search();
  expect(planning.progress).not.toBe(null);
  await vi.waitFor(() => expect(planning.answer).not.toBe(null));
  expect(planning.progress).toBe(null);
}

describe('what is asked', () => {
  it('is out of date once a target is another, and gone with the bike', async () => {
    const { session, planning } = started();
    await searched(planning);
    expect(planning.isOutdated).toBe(false);
    const [arm] = planning.targets;
    planning.want(arm.id, { kind: 'value', value: 12.5 });
    expect(planning.isOutdated).toBe(true);
    planning.choose('shockLength', { most: 2 });
    session.open(beginHistory(DEMO_BIKES[3]));
    expect(planning.answer).toBe(null);
    expect(planning.targets[0].want).not.toEqual({ kind: 'value', value: 12.5 });
    expect(planning.choices.find(({ key }) => key === 'shockLength')?.most).not.toBe(2);
  });

  it('begins with the swingarm angle as it is quoted and the trail kept, shock length and fork tubes in the van', () => {
    const { planning } = started();
    expect(planning.targets.map(({ reading, state, want }) => [reading, state, want.kind])).toEqual([
      ['swingarmAngle', 'toppedOut', 'value'],
      ['trail', 'riderUp', 'keep'],
    ]);
    const inVan = planning.choices.flatMap(({ key, available }) => (available ? [key] : []));
    expect(inVan).toEqual(['shockLength', 'forkTubes']);
    expect(planning.ready).toMatchObject({ ok: true, total: 41 * 41 });
  });

  it('changes with each hand: kind, reading, weight, range, and targets that come and go', () => {
    const { planning } = started();
    const [arm, trail] = planning.targets;
    planning.changeKind(arm.id, 'window');
    expect(planning.targets[0].want).toMatchObject({ kind: 'window' });
    planning.changeKind(arm.id, 'value');
    planning.want(arm.id, { kind: 'value', value: 11 });
    planning.weigh(arm.id, 5);
    planning.aimAt(trail.id, 'rake', 'noRider');
    expect(planning.targets[1]).toMatchObject({ reading: 'rake', state: 'noRider', want: { kind: 'keep' } });
    planning.keepSag();
    planning.keepSag();
    expect(planning.targets.map(({ reading }) => reading)).toEqual([
      'swingarmAngle',
      'rake',
      'frontTravel',
      'rearTravel',
    ]);
    planning.addTarget();
    planning.removeTarget(trail.id);
    expect(planning.targets.map(({ reading }) => reading)).toEqual([
      'swingarmAngle',
      'frontTravel',
      'rearTravel',
      'antiSquat',
    ]);
    expect(planning.problem.targets[0]).toEqual({
      reading: 'swingarmAngle',
      state: 'toppedOut',
      want: { kind: 'value', value: 11 },
      weight: 5,
    });
    planning.choose('forkTubes', { least: 0, most: 3, minutes: 7 });
    expect(planning.problem.choices.find(({ adjuster }) => adjuster === 'forkTubes')).toMatchObject({
      least: 0,
      most: 3,
      minutes: 7,
      available: true,
    });
  });

  it('takes a complaint as a target that goes the way which helps, beside the trail', () => {
    const { planning } = started();
    const complaint = COMPLAINTS.find(({ key }) => key === 'frontLight');
    if (complaint === undefined) throw new Error('no such complaint');
    planning.aimAgainst(complaint);
    planning.aimAgainst(complaint);
    expect(planning.targets.map(({ reading, state, want }) => [reading, state, want.kind])).toEqual([
      ['frontWheelLoad', 'accelerating', 'atLeast'],
      ['trail', 'riderUp', 'keep'],
    ]);
    const [load] = planning.targets;
    expect(load.want).toMatchObject({
      value: expect.closeTo(Number(planning.present(load)) + QUANTITIES.force.noticed, 0) as number,
    });
  });

  it('goes from one way to say it to another with its number, and stops at now without one', () => {
    const { planning } = started();
    const [arm] = planning.targets;
    planning.want(arm.id, { kind: 'value', value: 11 });
    planning.changeKind(arm.id, 'atLeast');
    expect(planning.targets[0].want).toEqual({ kind: 'atLeast', value: 11 });
    planning.want(arm.id, { kind: 'atMost' });
    planning.aimAt(arm.id, 'rake', 'riderUp');
    expect(planning.targets[0]).toMatchObject({ reading: 'rake', want: { kind: 'atMost' } });
    planning.changeKind(arm.id, 'atMost');
    expect(planning.targets[0].want).toMatchObject({ kind: 'atMost', value: expect.any(Number) as number });
  });

  it('takes tyres by their sizes: those that the rim takes, until a person names others', async () => {
    const { planning } = started();
    expect(planning.tyres.map(({ key, available }) => [key, available])).toEqual([
      ['frontTyre', false],
      ['rearTyre', false],
    ]);
    for (const key of ['shockLength', 'forkTubes'] as const) planning.choose(key, { available: false });
    planning.choose('rearTyre', { available: true });
    const rear = planning.tyres[1];
    expect(rear.tyres).toContainEqual({ code: '190/55-17' });
    expect(planning.ready).toEqual(expect.objectContaining({ ok: true, total: rear.tyres.length + 1 }));
    planning.choose('rearTyre', { tyres: [{ code: '160/60-17' }] });
    planning.want(planning.targets[0].id, { kind: 'atMost' });
    planning.removeTarget(planning.targets[1].id);
    await searched(planning);
    const found = planning.answer?.found;
    expect(found?.ok && found.tried).toBe(2);
    planning.choose('rearTyre', { tyres: [] });
    expect(planning.ready).toMatchObject({ ok: false, reason: 'noOtherTyre' });
  });

  it('is refused with its reason, and then nothing is searched', () => {
    const { planning } = started();
    planning.choose('shockLength', { available: false });
    planning.choose('forkTubes', { available: false });
    expect(planning.ready).toMatchObject({ ok: false, reason: 'nothingAvailable' });
    planning.search();
    expect(planning.progress).toBe(null);
  });

  it('aims at another setup, so that this bike becomes like that one, until a target is changed by hand', () => {
    const { session, planning } = started();
    session.commit((from) => ({ ok: true, value: setBaseline(from) }), 'Baseline');
    session.commit((from) => setAdjuster(from, 'shockLength', 5), 'Shock length');
    planning.takeFrom(session.document.baseline, 'Baseline');
    const [arm, trail] = planning.targets;
    expect(arm.want).toEqual({ kind: 'value', value: 9.48 });
    expect(trail.want).toEqual({ kind: 'value', value: 100.1 });
    expect(planning.source).toMatchObject({ name: 'Baseline', left: 0 });
    planning.want(trail.id, { kind: 'value', value: 99 });
    expect(planning.source).toBe(null);
    // Of another bike each target is what that one reads; one without a number there stays as it was.
    const [, , , other] = DEMO_BIKES;
    planning.takeFrom({ ...other, setup: { ...other.setup, shockSpringRate: 0 } }, other.bike.name);
    expect(planning.source).toMatchObject({ name: other.bike.name, left: 1 });
    expect(planning.targets[1].want).toEqual({ kind: 'value', value: 99 });
    expect(planning.targets[0].want).not.toEqual(arm.want);
  });
});

describe('what is found', () => {
  it('is tried as one entry of the history, and is outdated until that is undone', async () => {
    const { session, planning } = started();
    planning.want(planning.targets[0].id, { kind: 'value', value: 9.7 });
    planning.choose('shockLength', { least: 0, most: 5 });
    await searched(planning);
    const found = planning.answer?.found;
    if (!found?.ok) throw new Error('nothing found');
    expect(found.tried).toBe(found.total);
    const [plan] = found.plans;
    expect(plan.steps.length).toBeGreaterThan(0);
    planning.tryPlan(plan, 'Plan 1');
    expect(session.document.setup).toEqual(plan.setup);
    expect(planning.isOutdated).toBe(true);
    session.undo();
    expect(session.document.setup).toBe(first.setup);
    expect(planning.isOutdated).toBe(false);
  });

  it('is kept when the search is ended before its end', async () => {
    const { planning } = started();
    planning.choose('clampOffset', { available: true });
    planning.search();
    planning.stop();
    await vi.waitFor(() => expect(planning.answer).not.toBe(null));
    const found = planning.answer?.found;
    expect(found?.ok && found.tried < found.total).toBe(true);
  });
});
