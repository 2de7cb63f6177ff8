/** Finds what is wrong with a single source file, from its name and text. */

/** A longer file holds more than one thing. */
const MOST_LINES = 400;

// One sentence: it ends at its first full stop, which nothing but the end of the comment follows.
const OPENINGS = [/^\/\*\*\s([\s\S]*?)\*\//, /^\/\/ (.*)\n/, /^<!--\s([\s\S]*?)-->/];

/** Every way in which the file breaks a rule of the house; empty when it breaks none. */
export function fileFaults(file: string, text: string): string[] {
  const faults: string[] = [];
  const name = file.slice(file.lastIndexOf('/') + 1);
  const body = text.startsWith('#!') ? text.slice(text.indexOf('\n') + 1) : text;

  const opening = OPENINGS.map((pattern) => pattern.exec(body)?.[1]).find((found) => found !== undefined);
  if (opening === undefined) faults.push('does not open with a comment that says what it is');
  else if (!isOneSentence(opening))
    faults.push('its opening comment is not one sentence ending with a full stop');

  const lines = text.replace(/\n$/, '').split('\n').length;
  if (lines > MOST_LINES) faults.push(`has ${lines} lines, more than ${MOST_LINES}`);
  if (/^index\.(ts|js)$/.test(name)) faults.push('is a barrel: importers name the file itself');
  if (/(^|\/|-)utils?(\/|\.|-)/.test(file)) faults.push('is named "util", which says nothing');
  return faults;
}

function isOneSentence(comment: string): boolean {
  const words = comment.replace(/^\s*\*/gm, '').trim();
  // A full stop before a small letter belongs to an abbreviation or a number, not to the end of a sentence.
  return /[.]$/.test(words) && !/[.!?]\s+\p{Lu}/u.test(words);
}
