/** The ± of a measured bike beside its readings, and of how far they have moved from the baseline. */
import type { PlaceSpread } from '../../core/measure/spread/measured-places.ts';
import type { Absent } from '../../core/readings/absent.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { plusMinus, writePlusMinus, writeSure } from '../../words/plus-minus.ts';
import { writeNumber } from '../../core/units/number-style.ts';
import { placesDrawn } from '../../scene/places-drawing.ts';
import type { MeasuredBy, Spreads } from '../../workers/measure-messages.ts';
import type { WithPlusMinus } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';
import { Tape } from './tape.svelte.ts';

/** How long nothing has changed before it is worked out, ms: it stands the bike twice for each unknown. */
const QUIET_MS = 300;
/** A length that is set is off by ±0.2 mm at most, 95 %. */
const STEP_SD = 0.1;

type Readings = Spreads['own'];

export class PlusMinus {
  readonly #bench: Workbench;
  readonly #tape: Tape;
  /** Of the readings and of their change; null while they are not known. */
  #spreads = $state.raw<Spreads | null>(null);
  /** Of the points, as they were measured; they stay while adjusters are turned. */
  #places = $state.raw<readonly PlaceSpread[]>([]);
  /** The sheet of the bike on the page; null where that is not the measured one. */
  readonly #measured: MeasuredBy | null = $derived.by(() =>
    this.#tape.isApplied ? this.#tape.measuredBy : null,
  );
  /** The same while its ± is wanted. */
  readonly #by: MeasuredBy | null = $derived.by(() =>
    this.#bench.preferences.data.plusMinus ? this.#measured : null,
  );

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#tape = bench.stateOf(Tape);
    const { session, standing, drawing } = bench;
    $effect(() => {
      const { setup, bike, baseline } = session.history.present;
      const ride = standing.state;
      // A corner sequence is on its way between two states.
      const by = standing.cornerPart === null ? this.#by : null;
      this.#spreads = null;
      if (by === null) return;
      const from = baseline.bike === bike ? baseline.setup : null;
      return this.#later(async (isStale) => {
        const found = await this.#tape.thread.ask(by, {
          what: 'spreads',
          from,
          to: setup,
          ride,
          stepSd: STEP_SD,
        });
        if (!isStale()) this.#spreads = found;
      });
    });
    $effect(() => {
      const by = this.#by;
      this.#places = [];
      if (by === null) return;
      return this.#later(async (isStale) => {
        const found = await this.#tape.thread.ask(by, { what: 'places' });
        if (!isStale()) this.#places = found ?? [];
      });
    });
    $effect(() => {
      const by = this.#by;
      standing.bandAlong =
        by === null
          ? null
          : (reading, ride, places) => this.#tape.thread.ask(by, { what: 'band', reading, ride, places });
    });
    $effect(() => {
      const { own, change } = this.#spreads ?? { own: null, change: null };
      standing.plusMinus = own === null ? null : (reading, value) => this.#words(reading, value, own, change);
      drawing.figureText = (now, { key, quantity }) => {
        const u = own?.[key]?.u ?? null;
        return u === null ? null : writeSure(now, u, quantity, this.#bench.preferences.style).text;
      };
    });
    $effect(() => {
      const by = this.#measured;
      standing.spreadsByState =
        by === null ? null : (to) => this.#tape.thread.ask(by, { what: 'byState', to });
    });
    drawing.spreads = () => {
      const { live } = standing.now;
      return live === null || this.#places.length === 0 ? null : placesDrawn(live, this.#places);
    };
  }

  /** Does it once nothing has changed for a while; gives back what calls it off. */
  #later(act: (isStale: () => boolean) => Promise<void>): () => void {
    let isStale = false;
    const timer = setTimeout(() => void act(() => isStale), QUIET_MS);
    return () => {
      isStale = true;
      clearTimeout(timer);
    };
  }

  #words(
    { key, quantity }: Reading,
    value: number | Absent,
    own: Readings,
    change: Readings | null,
  ): WithPlusMinus | null {
    const { style } = this.#bench.preferences;
    if (typeof value !== 'number' || own[key] === undefined) return null;
    const { u } = own[key];
    if (u === null)
      return { value: writeNumber(value, quantity, style).text, error: null, change: ' · ± not fixed' };
    const moved = change?.[key]?.u ?? 0;
    const error = plusMinus(moved, quantity, style);
    const sure = error.startsWith('±') ? `change ${error}` : 'change sure to its last digit';
    return {
      value: writePlusMinus(value, u, quantity, style),
      error: plusMinus(u, quantity, style),
      change: moved > 0 ? ` · ${sure}` : '',
    };
  }
}
