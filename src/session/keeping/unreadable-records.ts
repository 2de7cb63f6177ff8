/** Records of the store that are no bikes: each is named once. */
import type { UnreadableRecord } from '../../storage/bike-store.ts';
import { unreadableMessage, type Message } from '../../words/kept/keeping-message.ts';

export class UnreadableRecords {
  /** The records that were named already, by their keys. */
  #told: readonly string[] = [];

  /** The message that stands, with those records added that were not named before; null where there are none. */
  tell(records: readonly UnreadableRecord[], standing: Message | null): Message | null {
    const fresh = records.filter(({ key }) => !this.#told.includes(key));
    if (fresh.length === 0) return standing;
    this.#told = [...this.#told, ...fresh.map(({ key }) => key)];
    return unreadableMessage([...(standing?.details ?? []), ...fresh.map(({ sentence }) => sentence)]);
  }
}
