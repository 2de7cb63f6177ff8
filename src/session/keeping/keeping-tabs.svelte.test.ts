/** Tests of one bike on the page in two tabs. */
import { flushSync } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { begun, channels, endAll, forkOf, idle, track } from '../../../tests/support/kept-tab.ts';
import { memoryStore } from '../../storage/memory-store.ts';

afterEach(endAll);

describe('two tabs', () => {
  async function twoTabs() {
    const store = memoryStore(null);
    const channel = channels();
    const a = await begun(store, channel);
    a.turn(1);
    await a.leave();
    await idle();
    const b = await begun(store, channel);
    return { store, a, b };
  }

  it('S13: hear of one another, and when the other turns to another bike', async () => {
    const { a, b } = await twoTabs();
    expect(b.keeping.bikeId).toBe(a.keeping.bikeId);
    expect([a.keeping.elsewhere?.kind, b.keeping.elsewhere?.kind]).toEqual([
      'openElsewhere',
      'openElsewhere',
    ]);
    await b.keeping.startWith(track);
    await idle();
    expect(a.keeping.elsewhere).toBeNull();
  });

  it('both versions can be opened, after either tab has changed the bike', async () => {
    const { store, a, b } = await twoTabs();
    a.turn(10);
    await a.leave();
    b.turn(20);
    await b.leave();
    await idle();
    expect(b.keeping.status).toMatchObject({ state: 'conflict' });
    expect(b.keeping.others).toHaveLength(1);
    await b.keeping.openOther(b.keeping.others[0]?.writer ?? '');
    expect(b.fork()).toBe(10);
    await b.leave();
    expect(await forkOf(store, a.keeping.bikeId)).toBe(20);
    expect(await forkOf(store, b.keeping.bikeId)).toBe(10);
    expect(b.keeping.bikeId).not.toBe(a.keeping.bikeId);
  });

  it('showing the newer version does not hide that a change here was kept beside it', async () => {
    const { a, b } = await twoTabs();
    a.turn(10);
    await a.leave();
    b.turn(20);
    flushSync();
    await b.keeping.takeSaved();
    expect(b.fork()).toBe(20);
    expect(b.keeping.status.state).toBe('conflict');
  });

  it('the newer version takes the page of a tab that changed nothing', async () => {
    const { a, b } = await twoTabs();
    a.turn(10);
    await a.leave();
    expect(b.keeping.elsewhere?.kind).toBe('savedElsewhere');
    await b.keeping.takeSaved();
    expect(b.fork()).toBe(10);
    b.turn(11);
    await b.leave();
    expect(b.keeping.status.state).toBe('saved');
  });
});
