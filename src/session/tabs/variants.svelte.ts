/** Up to four states of the bike on the page, pinned beside the baseline: read side by side, set again, made a sheet. */
import { metricReading } from '../../core/readings/metric-reading.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { Absent } from '../../core/readings/absent.ts';
import { succeed } from '../../core/numeric/result.ts';
import type { BikeWithSetup } from '../../document/document.ts';
import { takeAsSet } from '../../document/edits.ts';
import { openDocument } from '../../document/open-document.ts';
import { saveDocument } from '../../document/save-document.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** A laptop has room for no more columns. */
const MOST_VARIANTS = 4;
const LETTERS = 'ABCD';

export interface Variant extends BikeWithSetup {
  readonly letter: string;
}

/** One column: a variant with the readings asked for, or null where it does not stand. */
export interface VariantColumn {
  readonly name: string;
  readonly asSet: BikeWithSetup;
  readonly values: readonly (number | Absent | null)[];
}

export class Variants {
  readonly #bench: Pick<Workbench, 'session' | 'standing' | 'preferences'>;
  #bikeId = $state<string | null>(null);

  readonly pinned: readonly Variant[] = $derived.by(() =>
    this.#bench.preferences.data.variants.flatMap(({ bike: id, letter, text }) => {
      if (id !== this.#bikeId) return [];
      const opened = openDocument(text);
      if (!opened.ok) return [];
      const { bike, setup } = opened.value.document;
      return [{ letter, bike, setup }];
    }),
  );

  constructor(bench: Pick<Workbench, 'session' | 'standing' | 'preferences'>) {
    this.#bench = bench;
  }

  /** The bike whose variants are shown, by its id in the store. */
  show(bikeId: string | null): void {
    this.#bikeId = bikeId;
  }

  get hasRoom(): boolean {
    return this.#bikeId !== null && this.pinned.length < MOST_VARIANTS;
  }

  /** Pins the bike as it is set now under the first free letter. */
  pin(): void {
    const id = this.#bikeId;
    const { preferences, session } = this.#bench;
    const taken = this.pinned.map(({ letter }) => letter);
    const letter = [...LETTERS].find((each) => !taken.includes(each));
    if (id === null || letter === undefined) return;
    const { present } = session.history;
    // Without its own baseline, which says nothing of what is pinned.
    const text = saveDocument({ ...present, baseline: { bike: present.bike, setup: present.setup } });
    preferences.change({ variants: [...preferences.data.variants, { bike: id, letter, text }] });
  }

  unpin(letter: string): void {
    const { preferences } = this.#bench;
    const id = this.#bikeId;
    preferences.change({
      variants: preferences.data.variants.filter((each) => each.bike !== id || each.letter !== letter),
    });
  }

  /** Sets the bike as the variant, as one undo entry. */
  set(letter: string): void {
    const variant = this.pinned.find((each) => each.letter === letter);
    if (variant === undefined) return;
    this.#bench.session.commit((from) => succeed(takeAsSet(from, variant)), `Set as variant ${letter}`);
  }

  /** The baseline and each variant with these readings, read in the state that the page shows. */
  columns(readings: readonly Reading[]): VariantColumn[] {
    const { standing, session } = this.#bench;
    const { baseline } = session.document;
    const column = (name: string, asSet: BikeWithSetup): VariantColumn => {
      const stood = standing.stand(asSet);
      const values = readings.map((reading) =>
        'stance' in stood ? metricReading(reading, stood.stance) : null,
      );
      return { name, asSet, values };
    };
    return [
      column('Baseline', { bike: baseline.bike, setup: baseline.setup }),
      ...this.pinned.map(({ letter, bike, setup }) => column(letter, { bike, setup })),
    ];
  }
}
