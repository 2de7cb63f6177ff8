/** The setup sheets of the bike on the page: logged, corrected, opened again, taken as baseline. */
import type { Setup } from '../../core/adjusters/setup.ts';
import { readingsByState } from '../../core/effects/readings-by-state.ts';
import { succeed } from '../../core/numeric/result.ts';
import { setNamedBaseline, takeAsSet } from '../../document/edits.ts';
import { isDay, openSheet } from '../../document/open-sheet.ts';
import { saveSheet } from '../../document/save-sheet.ts';
import { NOTES, type Notes } from '../../document/sheet-notes.ts';
import {
  correctDay,
  correctFurther,
  correctNote,
  MOST_DRAFTS,
  newSheet,
  type KeptReadings,
  type Sheet,
  type SheetDraft,
  SLACK_HAD,
} from '../../document/sheet.ts';
import { inTimeOrder } from '../../storage/bike-index.ts';
import type { StoredSheet } from '../../storage/bike-store.ts';
import { newId } from '../../storage/new-id.ts';
import { differencesInLine, settingDifferences } from '../../words/change/setup-difference.ts';
import { dayAt, sheetName } from '../../words/kept/sheet-words.ts';
import { slackHad } from '../slack-had.ts';
import type { Keeping } from './keeping.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** A sheet that could be read. */
export interface KeptSheet {
  readonly id: string;
  readonly sheet: Sheet;
}

/** A sheet that could not, with the reason; it stays in the store as it is. */
export interface UnreadableSheet {
  readonly id: string;
  readonly day: string;
  readonly sentence: string;
}

interface OpenedSheets {
  readonly kept: readonly KeptSheet[];
  readonly unreadable: readonly UnreadableSheet[];
}

/** So many sheets are opened and shown before the others are looked at. */
const LATEST = 100;

/** How long sheets are opened before the page may answer a hand again, ms. */
const LONGEST_TURN_MS = 30;

/** Sheets after which a copy in a file is asked for: some weekends of work. */
const COPY_AFTER = 10;

export class Sheets {
  readonly #bench: Pick<Workbench, 'session' | 'preferences' | 'standing'>;
  readonly #now: () => number;
  #keeping: Keeping | null = null;
  /** In time order. */
  kept = $state.raw<readonly KeptSheet[]>([]);
  unreadable = $state.raw<readonly UnreadableSheet[]>([]);
  /** What was not done, in words; null once something was. */
  refusal = $state.raw<string | null>(null);
  /** The sheet that was deleted last and can be brought back; null when none. */
  removed = $state.raw<KeptSheet | null>(null);
  /** How many sheets before those that are shown are still to be read. */
  toRead = $state(0);
  /** Whether not even the latest sheet is known yet. */
  isSearching = $state(false);
  #bikeId = $state<string | null>(null);

  constructor(bench: Pick<Workbench, 'session' | 'preferences' | 'standing'>, now: () => number = Date.now) {
    this.#bench = bench;
    this.#now = now;
  }

