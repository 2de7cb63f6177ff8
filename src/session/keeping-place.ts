/** Where bikes are kept and how other tabs are heard: the browser's means, or those that a test gives. */
import type { BikeStore } from '../storage/bike-store.ts';
import { browserStore } from '../storage/browser-store.ts';
import { saveOnLeaving } from '../storage/save-on-leaving.ts';
import { browserChannel, type Channel } from '../storage/tab-notices.ts';

export interface KeepingPlace {
  readonly store: BikeStore;
  /** A new connection to the other tabs; null where there is none. */
  readonly channel: () => Channel | null;
  /** Calls `flush` whenever the page may not come back, until the returned function is called. */
  readonly onLeaving: (flush: () => Promise<void>) => () => void;
  /** Milliseconds since 1970, UTC. */
  readonly now: () => number;
}

export function browserPlace(): KeepingPlace {
  return {
    store: browserStore(),
    channel: browserChannel,
    onLeaving: (flush) => saveOnLeaving(flush),
    now: () => Date.now(),
  };
}
