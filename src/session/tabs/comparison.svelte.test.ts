/** Tests of setups laid side by side: chosen, held against the first, and taken over one adjuster at a time. */
import { expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import { adjustersBetween } from '../../core/effects/compare-setups.ts';
import { CHAIN } from '../../core/parts/drive-noun.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { CURVE_AXES } from '../../curves/curve-axes.ts';
import { setAdjusters, setBikeField } from '../../document/edits.ts';
import { saveDocument } from '../../document/save-document.ts';
import { saveSheet } from '../../document/save-sheet.ts';
import { newSheet } from '../../document/sheet.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { chartNotes } from '../../words/kept/curve-words.ts';
import { whyStory } from '../../words/why/why-words.ts';
import { Workbench } from '../workbench.svelte.ts';
import { comparedCurves, sharedAxes } from './compared-curves.ts';
import { comparedReasons } from './compared-reasons.ts';
import { Comparison } from './comparison.svelte.ts';
import { Reasons } from './reasons.svelte.ts';
import { Variants } from './variants.svelte.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const REAR_TRAVEL = CURVE_AXES[0];

function opened() {
  const bench = new Workbench(newDocument(linkedBike, sprungSetup));
  const variants = bench.stateOf(Variants);
  variants.show('one');
  const comparison = bench.stateOf(Comparison);
  const turn = (turned: Partial<Setup>): void =>
    bench.session.commit((from) => setAdjusters(from, turned), 'Turned');
  return { bench, variants, comparison, turn };
}

it('begin with the baseline and the bike as it is set, each with a letter and a line that stay when another is put first', () => {
  const { comparison, turn } = opened();
  turn({ shockLength: 3 });
  const told = () => comparison.compared.map(({ letter, slot, name }) => `${letter} ${slot} ${name}`);
  expect(told()).toEqual(['A 0 Baseline', 'B 1 Now']);
  expect(comparison.adjusters?.differing).toEqual(['shockLength']);
  comparison.putFirst('now');
  expect(told()).toEqual(['B 1 Now', 'A 0 Baseline']);
});

it('are four at most, and a variant keeps its letter', () => {
  const { comparison, variants, turn } = opened();
  for (const shockLength of [1, 2, 3]) {
    turn({ shockLength });
    variants.pin();
  }
  for (const letter of 'ABC') comparison.add(`variant ${letter}`);
  expect(comparison.hasRoom).toBe(false);
  expect(comparison.compared.map(({ letter }) => letter)).toEqual(['D', 'E', 'A', 'B']);
  comparison.drop('baseline');
  comparison.add('variant C');
  expect(comparison.compared.map(({ letter, slot }) => [letter, slot])).toEqual([
    ['E', 1],
    ['A', 2],
    ['B', 3],
    ['C', 0],
  ]);
  variants.unpin('B');
  expect(comparison.compared.map(({ name }) => name)).toEqual(['Now', 'Variant A', 'Variant C']);
  for (const key of ['now', 'variant A', 'variant C']) comparison.drop(key);
  expect(comparison.compared).toHaveLength(1);
});

it('give one adjuster to the bike on the page as one undo entry, and all of them lead to the setup exactly', () => {
  const { bench, comparison, variants, turn } = opened();
  turn({ shockLength: 3, forkTubes: sprungSetup.forkTubes + 4 });
  variants.pin();
  const asked = bench.session.document.setup;
  turn({ shockLength: 0, forkTubes: sprungSetup.forkTubes });
  comparison.add('variant A');
  const variant = () => comparison.compared[2];
  expect(variant().offered).toEqual(['shockLength', 'forkTubes']);
  comparison.take(variant(), 'forkTubes', 'Fork tubes');
  expect(bench.session.lastLabel).toBe('Fork tubes as in Variant A');
  expect(adjustersBetween(bench.session.document.setup, asked)).toEqual(['shockLength']);
  bench.undo();
  expect(bench.session.document.setup.forkTubes).toBe(sprungSetup.forkTubes);
  for (const key of ['shockLength', 'forkTubes'] as const) comparison.take(variant(), key, key);
  expect(bench.session.document.setup).toEqual(asked);
  expect(variant().offered).toEqual([]);
});

it('say which of them does not stand, and the others go on; what the bike could not stand with is not taken', () => {
  const { bench, comparison, variants, turn } = opened();
  turn({ shockSpringRate: 0, shockLength: 2 });
  variants.pin();
  turn({ shockSpringRate: sprungSetup.shockSpringRate, shockLength: 4 });
  comparison.add('variant A');
  comparison.putFirst('variant A');
  const [first, ...others] = comparison.compared;
  expect('stance' in first.stood).toBe(false);
  expect(others.every(({ stood }) => 'stance' in stood)).toBe(true);
  expect(comparison.from).toBe(1);
  const stand = (asSet: Parameters<typeof bench.standing.stand>[0]) =>
    bench.standing.standWith(asSet.bike, asSet.setup);
  const reasons = comparedReasons(comparison.compared, comparison.from, stand);
  expect(reasons.map((each) => each === null)).toEqual([true, true, false]);
  const set = comparedCurves(comparison.compared, antiSquat, REAR_TRAVEL, bench.standing.state);
  expect(set?.curves.map(({ curve }) => curve.x.length > 0)).toEqual([false, true, true]);
  expect(set === null ? [] : chartNotes(set, CHAIN, STYLE)[0]).toMatch(/^A: cannot stand like this\. /);
  comparison.take(first, 'shockSpringRate', 'Shock spring rate');
  expect(bench.session.document.setup.shockSpringRate).toBe(sprungSetup.shockSpringRate);
  expect(comparison.notTaken).toMatchObject({ adjuster: 'shockSpringRate', letter: 'A' });
  comparison.take(first, 'shockLength', 'Shock length');
  expect(comparison.notTaken).toBeNull();
  expect(bench.session.document.setup.shockLength).toBe(2);
});

it('of bikes with other measured figures are compared by their readings and along travel alone', () => {
  const { bench, comparison, turn } = opened();
  bench.session.commit(
    (from) => setBikeField(from, 'fork.length', linkedBike.fork.length + 5),
    'Fork length',
  );
  turn({ shockLength: 3 });
  const [baseline, now] = comparison.compared;
  expect([baseline.apart, now.apart]).toEqual([[], ['fork']]);
  expect([baseline.offered, now.offered]).toEqual([[], []]);
  expect(comparison.adjusters?.differing).toEqual([]);
  expect(sharedAxes(comparison.compared).map(({ key }) => key)).toEqual([
    'rearTravel',
    'frontTravel',
    'bothTravels',
  ]);
  const reasons = comparedReasons(comparison.compared, 0, ({ bike, setup }) =>
    bench.standing.standWith(bike, setup),
  );
  expect(reasons).toEqual([null, null]);
});

it('read on their curves what the page reads, and are explained in the sentences of Why', () => {
  const { bench, comparison, turn } = opened();
  turn({ shockLength: 5 });
  const set = comparedCurves(comparison.compared, antiSquat, REAR_TRAVEL, bench.standing.state);
  const values = set?.curves.map(({ value }) => value);
  const read = [bench.standing.baseline, bench.standing.live].map((stood) =>
    stood === null ? null : metricReading(antiSquat, stood.stance),
  );
  expect(values).toEqual(read);
  const reasons = comparedReasons(comparison.compared, 0, ({ bike, setup }) =>
    bench.standing.standWith(bike, setup),
  );
  const [compared, alone] = [reasons[1], bench.stateOf(Reasons).found].map((found) =>
    found === null ? null : whyStory(found.splits, found.mechanism, CHAIN, STYLE),
  );
  expect(compared?.sentences.length).toBeGreaterThan(2);
  expect(compared).toEqual(alone);
});

it('are outlined on the side view in their own lines while they are looked at', () => {
  const { bench, comparison } = opened();
  const before = bench.drawing.ghosts();
  const hide = comparison.showOutlines();
  expect(bench.drawing.ghosts().map(({ name, role }) => [name, role])).toEqual([
    ['A', 'compared1'],
    ['B', 'compared2'],
  ]);
  hide();
  expect(bench.drawing.ghosts()).toEqual(before);
});

it('come from another bike too, with its sheets, and say which sheet is damaged, or that the bike is gone', async () => {
  const { comparison } = opened();
  const store = memoryStore(null);
  const other = { ...linkedBike, name: 'Other', fork: { ...linkedBike.fork, travel: 100 } };
  const text = saveDocument(newDocument(other, sprungSetup));
  await store.save({ id: 'two', name: 'Other', writer: 'me', savedAt: 1, text, known: null });
  const sheet = newSheet({
    day: '2026-05-02',
    madeAt: 1,
    bike: other,
    setup: { ...sprungSetup, shockLength: 2 },
    notes: { place: 'Hill' },
    further: [],
    readings: {},
  });
  await store.saveSheet({ id: 's', bikeId: 'two', day: '2026-05-02', madeAt: 1, text: saveSheet(sheet) });
  await comparison.addBike(store, 'two');
  comparison.add('s');
  expect(comparison.compared.map(({ letter, name }) => `${letter} ${name}`)).toEqual([
    'A Baseline',
    'B Now',
    'C Other',
    'D Other: Hill, 2 May 2026',
  ]);
  expect(comparison.compared[3].apart).toEqual(['fork']);
  const damaged = saveSheet(sheet).slice(0, -20);
  await store.saveSheet({ id: 'd', bikeId: 'two', day: '2026-06-03', madeAt: 2, text: damaged });
  await comparison.addBike(store, 'two');
  expect(comparison.unread).toMatch(/^Other: its sheet of 3 Jun 2026 is left out\. [A-Z].+\.$/);
  expect(comparison.comparables.filter(({ of }) => of === 'other').map(({ key }) => key)).toEqual([
    'two',
    's',
  ]);
  await comparison.addBike(store, 'three');
  expect(comparison.unread).toBe('That bike is no longer saved in this browser.');
});
