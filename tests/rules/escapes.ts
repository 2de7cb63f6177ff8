/** Finds the ways around the type checker, the linter and the tests. */

// Pieced together, so that this file does not find itself.
const join = (...parts: string[]) => new RegExp(parts.join(''), 'g');

const ESCAPES: readonly (readonly [RegExp, string])[] = [
  [
    join(
      '\\b(?:it|test|describe|suite|bench)(?:\\.\\w+)*\\.(?:sk',
      'ip|on',
      'ly|to',
      'do|fix',
      'me|fails)\\b',
    ),
    'a skipped or focused test',
  ],
  [join('\\b(?:x', 'it|f', 'it|xde', 'scribe|fde', 'scribe)\\('), 'a skipped or focused test'],
  [join('@ts-', '(?:ig', 'nore|no', 'check|expect-', 'error)'), 'a switched-off type check'],
  [join('eslint-', 'disable'), 'a switched-off lint rule'],
  [join('svelte-', 'ignore'), 'a switched-off component warning'],
  [join('prettier-', 'ignore'), 'a switched-off format'],
  [join('(?:\\bas|:|,|<|\\|)\\s*', 'a', 'ny\\b(?=\\s*(?:[;,)=>|&\\[\\]{}]|$))'), 'a type that says nothing'],
  [join('import\\.meta\\.', 'glob'), 'an import that no rule can see'],
];

/** Each escape in the text, with its line number. */
export function escapesIn(text: string): string[] {
  return text
    .split('\n')
    .flatMap((line, index) =>
      ESCAPES.flatMap(([pattern, what]) =>
        (line.match(pattern) ?? []).map((found) => `line ${index + 1}: ${what} (${found.trim()})`),
      ),
    );
}
