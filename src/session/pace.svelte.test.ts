/** Tests of the pace at which figures follow a hand. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import { Workbench } from './workbench.svelte.ts';

const GAP_MS = 140;

function turn(bench: Workbench, shockLength: number): void {
  bench.session.preview((from) => setAdjuster(from, 'shockLength', shockLength));
}

/** Wheelbase as the readings show it, and as the bike that is drawn has it. */
function wheelbases(bench: Workbench): { shown: unknown; drawn: number | undefined } {
  return {
    shown: bench.standing.rows.find(({ reading }) => reading.key === 'wheelbase')?.value,
    drawn: bench.standing.now.live?.stance.pose.wheelbase,
  };
}

describe('the pace at which figures follow a hand', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('the drawing follows each move, and the readings as often as their pace allows', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    bench.session.pace.gapMs = GAP_MS;
    turn(bench, 1);
    const first = wheelbases(bench);
    expect(first.shown).toBe(first.drawn);
    expect(bench.session.document.setup.shockLength).toBe(1);
    turn(bench, 2);
    const second = wheelbases(bench);
    expect(second.drawn).not.toBe(first.drawn);
    expect(second.shown).toBe(first.shown);
    expect(bench.session.newest.setup.shockLength).toBe(2);
    expect(bench.session.document.setup.shockLength).toBe(1);
  });

  it('a hand that rests finds every reading right once the gap is over', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    bench.session.pace.gapMs = GAP_MS;
    for (const length of [1, 2, 3]) turn(bench, length);
    const moving = wheelbases(bench);
    expect(moving.shown).not.toBe(moving.drawn);
    vi.advanceTimersByTime(GAP_MS);
    const rested = wheelbases(bench);
    expect(rested.shown).toBe(rested.drawn);
    expect(rested.drawn).toBe(moving.drawn);
  });

  it('letting go and going back put every reading right at once', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    bench.session.pace.gapMs = GAP_MS;
    const before = wheelbases(bench);
    for (const length of [1, 2, 3]) turn(bench, length);
    bench.session.commitDraft('Shock length');
    const kept = wheelbases(bench);
    expect(kept.shown).toBe(kept.drawn);
    expect(kept.shown).not.toBe(before.shown);
    for (const length of [4, 5, 6]) turn(bench, length);
    bench.session.cancel();
    expect(wheelbases(bench)).toEqual(kept);
  });
});
