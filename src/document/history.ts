/** Undo and redo without limit, as immutable steps between documents. */
import type { BikeDocument } from './document.ts';
import type { EditReason } from './edits.ts';
import { sameValue } from './same-document.ts';

/** A change that was made, in words such as "Shock length", and the document on its other side. */
export interface Step {
  readonly label: string;
  readonly document: BikeDocument;
}

export interface History {
  /** Oldest first; each holds the document before its change. */
  readonly past: readonly Step[];
  readonly present: BikeDocument;
  /** The next to redo last; each holds the document after its change. */
  readonly future: readonly Step[];
  /** Why nothing can be changed on this bike; left out where it can. */
  readonly locked?: EditReason;
}

export function beginHistory(present: BikeDocument): History {
  return { past: [], present, future: [] };
}

/** Takes `document` as the new present. One that says the same as the present leaves no step and keeps the future. */
export function commit(history: History, document: BikeDocument, label: string): History {
  if (sameValue(history.present, document)) return history;
  return { past: [...history.past, { label, document: history.present }], present: document, future: [] };
}

/** One step back; the same history when there is none. The restored document is the very object that was left. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: step.document,
    future: [...history.future, { label: step.label, document: history.present }],
  };
}

/** One step forward again; the same history when there is none. */
export function redo(history: History): History {
  const step = history.future.at(-1);
  if (step === undefined) return history;
  return {
    past: [...history.past, { label: step.label, document: history.present }],
    present: step.document,
    future: history.future.slice(0, -1),
  };
}

/** What undo would take back, in words; null when nothing. */
export function undoLabel(history: History): string | null {
  return history.past.at(-1)?.label ?? null;
}

/** What redo would do again, in words; null when nothing. */
export function redoLabel(history: History): string | null {
  return history.future.at(-1)?.label ?? null;
}

/** The document before the last change, with all changes of the same name right before it; null when there is none. */
export function beforeLast({ past }: History): BikeDocument | null {
  const label = past.at(-1)?.label;
  let first = past.length - 1;
  while (first > 0 && past[first - 1].label === label) first -= 1;
  return past.at(first)?.document ?? null;
}
