/** Finds where a text stops being JSON, because not every engine's message says where. */

const BLANK = /[ \t\r\n]*/y;
const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

type Wanted = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd' | 'nothing';

function lengthAt(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0].length ?? 0;
}

/** Where the string that begins at `at` ends; as a negative number, where it goes wrong. */
function stringEnd(text: string, at: number): number {
  for (let i = at + 1; i < text.length; i++) {
    const c = text[i];
    if (c === '"') return i + 1;
    if (c < ' ') return -i;
    if (c === '\\') {
      const taken = lengthAt(ESCAPE, text, i);
      if (taken === 0) return -i;
      i += taken - 1;
    }
  }
  return -text.length;
}

/** Index of the first character at which the text is not JSON; null when it is. */
export function jsonFaultAt(text: string): number | null {
  const open: string[] = [];
  let wanted: Wanted = 'value';
  let at = 0;
  for (;;) {
    at += lengthAt(BLANK, text, at);
    if (at >= text.length) return wanted === 'nothing' ? null : at;
    const c = text[at];
    const wantsValue: boolean = wanted === 'value' || wanted === 'valueOrEnd';
    const wantsKey: boolean = wanted === 'key' || wanted === 'keyOrEnd';
    if (c === '"' && (wantsValue || wantsKey)) {
      const end = stringEnd(text, at);
      if (end < 0) return -end;
      at = end;
      wanted = wantsKey ? 'colon' : afterValue(open);
      continue;
    }
    if (wantsValue) {
      const taken = lengthAt(SCALAR, text, at);
      if (taken > 0) {
        at += taken;
        wanted = afterValue(open);
        continue;
      }
    }
    const next = afterMark(c, wanted, open);
    if (next === null) return at;
    wanted = next;
    at++;
  }
}

function afterValue(open: readonly string[]): Wanted {
  return open.length === 0 ? 'nothing' : 'commaOrEnd';
}

/** What is wanted after the bracket, colon or comma `c`; null when it has no place here. */
function afterMark(c: string, wanted: Wanted, open: string[]): Wanted | null {
  const inObject = open.at(-1) === '{';
  const wantsValue: boolean = wanted === 'value' || wanted === 'valueOrEnd';
  if ((c === '{' || c === '[') && wantsValue) {
    open.push(c);
    return c === '{' ? 'keyOrEnd' : 'valueOrEnd';
  }
  if (c === ':' && wanted === 'colon') return 'value';
  if (c === ',' && wanted === 'commaOrEnd') return inObject ? 'key' : 'value';
  const closes =
    (c === '}' && inObject && (wanted === 'keyOrEnd' || wanted === 'commaOrEnd')) ||
    (c === ']' && open.at(-1) === '[' && (wanted === 'valueOrEnd' || wanted === 'commaOrEnd'));
  if (!closes) return null;
  open.pop();
  return afterValue(open);
}
