/** What cannot be is said with its reason and what to change, while the page keeps the bike as it last stood. */
import { describe, expect, it } from 'vitest';
import { BAD_INPUTS, REFUSED_INPUTS } from '../../tests/support/bad-inputs.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import type { BikeDocument } from '../document/document.ts';
import { Workbench } from './workbench.svelte.ts';

const [road] = DEMO_BIKES;

async function opened(document: BikeDocument): Promise<Workbench> {
  const bench = new Workbench(document);
  bench.standing.choose('riderUp');
  await bench.advice.fetch();
  return bench;
}

const plain = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

/** How strong the bike is drawn: 1, or less while it is not the one that is set. */
const inkOf = ({ drawing }: Workbench): number | undefined =>
  drawing.scene.find(({ name }) => name === 'bike')?.ink;

/** What the page shows: readings with their numbers, the bike they are of, and its drawing. */
function shown({ standing, drawing }: Workbench) {
  const { live, rows } = standing;
  const drawn = drawing.scene.find(({ name }) => name === 'bike');
  return {
    bike: live?.bike,
    setup: live?.setup,
    travel: live?.stance.travel,
    values: rows.map(({ value }) => value),
    shapes: drawn?.shapes,
  };
}

describe.each(BAD_INPUTS)('$name', ({ good, edit, reason, wrong, advice }) => {
  it('is said with its reason and what to change; readings and drawing stay those of the last bike that stood', async () => {
    const bench = await opened(good);
    const { session, standing } = bench;
    expect([standing.problem, bench.advice.advice]).toEqual([null, null]);
    const before = shown(bench);
    expect(before.values.length).toBeGreaterThan(30);
    session.commit(edit, 'Bad');
    expect(session.refusal).toBeNull();
    expect(session.document).not.toBe(good);
    expect(standing.problem?.reason).toBe(reason);
    expect(plain(bench.advice.advice)).toContain(wrong);
    expect(plain(bench.advice.advice)).toContain(advice);
    expect(shown(bench)).toEqual(before);
    expect(inkOf(bench)).toBeLessThan(0.5);
    expect(standing.undoHelps).toBe(true);
    session.undo();
    expect(session.document).toBe(good);
    expect([standing.problem, bench.advice.advice]).toEqual([null, null]);
    expect(inkOf(bench)).toBe(1);
    // It comes to rest again, from where it rested last: in the last digit that may differ.
    expect(standing.live?.bike).toBe(good.bike);
    expect(standing.live?.stance.travel.front).toBeCloseTo(before.travel?.front ?? NaN, 9);
    expect(standing.live?.stance.travel.rear).toBeCloseTo(before.travel?.rear ?? NaN, 9);
  });

  it('tried out by a hand, leaves the bike when the hand lets go of it', async () => {
    const bench = await opened(good);
    const before = shown(bench);
    bench.session.preview(edit);
    expect(bench.standing.problem?.reason).toBe(reason);
    expect(shown(bench)).toEqual(before);
    bench.session.cancel();
    expect(bench.standing.problem).toBeNull();
    expect(bench.session.canUndo).toBe(false);
  });
});

describe.each(REFUSED_INPUTS)('$name', ({ edit, wrong, advice }) => {
  it('is not taken, with the reason and what to set', async () => {
    const bench = await opened(road);
    const before = shown(bench);
    bench.session.commit(edit, 'Bad');
    expect(bench.session.refusal).toContain(wrong);
    expect(bench.session.refusal).toContain(advice);
    expect(bench.session.document).toBe(road);
    expect(bench.session.canUndo).toBe(false);
    expect(shown(bench)).toEqual(before);
  });
});
