/** What `npm run endure` prints: each test that drew random cases, with how many and how long it took. */

/**
 * @typedef {{ fullName: string, status: string, duration?: number | null, meta?: { cases?: number } }} Test
 * @typedef {{ testResults: { name: string, assertionResults: Test[] }[] }} Report
 */

/**
 * A line a test, the longest first, and one for all of them; tests that drew nothing have none.
 * @param {Report} report vitest's own, with the number of cases that tests/support/cases.ts adds
 * @param {string} root the folder that file names begin in
 * @returns {string[]}
 */
export function enduredLines(report, root) {
  const drawn = report.testResults
    .flatMap(({ name, assertionResults }) =>
      assertionResults.map((test) => ({
        ...test,
        file: name.startsWith(root) ? name.slice(root.length) : name,
        cases: test.meta?.cases ?? 0,
        seconds: (test.duration ?? 0) / 1000,
      })),
    )
    .filter(({ cases }) => cases > 0)
    .sort((a, b) => b.seconds - a.seconds);
  const sum = drawn.reduce((total, { cases }) => total + cases, 0);
  const failed = drawn.filter(({ status }) => status !== 'passed').length;
  return [
    ...drawn.map(
      ({ file, fullName, status, cases, seconds }) =>
        `${String(cases).padStart(9)} cases ${seconds.toFixed(1).padStart(7)} s  ${status === 'passed' ? '' : 'FAILED  '}${file}: ${fullName}`,
    ),
    `${sum} cases in ${drawn.length} tests, ${failed} failed`,
  ];
}

/**
 * What the words of the command line choose: a long trial by its name, and any test of random cases whose file's name
 * holds the word; all of both when nothing is named.
 * @param {string[]} words
 * @param {string[]} names of the long trials
 * @param {string[]} files of the tests that draw random cases
 * @returns {{ names: string[], files: string[], unknown: string[] }}
 */
export function chosenTrials(words, names, files) {
  if (words.length === 0) return { names, files, unknown: [] };
  const parts = words.filter((word) => !names.includes(word));
  return {
    names: names.filter((name) => words.includes(name)),
    files: files.filter((file) => parts.some((part) => file.includes(part))),
    unknown: parts.filter((part) => !files.some((file) => file.includes(part))),
  };
}
