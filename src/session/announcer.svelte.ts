/** What a screen reader says aloud: at most two messages a second while something moves, and one at its end. */
import type { Absent } from '../core/readings/absent.ts';
import { wordTold } from '../words/change/ways-told.ts';
import { writeNumber } from '../core/units/number-style.ts';
import { mostChanged } from '../words/change/most-changed.ts';
import { CANNOT_STAND } from './advice.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';

/** Least time between two messages, ms: two a second. */
const LEAST_GAP_MS = 500;

/** How a bike steers, in the readings that say it shortest. */
const FIRST_TOLD: readonly string[] = ['rake', 'trail'];

export class Announcer {
  readonly #standing: Standing;
  readonly #preferences: Preferences;
  /** The message to be read aloud; the page puts it into a live region. */
  message = $state('');
  #told: Readonly<Record<string, number | Absent>> = {};
  #lastMs = -Infinity;

  constructor(standing: Standing, preferences: Preferences) {
    this.#standing = standing;
    this.#preferences = preferences;
  }

  /** Remembers the readings as they are, so that the next message tells what has changed since. */
  remember(): void {
    this.#told = Object.fromEntries(this.#standing.rows.map((row) => [row.reading.key, row.value]));
  }

  /** While something moves: says what has changed most, unless a message was said just now. */
  moved(nowMs: number): void {
    if (nowMs - this.#lastMs < LEAST_GAP_MS) return;
    const change = this.#change();
    if (change !== null) this.#tell(change, nowMs);
  }

  /** At the end of a move or a change: says what was done and what has changed most by it, and remembers. */
  settled(nowMs: number, act: string | null = null): void {
    const change = this.#change();
    const said = [act, change].filter((each) => each !== null).join(': ');
    if (said !== '') this.#tell(said, nowMs);
    this.remember();
  }

  /** After an act that begins anew, such as opening another bike: says the act and how the bike steers, compared with none before it. */
  began(nowMs: number, act: string): void {
    const { problem, rows } = this.#standing;
    const { style } = this.#preferences;
    const steering = rows.flatMap(({ reading, value }) =>
      FIRST_TOLD.includes(reading.key) && typeof value === 'number'
        ? [`${reading.label} ${writeNumber(value, reading.quantity, style).text}`]
        : [],
    );
    const said = problem === null ? steering.join(', ') : CANNOT_STAND;
    this.#tell(`${act}: ${said}`, nowMs);
    this.remember();
  }

  /** What has changed most among the readings shown, in words; null when none has. */
  #change(): string | null {
    const { problem, rows } = this.#standing;
    if (problem !== null) return CANNOT_STAND;
    const { style, data } = this.#preferences;
    const [most] = mostChanged(
      rows
        .filter(({ reading }) => data.shown.includes(reading.key))
        .map(({ reading, value }) => ({ reading, before: this.#told[reading.key], now: value })),
      style,
    );
    if (most === undefined) return null;
    const { reading, before, now } = most;
    const value = writeNumber(now, reading.quantity, style).text;
    return `${reading.label} ${value}${wordTold(reading, before, now)}`;
  }

  #tell(message: string, nowMs: number): void {
    this.message = message;
    this.#lastMs = nowMs;
  }
}
