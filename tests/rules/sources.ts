/** Finds checks against the outside world that do not name where their numbers come from. */

/** Author; title; edition; place. What was not looked up again ends in "; from memory". */
const SOURCE = /^(common practice, no source|[^;]+(; [^;]+){3}(; from memory)?|[^;]+; from memory)$/;
/** A test may leave its sources to the rows of its fixture. */
const ROWS = /^beside each row of fixtures\/reference\/[\w-]+\.json$/;
/** No edition: such a source was not looked up again, which has words of its own. */
const NO_EDITION = /edition not recorded/;
const CHECK = /^(it|test|describe)\b/;

/** Each check at the top of a test file without a comment `// Source: ….` right above it, by its line. */
export function checksWithoutSource(text: string): string[] {
  const lines = text.split('\n');
  return lines.flatMap((line, i) => {
    if (!CHECK.test(line)) return [];
    let first = i;
    while (first > 0 && lines[first - 1].startsWith('// ')) first--;
    const comment = lines
      .slice(first, i)
      .map((each) => each.slice('// '.length))
      .join(' ');
    return isSource(comment) ? [] : [`line ${i + 1}: ${line}`];
  });
}

/** Whether a comment begins with a source; other sentences may follow, and names may have full stops in them. */
function isSource(comment: string): boolean {
  const [, words] = /^Source: (.*)$/.exec(comment) ?? [];
  return [...(words ?? '').matchAll(/\.(?= |$)/g)]
    .map(({ index }) => words.slice(0, index))
    .some((source) => isInForm(source) || ROWS.test(source));
}

function isInForm(source: string): boolean {
  return SOURCE.test(source) && !NO_EDITION.test(source);
}

/** Each part of a fixture that holds numbers and neither has a `source` nor lies in a part that has one, by its path. */
export function rowsWithoutSource(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  if ('source' in value)
    return typeof value.source === 'string' && isInForm(value.source) ? [] : [`${path}.source`];
  return [
    ...new Set(Object.entries(value).flatMap(([key, inner]) => rowsWithoutSource(inner, `${path}.${key}`))),
  ];
}
