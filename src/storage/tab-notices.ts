/** Notices between tabs that have the same bike open. */
import * as v from 'valibot';

const said = v.variant('kind', [
  v.object({ kind: v.literal('opened'), id: v.string(), writer: v.string() }),
  v.object({ kind: v.literal('here'), id: v.string(), writer: v.string() }),
  v.object({ kind: v.literal('left'), id: v.string(), writer: v.string() }),
  v.object({
    kind: v.literal('saved'),
    id: v.string(),
    writer: v.string(),
    revision: v.number(),
    savedAt: v.number(),
  }),
]);

export type TabNotice =
  | { readonly kind: 'openElsewhere' }
  /** A tab that had the bike open has turned to another; a third one may still have it. */
  | { readonly kind: 'leftElsewhere' }
  | { readonly kind: 'savedElsewhere'; readonly revision: number; readonly savedAt: number };

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent) => void) | null;
  close(): void;
}

const CHANNEL = 'sidestance';

/** The browser's channel between tabs; null where there is none, so that tabs do not hear of one another. */
export function browserChannel(): Channel | null {
  return typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL);
}

/**
 * Listens for other tabs with the bike `id` open, and lets them know of this one. `writer` is this tab's line of
 * work. Without a channel nothing is heard; saves are compared in the store all the same.
 */
export class TabNotices {
  #channel: Channel | null;
  readonly #id: string;
  readonly #writer: string;

  constructor(channel: Channel | null, id: string, writer: string, onNotice: (notice: TabNotice) => void) {
    this.#channel = channel;
    this.#id = id;
    this.#writer = writer;
    if (channel === null) return;
    channel.onmessage = (event) => {
      // A tab of another build may say what this one does not know.
      const heard = v.safeParse(said, event.data);
      if (!heard.success || heard.output.id !== id || heard.output.writer === writer) return;
      const { output } = heard;
      if (output.kind === 'saved')
        onNotice({ kind: 'savedElsewhere', revision: output.revision, savedAt: output.savedAt });
      else if (output.kind === 'left') onNotice({ kind: 'leftElsewhere' });
      else {
        onNotice({ kind: 'openElsewhere' });
        if (output.kind === 'opened') channel.postMessage({ kind: 'here', id, writer });
      }
    };
    channel.postMessage({ kind: 'opened', id, writer });
  }

  /** Tells the other tabs that this one has saved. */
  saved(revision: number, savedAt: number): void {
    this.#channel?.postMessage({ kind: 'saved', id: this.#id, writer: this.#writer, revision, savedAt });
  }

  /** Tells the other tabs that this one has left the bike, and hears no more. */
  close(): void {
    this.#channel?.postMessage({ kind: 'left', id: this.#id, writer: this.#writer });
    this.#channel?.close();
    // A closed channel throws at the next message, and a save may still come through.
    this.#channel = null;
  }
}
