/** Tests of fetching keeping after the first sight: once, again where it did not come, and nothing asked is lost. */
import { expect, it } from 'vitest';
import { memoryStore } from '../../storage/memory-store.ts';
import { tab } from '../../../tests/support/kept-tab.ts';
import { LateKeeping } from './late-keeping.svelte.ts';

/** Keeping of one page, how often it was fetched, and whether it can be. */
function begun() {
  const { keeping } = tab(memoryStore(null));
  const state = { fetched: 0, away: false };
  const late = new LateKeeping(async () => {
    state.fetched += 1;
    await Promise.resolve();
    if (state.away) throw new TypeError('no network');
    return keeping;
  });
  return { late, keeping, state };
}

it('fetches keeping once, however often it is asked', async () => {
  const { late, keeping, state } = begun();
  expect(late.keeping).toBeNull();
  await Promise.all([late.fetch(), late.fetch()]);
  await late.fetch();
  expect(late.keeping).toBe(keeping);
  expect(state.fetched).toBe(1);
});

it('does what was asked before it came, in that order, and then at once', async () => {
  const { late, keeping } = begun();
  const done: string[] = [];
  late.ask((each) => done.push(each === keeping ? 'open' : 'another'));
  late.ask(() => done.push('save'));
  expect(done).toEqual([]);
  await expect.poll(() => done).toEqual(['open', 'save']);
  late.ask(() => done.push('again'));
  expect(done).toEqual(['open', 'save', 'again']);
});

it('says that it could not be fetched, and tries again when something is asked', async () => {
  const { late, state } = begun();
  state.away = true;
  await late.fetch();
  expect(late.failed).toBe(true);
  expect(late.keeping).toBeNull();
  state.away = false;
  const done: string[] = [];
  late.ask(() => done.push('save'));
  expect(late.failed).toBe(false);
  await expect.poll(() => done).toEqual(['save']);
  expect(late.failed).toBe(false);
});
