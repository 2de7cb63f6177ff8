/** Where bikes are kept and how other tabs are heard: the browser's means, or those that a test gives. */
import type { BikeStore } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { openStore } from '../../storage/open-store.ts';
import { askToPersist, type Persistence } from '../../storage/persistence.ts';
import { saveOnLeaving } from '../../storage/save-on-leaving.ts';
import { storageFault } from '../../storage/storage-fault.ts';
import { browserChannel, type Channel } from '../../storage/tab-notices.ts';

export interface KeepingPlace {
  /** Where bikes are kept: this page's memory when there is no other place. */
  readonly findStore: () => Promise<BikeStore>;
  /** A new connection to the other tabs; null where there is none. */
  readonly channel: () => Channel | null;
  /** Calls `leave` whenever the page may not come back, until the returned function is called. */
  readonly onLeaving: (leave: () => Promise<void>) => () => void;
  /** The page's address without its path, such as `http://localhost:4173`: by this the browser keeps stores apart. */
  readonly address: string;
  /** Milliseconds since 1970, UTC. */
  readonly now: () => number;
  /** Asks the browser to keep what is stored. */
  readonly persist: () => Promise<Persistence>;
}

export function browserPlace(): KeepingPlace {
  return {
    findStore,
    channel: browserChannel,
    onLeaving: (leave) => saveOnLeaving(leave),
    address: location.origin,
    now: () => Date.now(),
    persist: () => askToPersist(),
  };
}

/** What speaks to the browser's database is fetched after the first sight, which does not need it. */
async function findStore(): Promise<BikeStore> {
  try {
    const { browserStore } = await import('../../storage/browser-store.ts');
    return await openStore(browserStore());
  } catch {
    // A store never throws: only the fetch can have failed.
    return memoryStore(storageFault('failed', 'the page could not fetch what speaks to it'));
  }
}
