/** Keys that work anywhere on the page, except in a text field: undo, redo, files, the view and the end of a corner sequence. */
import type { LateKeeping } from '../../session/keeping/late-keeping.svelte.ts';
import { Printing } from '../../session/printing.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';

const PAN_ZOOM = 1.25;

/** Whether keys pressed there belong to a field that takes text. */
function takesText(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement)
    return !['checkbox', 'radio', 'range', 'button'].includes(target.type);
  return target.isContentEditable;
}

/** Whether that is a field in which nothing is typed that is not taken yet; each such field says so itself. */
function hasSettled(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.dataset.settled === 'true';
}

export function pageKey(event: KeyboardEvent, bench: Workbench, late: LateKeeping): void {
  if (event.defaultPrevented || event.altKey) return;
  // What lies over the page has the keys.
  if (document.querySelector('dialog[open]') !== null) return;
  const command = event.ctrlKey || event.metaKey;
  const key = event.key.toLowerCase();
  const act = commandOf(key, command, event.shiftKey, event.target, bench, late);
  if (act === null) return;
  event.preventDefault();
  act();
}

function commandOf(
  key: string,
  command: boolean,
  shift: boolean,
  target: EventTarget | null,
  bench: Workbench,
  late: LateKeeping,
): (() => void) | null {
  if (command && key === 's') return () => late.ask((keeping) => keeping.saveFile());
  if (command && key === 'o') return () => document.querySelector<HTMLElement>('[data-bike-file]')?.click();
  if (command && key === 'p') return () => bench.stateOf(Printing).begin();
  const takesBack = command && (key === 'z' || key === 'y');
  // What is still being typed has the browser's own undo; a figure that was taken is undone with the bike.
  if (takesText(target) && !(takesBack && hasSettled(target))) return null;
  if (takesBack) return key === 'y' || shift ? () => bench.redo() : () => bench.undo();
  // In an opened menu letters choose an entry.
  if (command || target instanceof HTMLSelectElement) return null;
  if (key === 'escape' && (bench.cornerSequence.playing || bench.standing.cornerPart !== null))
    return () => bench.cornerSequence.end(performance.now());
  if (key === 'p') return () => (bench.mode.projecting = true);
  if (key === 'f') return () => bench.showWhole();
  if (key === '+' || key === '=') return () => bench.sideView.zoomMiddle(PAN_ZOOM);
  if (key === '-') return () => bench.sideView.zoomMiddle(1 / PAN_ZOOM);
  return null;
}
