/** Messages about keeping bikes, in words. */

/** A change that was made to a file so that it could be opened, in one sentence. */
interface Repaired {
  readonly sentence: string;
  /** How many changes it stands for, where it sums up several. */
  readonly changes?: number;
}

export type MessageKind = 'done' | 'warning' | 'error';

/** A message. What was done goes with the next change; what went wrong stays until it is dismissed. */
export interface Message {
  readonly kind: MessageKind;
  readonly text: string;
  readonly details: readonly string[];
}

export function doneMessage(text: string): Message {
  return { kind: 'done', text, details: [] };
}

export function errorMessage(text: string, details: readonly string[] = []): Message {
  return { kind: 'error', text, details };
}

/**
 * Where bikes stay, by the address of the page, such as `http://localhost:4173`. No standard tells a page that its window
 * is a private one, so what is true of these is said in every window.
 */
export function stayWords(address: string): string {
  return `Bikes stay in this browser on this device, at the address ${address}. Another address is another store. A private window forgets its bikes when it is closed.`;
}

/** That the bike on the page was saved anew, because the store had lost it. */
export function goneMessage(): Message {
  return {
    kind: 'warning',
    text: 'This bike was gone from the browser’s storage and is saved again as it is here, without its setup sheets. It was deleted in another tab, or the browser cleared its storage. If the list of bikes is empty too, bring your bikes back from a file.',
    details: [],
  };
}

/** That a bike was opened, with every change made on the way. `original` says where it is as it was. */
export function openedMessage(name: string, repairs: readonly Repaired[], original: string): Message {
  if (repairs.length === 0) return doneMessage(`Opened ${name}.`);
  const count = repairs.reduce((sum, each) => sum + (each.changes ?? 1), 0);
  const changes = count === 1 ? 'one change' : `${count} changes`;
  return {
    kind: 'warning',
    text: `Opened ${name}, with ${changes}. ${original}`,
    details: summedUp(repairs.map((repair) => repair.sentence)),
  };
}

/** How many changes are named one by one; nobody reads thousands. */
const MOST_TOLD = 20;

/** The first sentences, each once, and how many changes stand behind the rest. */
function summedUp(sentences: readonly string[]): string[] {
  if (sentences.length <= MOST_TOLD) return [...sentences];
  const first = [...new Set(sentences)].slice(0, MOST_TOLD);
  const told = new Set(first);
  const rest = sentences.filter((sentence) => !told.has(sentence)).length;
  const repeated = sentences.length - first.length - rest;
  const more = [
    ...(rest > 0 ? [`And ${rest} more changes.`] : []),
    ...(repeated > 0 ? [`${repeated} of these changes were made more than once.`] : []),
  ];
  return [...first, ...more];
}

/** That the store holds records that are no bikes, each with its own sentence. */
export function unreadableMessage(sentences: readonly string[]): Message {
  const records = sentences.length === 1 ? 'One saved entry' : `${sentences.length} saved entries`;
  const stay = sentences.length === 1 ? 'It stays' : 'They stay';
  return {
    kind: 'warning',
    text: `${records} cannot be opened as a bike. ${stay} there unchanged, and all bikes are saved as before.`,
    details: sentences,
  };
}
