/** The ± of a measured bike beside its readings, and of how far they have moved from the baseline. */
import type { MeasuredReading } from '../../core/measure/measured-bike.ts';
import type { Absent } from '../../core/readings/absent.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { plusMinus, writePlusMinus } from '../../words/tape-words.ts';
import { writeNumber } from '../../core/units/number-style.ts';
import type { WithPlusMinus } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';
import { Tape } from './tape.svelte.ts';

/** How long nothing has changed before it is worked out, ms: it stands the bike twice for each unknown. */
const QUIET_MS = 300;

type Spreads = Readonly<Record<string, MeasuredReading>>;

export class PlusMinus {
  readonly #bench: Workbench;
  readonly #tape: Tape;
  /** Of the readings and of their change; null while they are not known. */
  #spreads = $state.raw<{ readonly own: Spreads; readonly change: Spreads | null } | null>(null);

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#tape = bench.stateOf(Tape);
    $effect(() => {
      const { session, standing, preferences } = bench;
      // A corner sequence is on its way between two states, and a bike that is not the measured one has another ±.
      const wanted = preferences.data.plusMinus && this.#tape.isApplied && standing.cornerPart === null;
      const { setup, bike, baseline } = session.history.present;
      const ride = standing.state;
      this.#spreads = null;
      if (!wanted) return;
      const timer = setTimeout(() => {
        const own = this.#tape.spreads({ from: null, to: setup, ride });
        const before = baseline.bike === bike ? baseline.setup : null;
        const change = before === null ? null : this.#tape.spreads({ from: before, to: setup, ride });
        this.#spreads = own === null ? null : { own, change };
      }, QUIET_MS);
      return () => clearTimeout(timer);
    });
    $effect(() => {
      const { own, change } = this.#spreads ?? { own: null, change: null };
      bench.standing.plusMinus =
        own === null ? null : (reading, value) => this.#words(reading, value, own, change);
    });
  }

  #words(
    { key, quantity }: Reading,
    value: number | Absent,
    own: Spreads,
    change: Spreads | null,
  ): WithPlusMinus | null {
    const { style } = this.#bench.preferences;
    if (typeof value !== 'number' || own[key] === undefined) return null;
    const { u } = own[key];
    if (u === null) return { value: writeNumber(value, quantity, style).text, change: ' · ± not fixed' };
    const moved = change?.[key]?.u ?? 0;
    const error = plusMinus(moved, quantity, style);
    const sure = error.startsWith('±') ? `change ${error}` : 'change sure to its last digit';
    return {
      value: writePlusMinus(value, u, quantity, style),
      change: moved > 0 ? ` · ${sure}` : '',
    };
  }
}
