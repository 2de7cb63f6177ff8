/** Tests of the corner sequence by hand and played. */
import { describe, expect, it } from 'vitest';
import { loadCase } from '../core/riding/states/all-ride-states.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { ROLL_MS, CornerSequence, type Frames } from './corner-sequence.svelte.ts';
import { Riding } from './tabs/riding.svelte.ts';
import { Workbench } from './workbench.svelte.ts';
import { beginHistory } from '../document/history.ts';

/** Pictures that come when the test says so. */
class Asked implements Frames {
  waiting: ((nowMs: number) => void) | null = null;
  ask(frame: (nowMs: number) => void): number {
    this.waiting = frame;
    return 1;
  }
  cancel(): void {
    this.waiting = null;
  }
  at(nowMs: number): void {
    const frame = this.waiting;
    this.waiting = null;
    frame?.(nowMs);
  }
}

function begun() {
  const bench = new Workbench(DEMO_BIKES[0]);
  const frames = new Asked();
  return {
    bench,
    frames,
    cornerSequence: new CornerSequence(bench.standing, bench.moving, bench.announcer, frames),
  };
}

describe('the corner sequence', () => {
  it('follows the hand and ends where it began', () => {
    const { bench, cornerSequence } = begun();
    bench.ride('riderUp');
    cornerSequence.scrub(0.25, 0);
    expect(bench.standing.cornerPart).toBe(0.25);
    expect(bench.stateOf(Riding).rows[0]).toMatchObject({
      name: 'Corner sequence',
      state: null,
      present: true,
    });
    expect(
      bench
        .stateOf(Riding)
        .rows.slice(1)
        .some(({ present }) => present),
    ).toBe(false);
    cornerSequence.end(0);
    expect(bench.standing.cornerPart).toBeNull();
    expect(bench.stateOf(Riding).rows.find(({ present }) => present)?.state).toBe('riderUp');
  });

  it('plays the whole way once, evenly in its time', () => {
    const { bench, frames, cornerSequence } = begun();
    cornerSequence.play(false);
    expect(cornerSequence.playing).toBe(true);
    const seen: (number | null)[] = [];
    for (const part of [0, 0.25, 0.5, 0.8, 1]) {
      frames.at(1000 + part * ROLL_MS);
      seen.push(bench.standing.cornerPart);
    }
    expect(seen).toEqual([0, 0.25, 0.5, 0.8, 1]);
    expect(cornerSequence.playing).toBe(false);
    expect(frames.waiting).toBeNull();
    expect(bench.standing.ride).toEqual(loadCase('accelerating', bench.session.document.setup));
  });

  it('shows the named places one after another for those who want no motion', () => {
    const { bench, frames, cornerSequence } = begun();
    cornerSequence.play(true);
    const seen = new Set<number | null>();
    for (let passed = 0; passed <= ROLL_MS; passed += ROLL_MS / 40) {
      frames.at(500 + passed);
      seen.add(bench.standing.cornerPart);
    }
    expect([...seen]).toEqual([0, 0.25, 0.5, 1]);
    expect(cornerSequence.playing).toBe(false);
  });

  it('stops where a hand moves the slider, at Escape, and when a state is chosen', () => {
    const { bench, frames, cornerSequence } = begun();
    cornerSequence.play(false);
    frames.at(0);
    frames.at(ROLL_MS / 4);
    cornerSequence.scrub(0.6, 0);
    expect([cornerSequence.playing, frames.waiting, bench.standing.cornerPart]).toEqual([false, null, 0.6]);
    cornerSequence.play(false);
    frames.at(0);
    cornerSequence.end(0);
    expect([cornerSequence.playing, frames.waiting, bench.standing.cornerPart]).toEqual([false, null, null]);
    bench.cornerSequence.scrub(0.5, 0);
    bench.ride('accelerating');
    expect(bench.standing.cornerPart).toBeNull();
  });

  it('lets go of the picture when a hand takes hold of the bike', () => {
    const { bench, frames, cornerSequence } = begun();
    cornerSequence.play(false);
    frames.at(0);
    frames.at(400);
    const reached = bench.standing.cornerPart;
    bench.moving.grab('grip-shockLength');
    frames.at(800);
    expect([cornerSequence.playing, bench.standing.cornerPart]).toEqual([false, reached]);
  });

  it('ends when another bike is opened', () => {
    const { bench } = begun();
    bench.cornerSequence.scrub(0.5, 0);
    bench.open(beginHistory(DEMO_BIKES[1]));
    expect(bench.standing.cornerPart).toBeNull();
  });
});
