/** Tests of saving by itself: when, what is reported, and that two tabs lose nothing. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import { fail } from '../core/numeric/result.ts';
import type { BikeDocument } from '../document/document.ts';
import { openDocument } from '../document/open-document.ts';
import { openJson } from '../document/open-json.ts';
import { saveDocument } from '../document/save-document.ts';
import { Autosave, LONGEST_WAIT_MS, QUIET_MS, RETRY_MS } from './autosave.ts';
import type { BikeStore, BikeWrite } from './bike-store.ts';
import { memoryStore } from './memory-store.ts';
import type { SaveStatus } from './save-status.ts';
import { storageFault, type StorageFault } from './storage-fault.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: 1_000_000 });
});
afterEach(() => {
  vi.useRealTimers();
});

function start(): BikeDocument {
  const opened = openJson(plain);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value.document;
}

const withFork = (forkTubes: number): BikeDocument => {
  const document = start();
  return { ...document, setup: { ...document.setup, forkTubes } };
};

interface Tab {
  readonly autosave: Autosave;
  readonly states: string[];
  readonly statuses: SaveStatus[];
}

function tab(store: BikeStore, writer: string, revision: number | null = null): Tab {
  const statuses: SaveStatus[] = [];
  const autosave = new Autosave({
    store,
    id: 'bike',
    writer,
    revision,
    now: () => Date.now(),
    onStatus: (status) => statuses.push(status),
  });
  return {
    autosave,
    statuses,
    get states() {
      return statuses.map((status) => status.state);
    },
  };
}

/** A store whose saving fails while `fault` says so. */
function faulty(): { store: BikeStore; fault: StorageFault | null } {
  const inner = memoryStore(null);
  const it: { store: BikeStore; fault: StorageFault | null } = {
    fault: null,
    store: {
      ...inner,
      save: async (write) => (it.fault ? fail(it.fault) : inner.save(write)),
    },
  };
  return it;
}

async function storedFork(store: BikeStore): Promise<number | null> {
  const loaded = await store.load('bike');
  if (!loaded.ok || loaded.value === null) return null;
  const opened = openDocument(loaded.value.text);
  return opened.ok ? opened.value.document.setup.forkTubes : null;
}

