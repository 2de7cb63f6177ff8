/** Pages that keep bikes in a store given by a test, with or without other tabs. */
import { flushSync } from 'svelte';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { setAdjuster } from '../../src/document/edits.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { Keeping } from '../../src/session/keeping/keeping.svelte.ts';
import { Workbench } from '../../src/session/workbench.svelte.ts';
import type { BikeStore } from '../../src/storage/bike-store.ts';
import { openStore } from '../../src/storage/open-store.ts';
import type { Channel } from '../../src/storage/tab-notices.ts';

export const [road, track] = DEMO_BIKES;

let time = 1_000_000;
let opened: readonly Keeping[] = [];

/** Ends every page that a test has opened. */
export async function endAll(): Promise<void> {
  for (const keeping of opened) await keeping.end();
  opened = [];
}

/** Channels that hear one another and not themselves. */
export function channels(): () => Channel {
  const all: Channel[] = [];
  return () => {
    const channel: Channel = {
      onmessage: null,
      postMessage: (data) =>
        all
          .filter((each) => each !== channel)
          .forEach((each) => each.onmessage?.(new MessageEvent('message', { data }))),
      close: () => {
        all.splice(all.indexOf(channel), 1);
      },
    };
    all.push(channel);
    return channel;
  };
}

/** A page with the first demonstration bike that has not looked for its store yet; `before` is done to it before keeping is there. */
export function tab(
  store: BikeStore,
  channel: () => Channel | null = () => null,
  before: (bench: Workbench) => void = () => {},
) {
  const bench = new Workbench(road);
  before(bench);
  let leave: () => Promise<void> = async () => {};
  let listening = true;
  const keeping = new Keeping(bench, road, {
    findStore: () => openStore({ ...store, close: () => {} }),
    channel,
    onLeaving: (flush) => {
      leave = flush;
      return () => (listening = false);
    },
    address: 'http://shop',
    now: () => (time += 1),
    persist: async () => 'kept',
  });
  opened = [...opened, keeping];
  return {
    bench,
    keeping,
    /** Whether the page still listens for being left. */
    listens: (): boolean => listening,
    /** Saves what waits, as when the page is left. */
    leave: async (): Promise<void> => {
      flushSync();
      await leave();
    },
    turn: (forkTubes: number): void =>
      bench.session.commit((from) => setAdjuster(from, 'forkTubes', forkTubes), 'Fork tubes above clamp'),
    fork: (): number => bench.session.document.setup.forkTubes,
  };
}

/** A page that has found its store. */
export async function begun(store: BikeStore, channel?: () => Channel | null) {
  const made = tab(store, channel);
  await made.keeping.begin();
  return made;
}

/** The names of all bikes in a store, the latest saved first. */
export async function names(store: BikeStore): Promise<string[]> {
  const listed = await store.list();
  return listed.ok ? listed.value.bikes.map(({ name }) => name) : [];
}

/** The fork tubes above the clamp of a stored bike, mm; null when the store does not hold it. */
export async function forkOf(store: BikeStore, id: string | null): Promise<number | null> {
  const loaded = await store.load(id ?? '');
  if (!loaded.ok || loaded.value === null) return null;
  const found = openDocument(loaded.value.text);
  return found.ok ? found.value.document.setup.forkTubes : null;
}

/** Waits until promises without a waiter have run, such as a second look at the list of bikes. */
export function idle(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}
