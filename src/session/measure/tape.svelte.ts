/** Tape: the rows that the bike on the page is measured by, the bike they lead to, and taking it over as one edit. */
import type { MeasureKindKey } from '../../core/measure/kinds/all-kinds.ts';
import type { MeasureStateKey } from '../../core/measure/held/all-measure-states.ts';
import type { MeasuredBike, NextMeasurement } from '../../core/measure/measured-bike.ts';
import type { StartingBike } from '../../core/measure/held/starting-bike.ts';
import { succeed } from '../../core/numeric/result.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import type { BikeDocument } from '../../document/document.ts';
import { replaceSketched, setInvented, type Edited } from '../../document/edits.ts';
import { setMeasure } from '../../document/set-measure.ts';
import type { KeptMeasure, KeptRow } from '../../document/measure.ts';
import type { JsonObject } from '../../document/json/json.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import { nearlySame } from '../nearly-same.ts';
import type { MeasuredBy } from '../../workers/measure-messages.ts';
import { MeasuringThread } from '../../workers/start-measuring.ts';
import type { Workbench } from '../workbench.svelte.ts';
import type { FittedRows, TapeFit } from './tape-fit.ts';
import { newRow } from './tape-rows.ts';
import { usualRows } from './usual-rows.ts';

const NONE: readonly KeptRow[] = [];
const NO_PHOTOS: readonly JsonObject[] = [];
const PAPERS: MeasureStateKey = 'makersPosture';
const ON_WHEELS: MeasureStateKey = 'onWheels';

export class Tape {
  readonly #session: BikeSession;
  /** Where what is unsure is worked out, beside the page. */
  readonly thread = new MeasuringThread();
  /** The place in the sheet of the row that is open; null when none is. */
  open = $state<number | null>(null);
  /** Whether the open row was come to by typing the one before it, so that the keys go with it. */
  isTyping = false;
  /** The reading that the next measurement is to help most, by its key. */
  wanted = $state('trail');

  /** The fit itself, once it has come; the tab that shows this fetches it beside its panel. */
  fitter = $state.raw<TapeFit | null>(null);
  /** Whether the fit could not be fetched. */
  isFitMissing = $state(false);