describe('when it saves', () => {
  it('puts down the first change after a pause at once, and saves the last once they pause', async () => {
    const store = memoryStore(null);
    const leave = vi.spyOn(store, 'leave');
    const forgetLeft = vi.spyOn(store, 'forgetLeft');
    const { autosave, statuses } = tab(store, 'a');
    autosave.change(withFork(1));
    expect(leave.mock.calls).toMatchObject([[{ text: saveDocument(withFork(1)) }]]);
    await vi.advanceTimersByTimeAsync(QUIET_MS - 1);
    expect(await storedFork(store)).toBeNull();
    expect(autosave.hasUnsaved).toBe(true);
    autosave.change(withFork(2));
    await vi.advanceTimersByTimeAsync(QUIET_MS);
    expect(await storedFork(store)).toBe(2);
    expect(autosave.hasUnsaved).toBe(false);
    expect(leave).toHaveBeenCalledTimes(1);
    expect(forgetLeft).toHaveBeenCalledTimes(1);
    expect(statuses.map(({ state }) => state)).toEqual(['saved', 'saving', 'saved']);
  });

  it('does not let a stream of changes put it off beyond the longest wait', async () => {
    const store = memoryStore(null);
    const { autosave } = tab(store, 'a');
    const pause = QUIET_MS / 2;
    const changes = LONGEST_WAIT_MS / pause;
    for (let i = 0; i < changes; i++) {
      expect(await storedFork(store)).toBeNull();
      autosave.change(withFork(i));
      await vi.advanceTimersByTimeAsync(pause);
    }
    expect(await storedFork(store)).toBe(changes - 1);
  });

  it('saves once for a change that stands alone, and a key held for eight seconds not twice a second', async () => {
    const store = memoryStore(null);
    const save = vi.spyOn(store, 'save');
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(0));
    await vi.advanceTimersByTimeAsync(1000);
    expect(save).toHaveBeenCalledTimes(1);
    const seconds = 8;
    for (let i = 1; i <= seconds * 30; i++) {
      autosave.change(withFork(i));
      await vi.advanceTimersByTimeAsync(1000 / 30);
    }
    await vi.advanceTimersByTimeAsync(1000);
    expect(await storedFork(store)).toBe(seconds * 30);
    expect(save.mock.calls.length - 1).toBeLessThan(2 * seconds);
  });

  it('does not begin a save for each change that comes while a slow one is under way', async () => {
    const inner = memoryStore(null);
    const slow = (write: BikeWrite) =>
      new Promise<Awaited<ReturnType<BikeStore['save']>>>((done) => {
        setTimeout(() => void inner.save(write).then(done), 3 * QUIET_MS);
      });
    const save = vi.fn(slow);
    const { autosave } = tab({ ...inner, save }, 'a');
    for (let i = 0; i < 20; i++) {
      autosave.change(withFork(i));
      await vi.advanceTimersByTimeAsync(1.25 * QUIET_MS);
    }
    await vi.advanceTimersByTimeAsync(1000);
    expect(save.mock.calls.length).toBeLessThan(12);
    expect(await storedFork(inner)).toBe(19);
    expect(autosave.hasUnsaved).toBe(false);
  });

  it('has stored what was changed 200 ms before the tab is closed, with half of that time left for the writing', async () => {
    const store = memoryStore(null);
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(1));
    await vi.advanceTimersByTimeAsync(100);
    expect(await storedFork(store)).toBe(1);
    expect(LONGEST_WAIT_MS).toBeLessThan(1000);
  });

  it('is not put off by a clock that is set back, nor by one that is set forward', async () => {
    const store = memoryStore(null);
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(1));
    for (const hours of [-24, 48]) {
      vi.setSystemTime(Date.now() + hours * 3_600_000);
      autosave.change(withFork(hours));
      await vi.advanceTimersByTimeAsync(QUIET_MS);
      expect(await storedFork(store)).toBe(hours);
    }
    expect(autosave.revision).toBe(2);
  });

  it('keeps another tab’s version beside also where its clock is a day ahead', async () => {
    const store = memoryStore(null);
    const other = tab(store, 'other');
    vi.setSystemTime(Date.now() + 86_400_000);
    other.autosave.change(withFork(1));
    await other.autosave.flush();
    vi.setSystemTime(Date.now() - 86_400_000);
    const here = tab(store, 'here');
    here.autosave.change(withFork(2));
    await here.autosave.flush();
    expect(await storedFork(store)).toBe(2);
    const beside = await store.revisions('bike');
    expect(beside.ok && beside.value.map(({ writer }) => writer)).toEqual(['other']);
  });

  it('saves at once on demand, and nothing twice', async () => {
    const store = memoryStore(null);
    const { autosave, statuses } = tab(store, 'a');
    autosave.change(withFork(3));
    await autosave.flush();
    expect(await storedFork(store)).toBe(3);
    await vi.advanceTimersByTimeAsync(5000);
    expect(autosave.revision).toBe(1);
    expect(statuses.map((status) => status.state)).toEqual(['saved', 'saving', 'saved']);
    expect(statuses.at(-1)).toEqual({ state: 'saved', revision: 1, savedAt: 1_000_000 });
  });

  it('saves what changed while a save was under way', async () => {
    const store = memoryStore(null);
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(1));
    const first = autosave.flush();
    autosave.change(withFork(2));
    await first;
    expect(await storedFork(store)).toBe(2);
    expect(autosave.revision).toBe(2);
  });

  it('saves what is waiting when it stops, and no more', async () => {
    const store = memoryStore(null);
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(4));
    await autosave.stop();
    expect(await storedFork(store)).toBe(4);
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe('when the page is left', () => {
  /** A store that does not answer a save before it is let go. */
  function held() {
    const inner = memoryStore(null);
    let letGo = (): void => {};
    const go = new Promise<void>((done) => (letGo = done));
    const leave = vi.fn();
    const forgetLeft = vi.fn();
    const save: BikeStore['save'] = async (write) => {
      await go;
      return await inner.save(write);
    };
    return { store: { ...inner, save, leave, forgetLeft }, letGo: () => letGo() };
  }

  it('puts down at once what waits, and each change once', async () => {
    const { store } = held();
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(1));
    autosave.change(withFork(2));
    void autosave.leave();
    void autosave.leave();
    expect(store.leave).toHaveBeenCalledTimes(2);
    const text = saveDocument(withFork(2));
    const { name } = withFork(2).bike;
    const write = { id: 'bike', name, writer: 'a', savedAt: 1_000_000, text, known: null };
    expect(store.leave).toHaveBeenLastCalledWith(write);
    autosave.change(withFork(3));
    void autosave.leave();
    expect(store.leave).toHaveBeenCalledTimes(3);
  });

  it('puts down what is being saved, forgets it once that is done, and puts down nothing where all is saved', async () => {
    const { store, letGo } = held();
    const { autosave } = tab(store, 'a');
    autosave.change(withFork(1));
    const left = autosave.leave();
    expect(store.leave).toHaveBeenCalledTimes(1);
    expect(store.forgetLeft).toHaveBeenCalledTimes(0);
    letGo();
    await left;
    expect(store.forgetLeft.mock.calls).toEqual([['bike', 'a']]);
    await autosave.leave();
    expect(store.leave).toHaveBeenCalledTimes(1);
    expect(await storedFork(store)).toBe(1);
  });
});

