/** Tests of finding a setup: the targets, the adjusters in the van, the search, and a plan that is tried. */
import { describe, expect, it, vi } from 'vitest';
import { readIn } from '../../../tests/support/read-in.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster, setBaseline } from '../../document/edits.ts';
import { beginHistory } from '../../document/history.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Planning } from './planning.svelte.ts';
import { Standing } from '../standing.svelte.ts';

const [first] = DEMO_BIKES;

function started() {
  const session = new BikeSession(first);
  const standing = new Standing(session, readIn('riderUp'));
  return { session, planning: new Planning({ session, standing }) };
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

  it('is refused with its reason, and then nothing is searched', () => {
    const { planning } = started();
    planning.choose('shockLength', { available: false });
    planning.choose('forkTubes', { available: false });
    expect(planning.ready).toMatchObject({ ok: false, reason: 'nothingAvailable' });
    planning.search();
    expect(planning.progress).toBe(null);
  });

  it('aims at the baseline, so that this bike becomes like that one', () => {
    const { session, planning } = started();
    session.commit((from) => ({ ok: true, value: setBaseline(from) }), 'Baseline');
    session.commit((from) => setAdjuster(from, 'shockLength', 5), 'Shock length');
    planning.takeFromBaseline();
    const [arm, trail] = planning.targets;
    expect(arm.want).toEqual({ kind: 'value', value: 9.48 });
    expect(trail.want).toEqual({ kind: 'value', value: 100.1 });
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

  it('a step of What moves what turns its adjuster alone', () => {
    const { session, planning } = started();
    planning.wished = 'trail';
    const [step] = planning.steps;
    planning.tryStep(step, 'Step');
    expect(session.document.setup).toEqual({ ...first.setup, [step.adjuster]: step.to });
  });
});
