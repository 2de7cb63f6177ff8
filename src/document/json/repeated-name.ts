/** Finds a name that a text gives twice in one group, because a JSON parser would quietly keep only the last. */

export interface RepeatedName {
  readonly name: string;
  /** Index in the text of the first of the two, and of the second. */
  readonly at: readonly [number, number];
}

/** The first name given twice in one group of `text`, which must be JSON; null when there is none. */
export function repeatedName(text: string): RepeatedName | null {
  /** The groups about a place: the names of an object with where they stand, null for a list. */
  const around: (Map<string, number> | null)[] = [];
  let awaitsName = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (c === '"') {
      const end = closingQuote(text, i);
      const names = around.at(-1);
      if (awaitsName && names) {
        // Two spellings, one with escapes, can be the same name.
        const name: string = JSON.parse(text.slice(i, end + 1));
        const first = names.get(name);
        if (first !== undefined) return { name, at: [first, i] };
        names.set(name, i);
        awaitsName = false;
      }
      i = end;
    } else if (c === '{' || c === '[') {
      around.push(c === '{' ? new Map() : null);
      awaitsName = c === '{';
    } else if (c === '}' || c === ']') around.pop();
    else if (c === ',') awaitsName = around.at(-1) !== null;
  }
  return null;
}

function closingQuote(text: string, from: number): number {
  let i = from + 1;
  while (text[i] !== '"') i += text[i] === '\\' ? 2 : 1;
  return i;
}
