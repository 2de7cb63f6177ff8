/** The setup sheet: a dated copy of a bike as set, with what was noted about it and what it read that day. */
import type { BikeWithSetup } from './document.ts';
import type { FurtherNote, Notes } from './sheet-notes.ts';

export const SHEET_FORMAT = 'sidestance-sheet';
/** The schema of sheets that this program writes. */
export const SHEET_SCHEMA = 1;

/** A note that was put right after the sheet was made: both values stay. */
export interface Correction {
  /** Milliseconds since 1970, UTC. */
  readonly at: number;
  /** The label of what was corrected. */
  readonly what: string;
  readonly from: string;
  readonly to: string;
}

/** Readings by ride state and key, metric, as they were computed when the sheet was made. */
export type KeptReadings = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** Among the readings topped out: the slack that the chain had, where hands left it alone and it was not what was set. */
export const SLACK_HAD = 'chainSlack';

export interface Sheet extends BikeWithSetup {
  readonly format: typeof SHEET_FORMAT;
  readonly schema: typeof SHEET_SCHEMA;
  /** The day it belongs to, as 2026-11-26. */
  readonly day: string;
  /** Milliseconds since 1970, UTC. */
  readonly madeAt: number;
  readonly notes: Notes;
  readonly further: readonly FurtherNote[];
  readonly readings: KeptReadings;
  /** Standard deviations (1 σ) of those readings that the bike’s measurements fix; left out where nobody measured it. */
  readonly u?: KeptReadings;
  readonly corrections: readonly Correction[];
}

/** Half-filled sheets of more bikes than a shop has on its stands. */
export const MOST_DRAFTS = 200;

/** A sheet being filled in, of the bike with that id. */
export interface SheetDraft {
  readonly bike: string;
  readonly day: string;
  readonly notes: Notes;
  readonly further: readonly FurtherNote[];
}

/** A pinned state: the bike it belongs to by its id, its letter, and its text as in a bike's file. */
export interface PinnedText {
  readonly bike: string;
  readonly letter: string;
  readonly text: string;
}

export interface NewSheet extends BikeWithSetup {
  readonly day: string;
  readonly madeAt: number;
  readonly notes: Notes;
  readonly further: readonly FurtherNote[];
  readonly readings: KeptReadings;
  /** See Sheet; null where nobody measured the bike. */
  readonly u?: KeptReadings | null;
}

/** A sheet as it is made: empty notes are left out. */
export function newSheet({ notes, further, u = null, ...rest }: NewSheet): Sheet {
  return {
    format: SHEET_FORMAT,
    schema: SHEET_SCHEMA,
    ...rest,
    ...(u !== null && { u }),
    notes: Object.fromEntries(Object.entries(notes).filter(([, text]) => text.trim() !== '')),
    further: further.filter(({ name, text }) => name.trim() !== '' || text.trim() !== ''),
    corrections: [],
  };
}

/** A note put right: the sheet says what stood there before. Nothing changes where both are the same. */
export function correctNote(sheet: Sheet, key: string, label: string, text: string, at: number): Sheet {
  const from = sheet.notes[key] ?? '';
  if (from === text) return sheet;
  return {
    ...sheet,
    notes: { ...sheet.notes, [key]: text },
    corrections: [...sheet.corrections, { at, what: label, from, to: text }],
  };
}

/** A line of the workshop's own put right, by its place among them from 0; a line that is not there changes nothing. */
export function correctFurther(sheet: Sheet, place: number, text: string, at: number): Sheet {
  const line = sheet.further.at(place);
  if (line === undefined || line.text === text) return sheet;
  return {
    ...sheet,
    further: sheet.further.with(place, { ...line, text }),
    corrections: [...sheet.corrections, { at, what: line.name, from: line.text, to: text }],
  };
}

/** The day put right. */
export function correctDay(sheet: Sheet, day: string, at: number): Sheet {
  if (sheet.day === day) return sheet;
  return {
    ...sheet,
    day,
    corrections: [...sheet.corrections, { at, what: 'Day', from: sheet.day, to: day }],
  };
}
