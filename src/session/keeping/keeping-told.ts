/** What keeping has to tell beside the bike itself: a message with its way back or on, and a bike that waits for the page. */
import type { Message } from '../../words/kept/keeping-message.ts';
import type { FoundBike } from './found-bike.ts';

/** A bike waits to take the page, because the one on it holds changes that could not be stored. */
export interface Waiting {
  /** The bike whose changes would be lost. */
  readonly name: string;
  readonly found: FoundBike;
}

interface Action {
  readonly label: string;
  readonly onclick: () => void;
}

/** A message with what can be pressed beside it: the way back from what it tells of, or what comes next. */
export interface Told extends Message {
  readonly actions?: readonly Action[];
}