  /** Reads the sheets of the bike that `keeping` keeps, the latest first; no sheets without a kept bike. */
  async show(keeping: Keeping, bikeId: string | null): Promise<void> {
    const { store } = keeping;
    const isOther = bikeId !== this.#bikeId;
    if (isOther) {
      this.kept = [];
      this.unreadable = [];
      this.removed = null;
      this.refusal = null;
      this.toRead = 0;
    }
    this.#keeping = keeping;
    this.#bikeId = bikeId;
    if (bikeId === null || store === null) return;
    this.isSearching = isOther;
    const found = await store.sheets(bikeId);
    if (bikeId !== this.#bikeId) return;
    this.isSearching = false;
    if (!found.ok) {
      this.refusal = found.reason.sentence;
      return;
    }
    if (!isOther) {
      const read = await this.#opened(found.value, bikeId);
      if (read !== null) [this.kept, this.unreadable] = [read.kept, read.unreadable];
      return;
    }
    // The latest are there at once, and what comes before them is put before whatever happens to them meanwhile.
    for (const records of [found.value.slice(-LATEST), found.value.slice(0, -LATEST)]) {
      const read = await this.#opened(records, bikeId);
      if (read === null) return;
      this.kept = [...read.kept, ...this.kept];
      this.unreadable = [...read.unreadable, ...this.unreadable];
      this.toRead = Math.max(0, found.value.length - LATEST);
    }
    this.toRead = 0;
  }

  /** Stored sheets, opened in turns between which the page can answer a hand; null once another bike is wanted. */
  async #opened(records: readonly StoredSheet[], bikeId: string): Promise<OpenedSheets | null> {
    const kept: KeptSheet[] = [];
    const unreadable: UnreadableSheet[] = [];
    let since = performance.now();
    for (const { id, day, text } of records) {
      if (performance.now() - since > LONGEST_TURN_MS) {
        await new Promise((done) => setTimeout(done));
        if (bikeId !== this.#bikeId) return null;
        since = performance.now();
      }
      const opened = openSheet(text);
      if (opened.ok) kept.push({ id, sheet: opened.value.sheet });
      else unreadable.push({ id, day, sentence: opened.reason.sentence });
    }
    return { kept, unreadable };
  }

  /** What is being filled in for the bike on the page; null when nothing is. */
  get draft(): SheetDraft | null {
    return this.#bench.preferences.data.sheetDrafts.find(({ bike }) => bike === this.#bikeId) ?? null;
  }

  /** Begins a sheet of today, or of the day given, with what is known already. */
  begin(day: string, notes: Notes): void {
    if (this.#bikeId === null) return;
    this.refusal = null;
    this.#fill({ bike: this.#bikeId, day, notes, further: [] });
  }

  /** What was turned since the last sheet, or since the baseline before the first one, in a line. */
  #changed(): string {
    const { setup, baseline, bike } = this.#bench.session.history.present;
    const before = this.kept.at(-1)?.sheet.setup ?? baseline.setup;
    const { style } = this.#bench.preferences;
    return differencesInLine(settingDifferences(before, setup, bike.drive.kind, style));
  }

  /** Begins today's sheet with what was turned, and with place and weather where the last one is of today. */
  beginToday(): void {
    const last = this.kept.at(-1)?.sheet;
    const day = dayAt(this.#now());
    const { place = '', weather = '' } = last?.notes ?? {};
    this.begin(day, { changed: this.#changed(), ...(last?.day === day ? { place, weather } : {}) });
  }

  /**
   * Puts lines on the sheet being filled in, or on a new one of today, below what stands there: what was turned by then
   * comes with them. True once they are there.
   */
  async note(keeping: Keeping, lines: Notes): Promise<boolean> {
    const bikeId = await keeping.keepNow();
    if (bikeId === null) return this.#refuse(this.#notStored());
    await this.show(keeping, bikeId);
    if (this.draft === null) this.beginToday();
    const notes: Record<string, string> = { ...this.draft?.notes };
    for (const [key, text] of Object.entries({ changed: this.#changed(), ...lines })) {
      const had = notes[key] ?? '';
      if (text.trim() !== '' && !had.includes(text)) notes[key] = had === '' ? text : `${had}\n${text}`;
    }
    this.fill({ notes });
    return true;
  }

  /** Logs one sheet of today for each of these states of the bike on the page; true when all are stored. */
  async logEach(
    keeping: Keeping,
    states: readonly { readonly setup: Setup; readonly notes: Notes }[],
  ): Promise<boolean> {
    const bikeId = await keeping.keepNow();
    if (bikeId === null) return this.#refuse(this.#notStored());
    await this.show(keeping, bikeId);
    const { bike } = this.#bench.session.history.present;
    const day = dayAt(this.#now());
    const madeAt = this.#momentOn(day);
    for (const [place, { setup, notes }] of states.entries()) {
      const readings = this.#readings(setup);
      const u = await this.#spreads(setup);
      // A moment apart, so that they stay in this order.
      const sheet = newSheet({ day, madeAt: madeAt + place, bike, setup, notes, further: [], readings, u });
      if (!(await this.#save({ id: newId(), sheet }, bikeId))) return false;
      this.#countSheet();
    }
    return true;
  }

  /** What the bike on the page reads, set so, with the slack that its chain has where that is not what was set. */
  #readings(setup: Setup): KeptReadings {
    const { present } = this.#bench.session.history;
    const readings = readingsByState(present.bike, setup);
    const slack = slackHad({ ...present, setup });
    if (slack === null || slack === setup.chainSlack) return readings;
    return { ...readings, toppedOut: { ...readings.toppedOut, [SLACK_HAD]: slack } };
  }

  /** How sure the readings of the bike on the page are, set so; null where nobody measured it. */
  async #spreads(setup: Setup): Promise<KeptReadings | null> {
    return (await this.#bench.standing.spreadsByState?.(setup)) ?? null;
  }

  #countSheet(): void {
    const { preferences } = this.#bench;
    preferences.change({ sheetsSinceCopy: preferences.data.sheetsSinceCopy + 1 });
  }

  #notStored(): string {
    return (
      this.#bench.session.history.locked?.sentence ??
      'The bike could not be stored, and so neither could its sheet.'
    );
  }

  /** Fills in what was typed; it outlives the page. */
  fill(changes: Partial<Omit<SheetDraft, 'bike'>>): void {
    if (this.draft !== null) this.#fill({ ...this.draft, ...changes });
  }

  drop(): void {
    this.refusal = null;
    this.#fill(null);
  }

  /** Puts this in place of what is being filled in for a bike; that of other bikes stays. */
  #fill(draft: SheetDraft | null, bikeId = this.#bikeId): void {
    const { preferences } = this.#bench;
    const others = preferences.data.sheetDrafts.filter(({ bike }) => bike !== bikeId);
    const sheetDrafts = draft === null ? others : [...others, draft].slice(-MOST_DRAFTS);
    preferences.change({ sheetDrafts });
  }

  /** Keeps the bike as it is set now with what was filled in and what it reads; true when it is stored. */
  async log(): Promise<boolean> {
    const { draft } = this;
    if (draft === null || this.#keeping === null) return false;
    const { day, notes, further } = draft;
    if (!isDay(day)) return this.#refuse('The day must be a day of the calendar, such as 2026-11-26.');
    const { bike, setup } = this.#bench.session.history.present;
    const [bikeId, u] = await Promise.all([this.#keeping.keepNow(), this.#spreads(setup)]);
    if (bikeId === null) return this.#refuse(this.#notStored());
    const readings = this.#readings(setup);
    const madeAt = this.#momentOn(day);
    const sheet = newSheet({ day, madeAt, bike, setup, notes, further, readings, u });
    if (!(await this.#save({ id: newId(), sheet }, bikeId))) return false;
    this.#fill(null, bikeId);
    this.#countSheet();
    return true;
  }

  /** When a sheet of this day is made: after the others of that day, also where the clock was set back in between. */
  #momentOn(day: string): number {
    const last = this.kept.findLast(({ sheet }) => sheet.day === day);
    return Math.max(this.#now(), (last?.sheet.madeAt ?? 0) + 1);
  }

  /** How many sheets are only in this browser, once they are so many that a copy is due; null before. */
  get copyDue(): number | null {
    const { sheetsSinceCopy } = this.#bench.preferences.data;
    return sheetsSinceCopy >= COPY_AFTER ? sheetsSinceCopy : null;
  }

  /** All bikes with their sheets have been saved to a file. */
  copied(): void {
    this.#bench.preferences.change({ sheetsSinceCopy: 0 });
  }

  /** Puts a note right; the sheet keeps both values. True when it is stored. */
  async correct(id: string, key: string, text: string): Promise<boolean> {
    const found = this.#sheet(id);
    if (found === undefined || this.#bikeId === null) return false;
    const label = NOTES.find((note) => note.key === key)?.label ?? key;
    const sheet = correctNote(found.sheet, key, label, text, this.#now());
    return sheet === found.sheet || (await this.#save({ id, sheet }, this.#bikeId));
  }

  /** Puts a line of the workshop's own right, by its place among them; the sheet keeps both. True when it is stored. */
  async correctFurther(id: string, place: number, text: string): Promise<boolean> {
    const found = this.#sheet(id);
    if (found === undefined || this.#bikeId === null) return false;
    const sheet = correctFurther(found.sheet, place, text, this.#now());
    return sheet === found.sheet || (await this.#save({ id, sheet }, this.#bikeId));
  }

  /** Puts the day right; the sheet keeps both. True when it is stored. */
  async correctDay(id: string, day: string): Promise<boolean> {
    const found = this.#sheet(id);
    if (found === undefined || this.#bikeId === null) return false;
    if (!isDay(day)) return this.#refuse('The day must be a day of the calendar, such as 2026-11-26.');
    const sheet = correctDay(found.sheet, day, this.#now());
    return sheet === found.sheet || (await this.#save({ id, sheet }, this.#bikeId));
  }

  /** Sets the bike on the page as it was on the sheet, as one undo entry. */
  open(id: string): void {
    const found = this.#sheet(id);
    if (found === undefined) return;
    const { sheet } = found;
    this.#bench.session.commit((from) => succeed(takeAsSet(from, sheet)), `Set as on ${sheetName(sheet)}`);
  }

  /** Compares everything with the sheet, under its name, as one undo entry. */
  useAsBaseline(id: string): void {
    const found = this.#sheet(id);
    if (found === undefined) return;
    const { sheet } = found;
    const name = sheetName(sheet);
    this.#bench.session.commit((from) => succeed(setNamedBaseline(from, sheet, name)), `Baseline: ${name}`);
  }

  async remove(id: string): Promise<void> {
    const store = this.#keeping?.store ?? null;
    const found = this.#sheet(id);
    if (found === undefined || store === null) return;
    const gone = await store.removeSheet(id);
    if (!gone.ok) {
      this.#refuse(gone.reason.sentence);
      return;
    }
    this.refusal = null;
    this.removed = found;
    this.kept = this.kept.filter((each) => each !== found);
  }

  /** Brings back the sheet that was deleted last. */
  async bringBack(): Promise<void> {
    const { removed } = this;
    if (removed === null || this.#bikeId === null) return;
    if (await this.#save(removed, this.#bikeId)) this.removed = null;
  }

  #sheet(id: string): KeptSheet | undefined {
    return this.kept.find((each) => each.id === id);
  }

  async #save({ id, sheet }: KeptSheet, bikeId: string): Promise<boolean> {
    const store = this.#keeping?.store ?? null;
    if (store === null) return this.#refuse('Nothing can be stored yet.');
    const { day, madeAt } = sheet;
    const stored: StoredSheet = { id, bikeId, day, madeAt, text: saveSheet(sheet) };
    const saved = await store.saveSheet(stored);
    if (!saved.ok) return this.#refuse(saved.reason.sentence);
    this.refusal = null;
    if (bikeId === this.#bikeId) this.#put(stored);
    return true;
  }

  /** Shows a sheet that was stored, as it reads from there; the others are not read again, of which a bike may have thousands. */
  #put({ id, text }: StoredSheet): void {
    const opened = openSheet(text);
    if (!opened.ok) return;
    const others = this.kept.filter((each) => each.id !== id);
    this.kept = [...others, { id, sheet: opened.value.sheet }].sort((a, b) => inTimeOrder(a.sheet, b.sheet));
  }

  #refuse(sentence: string): false {
    this.refusal = sentence;
    return false;
  }
}