describe('when storage does not work', () => {
  it('says that it is full until a save comes through, keeps the change and tries again by itself', async () => {
    const place = faulty();
    place.fault = storageFault('full');
    const { autosave, statuses } = tab(place.store, 'a');
    autosave.change(withFork(5));
    await vi.advanceTimersByTimeAsync(QUIET_MS);
    expect(statuses.at(-1)).toEqual({
      state: 'full',
      sentence:
        'The browser’s storage is full. Changes last only while this page is open; save the bike to a file to keep them.',
    });
    expect(autosave.hasUnsaved).toBe(true);
    await vi.advanceTimersByTimeAsync(RETRY_MS);
    expect(statuses.slice(2).map((status) => status.state)).toEqual(['full', 'full']);
    place.fault = null;
    await vi.advanceTimersByTimeAsync(RETRY_MS);
    expect(statuses.at(-1)?.state).toBe('saved');
    expect(await storedFork(place.store)).toBe(5);
  });

  it('saves the newest change, not the one that failed', async () => {
    const place = faulty();
    place.fault = storageFault('failed', 'disk');
    const { autosave, statuses } = tab(place.store, 'a');
    autosave.change(withFork(5));
    await autosave.flush();
    expect(statuses.at(-1)).toMatchObject({ state: 'memoryOnly' });
    place.fault = null;
    autosave.change(withFork(6));
    await vi.advanceTimersByTimeAsync(QUIET_MS);
    expect(await storedFork(place.store)).toBe(6);
    expect(autosave.revision).toBe(1);
  });

  it('with a store in memory says from the start that nothing lasts, and goes on saying so', async () => {
    const { autosave, statuses } = tab(memoryStore(storageFault('blocked')), 'a');
    autosave.change(withFork(1));
    await autosave.flush();
    expect(statuses.map((status) => status.state)).toEqual(['memoryOnly', 'memoryOnly']);
    expect(statuses[0]).toMatchObject({ sentence: expect.stringContaining('does not let this page store') });
  });
});

describe('two tabs on one bike', () => {
  async function twoTabs() {
    const store = memoryStore(null);
    const a = tab(store, 'a');
    a.autosave.change(withFork(1));
    await a.autosave.flush();
    const b = tab(store, 'b', 1);
    a.autosave.change(withFork(10));
    await a.autosave.flush();
    b.autosave.change(withFork(20));
    await b.autosave.flush();
    return { store, a, b };
  }

  it('keeps both versions and reports it until it is acknowledged', async () => {
    const { store, b } = await twoTabs();
    expect(await storedFork(store)).toBe(20);
    const revisions = await store.revisions('bike');
    expect(revisions.ok && revisions.value.map(({ revision, writer }) => [revision, writer])).toEqual([
      [2, 'a'],
    ]);
    expect(b.statuses.at(-1)).toMatchObject({ state: 'conflict', otherWriter: 'a', otherSavedAt: 1_000_000 });
    b.autosave.change(withFork(21));
    await b.autosave.flush();
    expect(b.states.slice(-2)).toEqual(['conflict', 'conflict']);
    b.autosave.acknowledgeConflict();
    expect(b.statuses.at(-1)).toEqual({ state: 'saved', revision: 4, savedAt: 1_000_000 });
  });

  it('keeps one revision for each tab however often they take turns', async () => {
    const { store, a, b } = await twoTabs();
    for (let i = 0; i < 5; i++) {
      a.autosave.change(withFork(100 + i));
      await a.autosave.flush();
      b.autosave.change(withFork(200 + i));
      await b.autosave.flush();
    }
    expect(await storedFork(store)).toBe(204);
    const revisions = await store.revisions('bike');
    expect(revisions.ok && revisions.value.map((each) => each.writer).sort()).toEqual(['a', 'b']);
    const latestOfA = revisions.ok ? revisions.value.find((each) => each.writer === 'a') : undefined;
    const opened = openDocument(latestOfA?.text ?? '');
    expect(opened.ok && opened.value.document.setup.forkTubes).toBe(104);
  });

  it('is no conflict when one tab opened what the other saved, or when both say the same', async () => {
    const store = memoryStore(null);
    const a = tab(store, 'a');
    a.autosave.change(withFork(1));
    await a.autosave.flush();
    const b = tab(store, 'b', 1);
    b.autosave.change(withFork(2));
    await b.autosave.flush();
    expect(b.states.at(-1)).toBe('saved');
    a.autosave.change(withFork(2));
    await a.autosave.flush();
    expect(a.states.at(-1)).toBe('saved');
    const revisions = await store.revisions('bike');
    expect(revisions.ok && revisions.value).toEqual([]);
  });

  it('reports each save that came through', async () => {
    const onSaved = vi.fn();
    const store = memoryStore(null);
    const options = {
      store,
      id: 'bike',
      writer: 'a',
      revision: null,
      now: () => 7,
      onStatus: () => {},
      onSaved,
    };
    const autosave = new Autosave(options);
    autosave.change(withFork(1));
    await autosave.flush();
    expect(onSaved.mock.calls).toEqual([[1, 7, withFork(1).bike.name]]);
  });
});
