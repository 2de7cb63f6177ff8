/** A bike that came in a link: shown beside the bike that was on the page, and only looked at until a copy is kept. */
import { renameBike } from '../../document/edits.ts';
import { beginHistory, type History } from '../../document/history.ts';
import { visible } from '../../document/json/json.ts';
import { isBikeLink, openLink } from '../../storage/link/bike-link.ts';
import { doneMessage, openedMessage } from '../../words/kept/keeping-message.ts';
import type { Workbench } from '../workbench.svelte.ts';
import { freeName } from './free-name.ts';
import type { Keeping } from './keeping.svelte.ts';

/** The bike that was on the page before the link. */
interface LeftBike {
  readonly id: string | null;
  readonly history: History;
}

const LOCKED = {
  path: '',
  sentence: 'This bike came in a link and is only shown. Keep a copy to change it.',
};

export class LinkVisit {
  readonly #bench: Workbench;
  readonly #keeping: Keeping;
  #left = $state.raw<LeftBike | null>(null);
  /** Counts the links that were opened: an answer that comes after a newer one is dropped. */
  #wish = 0;

  /** Why the link was not opened; null where it was. */
  refusal = $state<string | null>(null);
  /** What was changed so that it could be opened. */
  repairs = $state.raw<readonly string[]>([]);
  /** The name of the bike in the link while it is on the page. */
  readonly shown: string | null = $derived.by(() => {
    const { locked, present } = this.#bench.session.history;
    return locked === undefined ? null : visible(present.bike.name);
  });
  /** The name of the bike to go back to. */
  readonly own: string = $derived.by(() => visible(this.#left?.history.present.bike.name ?? ''));

  constructor(bench: Workbench, keeping: Keeping) {
    this.#bench = bench;
    this.#keeping = keeping;
  }

  /** Opens the bike behind the page's address, if there is one. A link that cannot be opened leaves the page as it is. */
  async open(fragment: string): Promise<void> {
    const wish = ++this.#wish;
    if (!isBikeLink(fragment)) return;
    const opened = await openLink(fragment);
    if (wish !== this.#wish) return;
    this.refusal = opened.ok ? null : opened.reason;
    if (!opened.ok) return;
    const { document, repairs } = opened.value;
    const { session } = this.#bench;
    // A second link leaves the same bike behind as the first.
    if (session.history.locked === undefined)
      this.#left = { id: this.#keeping.bikeId, history: session.history };
    this.repairs = repairs.length === 0 ? [] : openedMessage('', repairs, '').details;
    await this.#keeping.startWith(document, { ...beginHistory(document), locked: LOCKED });
  }

  /** Makes the bike one of the user's own, stored at once; it takes another name where a bike has the same. */
  async keep(): Promise<void> {
    const { present } = this.#bench.session.history;
    const { bikes } = this.#keeping;
    const { name } = present.bike;
    const names = bikes.map((each) => each.name);
    const renamed = names.includes(name) ? renameBike(present, freeName(name, names)) : null;
    await this.#keeping.startWith(renamed?.ok === true ? renamed.value : present);
    if ((await this.#keeping.keepNow()) === null) return;
    this.#keeping.message = doneMessage(
      `${visible(this.#bench.session.document.bike.name)} is among your bikes now.`,
    );
  }

  /** The bike from before the link takes the page again, with what can be undone on it. */
  async goBack(): Promise<void> {
    const left = this.#left;
    if (left === null) return;
    const { id, history } = left;
    const isStored = this.#keeping.bikes.some((each) => each.id === id);
    await (isStored && id !== null
      ? this.#keeping.openStored(id)
      : this.#keeping.startWith(history.present, history));
  }

  dismiss(): void {
    this.refusal = null;
  }
}
