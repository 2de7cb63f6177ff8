/** Tests of a search run in slices. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../tests/support/sprung-bikes.ts';
import { findPlans } from '../../tests/support/find-plans.ts';
import { planSearch } from '../core/plan/find-plans.ts';
import { WHOLE } from '../core/plan/search-part.ts';
import type { Problem } from '../core/plan/problem.ts';
import type { FromPlanner } from './plan-messages.ts';
import { runPlanning } from './run-planning.ts';

const problem: Problem = {
  ...SPRUNG_ROAD,
  targets: [{ reading: 'rake', state: 'toppedOut', want: { kind: 'keep', tolerance: 1 } }],
  choices: [
    { adjuster: 'shockLength', available: true, least: -12, most: 12 },
    { adjuster: 'forkTubes', available: true },
    { adjuster: 'clampOffset', available: true, least: 26, most: 34 },
  ],
};

/** All that a search says, up to what it found. */
function heard(asked: Problem, stopAtOnce = false): Promise<readonly FromPlanner[]> {
  return new Promise((resolve) => {
    const messages: FromPlanner[] = [];
    const running = runPlanning(asked, (message) => {
      messages.push(message);
      if (message.kind === 'found') resolve(messages);
    });
    if (stopAtOnce) running.stop();
  });
}

describe('a search in slices', () => {
  it('finds what the search in one go finds, and tells on the way how far it is', async () => {
    const messages = await heard(problem);
    expect(messages[messages.length - 1]).toEqual({ kind: 'found', found: findPlans(problem) });
    const tried = messages.flatMap((each) => (each.kind === 'progress' ? [each.progress.tried] : []));
    expect(tried).toEqual([...tried].sort((a, b) => a - b));
  });

  it('ends when it is stopped, with what it has', async () => {
    const messages = await heard(problem, true);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatchObject({ kind: 'found', found: { ok: true, tried: 0, plans: [] } });
  });

  it('tells what it died of, whether at once or on the way, and is over then', async () => {
    const died = { kind: 'failed', message: 'out of tune' };
    const dies = (): never => {
      throw new Error('out of tune');
    };
    const atOnce: FromPlanner[] = [];
    runPlanning(problem, (message) => atOnce.push(message), WHOLE, dies);
    expect(atOnce).toEqual([died]);
    const onTheWay = await new Promise<FromPlanner>((resolve) => {
      runPlanning(problem, resolve, WHOLE, (asked) => {
        const search = planSearch(asked);
        return search.ok ? { ...search, advance: dies } : search;
      });
    });
    expect(onTheWay).toEqual(died);
  });

  it('says at once why there is nothing to search', async () => {
    expect(await heard({ ...problem, targets: [] })).toEqual([
      { kind: 'found', found: { ok: false, reason: 'noTargets' } },
    ]);
  });
});
