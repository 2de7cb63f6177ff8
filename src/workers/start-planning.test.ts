/** Tests of a search shared among threads, with threads that run here. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { SPRUNG_ROAD } from '../../tests/support/sprung-bikes.ts';
import { findPlans } from '../../tests/support/find-plans.ts';
import type { Problem } from '../core/plan/problem.ts';
import { threadsFor } from '../core/plan/search-part.ts';
import type { FromPlanner, ToPlanner } from './plan-messages.ts';
import { runPlanning, type RunningSearch } from './run-planning.ts';
import { startPlanning } from './start-planning.ts';

const problem: Problem = {
  ...SPRUNG_ROAD,
  targets: [
    { reading: 'rake', state: 'toppedOut', want: { kind: 'keep', tolerance: 0.05 } },
    { reading: 'trail', state: 'riderUp', want: { kind: 'keep' } },
  ],
  choices: [
    { adjuster: 'shockLength', available: true, least: -12, most: 12 },
    { adjuster: 'forkTubes', available: true, least: 0, most: 20 },
    { adjuster: 'clampOffset', available: true, least: 26, most: 34 },
    { adjuster: 'forkExtenders', available: true, least: 0, most: 3 },
  ],
};

/** What a thread does with a problem: searches, or dies, at once or after its first words. */
type Way = 'search' | 'die' | 'speakAndDie' | 'cutOff';
let ways: Way[] = [];
let started: TestThread[] = [];

/** A thread that runs here; what it says and hears is copied, as between threads. */
class TestThread extends EventTarget {
  readonly way: Way = ways[started.length] ?? 'search';
  isGone = false;
  #running: RunningSearch | null = null;

  constructor() {
    super();
    started.push(this);
  }

  postMessage(message: ToPlanner): void {
    const data = structuredClone(message);
    queueMicrotask(() => this.#hear(data));
  }

  terminate(): void {
    this.isGone = true;
  }

  #say(event: Event): void {
    if (!this.isGone) this.dispatchEvent(event);
  }

  #tell(message: FromPlanner): void {
    this.#say(new MessageEvent('message', { data: structuredClone(message) }));
  }

  #hear(message: ToPlanner): void {
    if (message.kind === 'join') this.#running?.join(message.part);
    else if (message.kind === 'stop') this.#running?.stop();
    else if (this.way === 'search')
      this.#running = runPlanning(message.problem, (said) => this.#tell(said), message.share);
    else {
      const none = { tried: 1, triedBeyond: 0, total: 2, best: null };
      if (this.way !== 'die') this.#tell({ kind: 'progress', progress: none });
      if (this.way === 'cutOff') this.#say(new Event('messageerror'));
      else this.#say(Object.assign(new Event('error'), { message: 'out of tune' }));
    }
  }
}

/** The last thing that a search says, and how far it was on the way. */
function searched(stopAtOnce = false): Promise<{ readonly last: FromPlanner; readonly tried: number[] }> {
  return new Promise((resolve) => {
    const tried: number[] = [];
    const running = startPlanning(problem, 1e6, (message) => {
      if (message.kind === 'progress') tried.push(message.progress.tried);
      else resolve({ last: message, tried });
    });
    if (stopAtOnce) running.stop();
  });
}

beforeEach(() => {
  ways = [];
  started = [];
  vi.stubGlobal('Worker', TestThread);
  vi.stubGlobal('navigator', { hardwareConcurrency: 3 });
});

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a search shared among threads', () => {
  it('finds what one alone finds, counts no combination twice, and leaves no thread', async () => {
    const { last, tried } = await searched();
    const alone = findPlans(problem);
    expect(alone).toMatchObject({ ok: true });
    expect(last).toEqual({ kind: 'found', found: alone });
    expect(started).toHaveLength(3);
    expect(started.every(({ isGone }) => isGone)).toBe(true);
    expect(tried).toEqual([...tried].sort((a, b) => a - b));
  });

  it('keeps what every thread has when it is ended', async () => {
    const { last } = await searched(true);
    expect(last).toMatchObject({ kind: 'found', found: { ok: true, plans: [], tried: 0 } });
    expect(started.every(({ isGone }) => isGone)).toBe(true);
  });

  it.each([0, 1])('goes on in the page when thread %i does not start', async (place) => {
    ways[place] = 'die';
    const { last } = await searched();
    expect(last).toEqual({ kind: 'found', found: findPlans(problem) });
    expect(started.every(({ isGone }) => isGone)).toBe(true);
  });

  it.each([
    ['speakAndDie', 'out of tune'],
    ['cutOff', 'its answer was cut off'],
  ] as const)('fails with what a thread died of on its way: %s', async (way, message) => {
    ways[2] = way;
    expect((await searched()).last).toEqual({ kind: 'failed', message });
    expect(started.every(({ isGone }) => isGone)).toBe(true);
  });

  it('is of one thread where it is short or the machine has one core', () => {
    expect([threadsFor(400, 8), threadsFor(1e6, 1), threadsFor(1e6, 2), threadsFor(1e6, 64)]).toEqual([
      1, 1, 2, 4,
    ]);
  });
});