  // Read one by one, so that a turned adjuster fits nothing anew.
  readonly #kept = $derived.by(() => this.#session.history.present.measure);
  readonly #bike = $derived.by(() => this.#session.history.present.bike);
  readonly #setupNow = $derived.by(() => this.#session.history.present.setup);
  /** Where the adjusters stood while the bike was measured; as now while it has no sheet. */
  readonly #setup = $derived.by(() => this.#kept?.setup ?? this.#setupNow);
  readonly #start: StartingBike = $derived.by(() => ({
    bike: this.#bike,
    setup: this.#setup,
    isMeasured: this.#kept?.taken === true,
  }));

  readonly rows: readonly KeptRow[] = $derived.by(() => this.#kept?.rows ?? NONE);
  readonly gaugeZeroed: boolean = $derived.by(() => this.#kept?.gaugeZeroed ?? true);
  readonly fit: FittedRows | null = $derived.by(() =>
    this.#kept === undefined || this.fitter === null ? null : this.fitter.fitRows(this.#kept, this.#start),
  );
  /** The bike that the rows lead to; null while they lead to none. */
  readonly found: MeasuredBike | null = $derived.by(() => {
    const found = this.fit?.found ?? null;
    return found?.ok === true ? found : null;
  });
  /** Whether the bike on the page is the one that the rows lead to. */
  readonly isApplied: boolean = $derived.by(() => {
    const { found } = this;
    return found !== null && nearlySame(found.bike, this.#bike) && nearlySame(found.setup, this.#setup);
  });
  /** The sheet that the measured bike is asked about by; null while there is none. */
  readonly measuredBy: MeasuredBy | null = $derived.by(() =>
    this.#kept === undefined || this.fitter === null || this.fit === null || this.found === null
      ? null
      : this.fitter.measuredBy(this.#kept, this.#start, this.fit),
  );
  /** Whether adjusters have been turned since the bike was measured. */
  readonly isTurned: boolean = $derived.by(
    () => this.#kept !== undefined && !nearlySame(this.#kept.setup, this.#setupNow),
  );
  readonly measuredSetup: Setup = $derived.by(() => this.#setup);

  constructor({ session }: Pick<Workbench, 'session'>) {
    this.#session = session;
    session.listen({ opened: () => (this.open = null) });
    void this.fetchFit();
  }

  /** Fetches the fit; again where it did not come. */
  async fetchFit(): Promise<void> {
    try {
      this.fitter = await import('./tape-fit.ts');
      this.isFitMissing = false;
    } catch {
      // A browser rejects what it cannot fetch.
      this.isFitMissing = true;
    }
  }

  /** Adds an empty row of a kind behind the others and opens it. */
  add(kind: MeasureKindKey): void {
    this.#addRow(newRow(kind, this.#bike));
  }

  /** Adds the row of a measurement that would help. */
  addNext({ kind, parts, state, otherState }: NextMeasurement): void {
    this.#addRow({ ...newRow(kind, this.#bike), parts, state, otherState });
  }

  /** The usual rows that the sheet has not yet. */
  readonly usual: readonly KeptRow[] = $derived.by(() => usualRows(this.#bike, this.rows));

  /** Adds them behind the others, as one entry of the history, and opens the first. */
  addUsual(): void {
    const place = this.rows.length;
    this.#keep([...this.rows, ...this.usual], 'Tape: the usual rows');
    if (this.rows.length > place) this.open = place;
  }

  /** Opens the next row without a figure behind this one, to type it; nothing where there is none. */
  typeNext(place: number): void {
    const next = this.rows.findIndex((row, i) => i > place && row.figure === '' && !row.off);
    if (next === -1) return;
    this.isTyping = true;
    this.open = next;
  }

  #addRow(row: KeptRow): void {
    const place = this.rows.length;
    this.#keep([...this.rows, row], 'Tape: a new row');
    if (this.rows.length > place) this.open = place;
  }

  change(place: number, changes: Partial<KeptRow>, label: string): void {
    this.#keep(
      this.rows.map((row, i) => (i === place ? { ...row, ...changes } : row)),
      label,
    );
  }

  /** Makes a row one of another kind, as far as its parts fit. */
  changeKind(place: number, kind: MeasureKindKey): void {
    const { note } = this.rows[place];
    this.change(place, { ...newRow(kind, this.#bike), note }, 'Tape: another kind');
  }

  remove(place: number, label: string): void {
    this.open = null;
    this.#keep(
      this.rows.filter((_, i) => i !== place),
      label,
    );
  }

  zeroGauge(gaugeZeroed: boolean): void {
    this.#session.commit(
      (from) => setMeasure(from, { ...this.#sheet(from), gaugeZeroed }),
      gaugeZeroed ? 'Tape: gauge zeroed on the floor' : 'Tape: gauge not zeroed on the floor',
    );
  }

  readonly photos: readonly JsonObject[] = $derived.by(() => this.#kept?.photos ?? NO_PHOTOS);

  keepPhotos(photos: readonly JsonObject[], label: string): void {
    this.#session.commit((from) => setMeasure(from, { ...this.#sheet(from), photos }), label);
  }

  #keep(rows: readonly KeptRow[], label: string): void {
    this.#session.commit((from) => setMeasure(from, { ...this.#sheet(from), rows }), label);
  }

  #sheet({ measure, setup }: BikeDocument): KeptMeasure {
    return measure ?? { gaugeZeroed: true, setup, rows: [] };
  }

  /** Whether papers speak of another posture than the one that the bike is read in. */
  readonly papersApart: boolean = $derived.by(
    () =>
      this.found !== null &&
      this.found.readIn !== PAPERS &&
      (this.fit?.fitted ?? []).some((place) => this.rows[place].state === PAPERS),
  );

  /** Reads the papers as if they spoke of the bike as it stands on its wheels. */
  readPapersAsItStands(): void {
    this.#keep(
      this.rows.map((row) => (row.state === PAPERS ? { ...row, state: ON_WHEELS } : row)),
      'Tape: papers read as the bike stands',
    );
  }

  /** Makes the bike on the page the one that the rows lead to, as one entry of the history. */
  apply(label: string): void {
    if (this.#kept === undefined || this.fitter === null) return;
    const { found } = this.fitter.settledFit(this.#kept, this.#start);
    if (found?.ok === true) this.#session.commit((from) => withFound(from, found), label);
  }

  /** Sets the adjusters back to where they stood while the bike was measured. */
  setAsMeasured(label: string): void {
    this.#session.commit((from) => succeed({ ...from, setup: this.#setup }), label);
  }

  /** What one more measurement would do for the reading that is wanted, best first; worked out beside the page. */
  async lookAhead(): Promise<readonly NextMeasurement[]> {
    const { measuredBy: by, wanted: reading } = this;
    return by === null ? [] : ((await this.thread.ask(by, { what: 'next', reading })) ?? []);
  }
}

/** The adjusters that the fit has found otherwise take what it found; all others stay as they are set now. */
function taken(now: Setup, before: Setup, found: Setup): Setup {
  const changed = Object.entries(found).filter(
    ([key, value]) => !nearlySame(value, Object.entries(before).find(([each]) => each === key)?.[1]),
  );
  return { ...now, ...Object.fromEntries(changed) };
}

/** The document with the bike that was found, and its sheet as measured on that bike. */
export function withFound(from: BikeDocument, found: { readonly bike: Bike; readonly setup: Setup }): Edited {
  const { measure } = from;
  const before = measure?.setup ?? from.setup;
  const replaced = replaceSketched(from, found.bike, taken(from.setup, before, found.setup));
  if (!replaced.ok) return replaced;
  const owned = setInvented(replaced.value, false);
  if (!owned.ok || measure === undefined) return owned;
  return setMeasure(owned.value, { ...measure, setup: taken(before, before, found.setup), taken: true });
}
