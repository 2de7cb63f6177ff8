/** Tests of what the long run of the random cases prints. */
import { expect, it } from 'vitest';
import { chosenTrials, enduredLines } from './endured.js';

const test = (fullName: string, status: string, seconds: number, cases?: number) => ({
  fullName,
  status,
  duration: 1000 * seconds,
  meta: cases === undefined ? {} : { cases },
});

it('each test that drew cases has its line, the longest first, and the last line sums them', () => {
  const report = {
    testResults: [
      {
        name: '/here/a.test.ts',
        assertionResults: [test('one', 'passed', 0.24, 200), test('plain', 'passed', 9)],
      },
      { name: '/here/b.test.ts', assertionResults: [test('two', 'failed', 61.5, 20_000)] },
    ],
  };
  expect(enduredLines(report, '/here/')).toEqual([
    '    20000 cases    61.5 s  FAILED  b.test.ts: two',
    '      200 cases     0.2 s  a.test.ts: one',
    '20200 cases in 2 tests, 1 failed',
  ]);
});

it('nothing drawn counts as nothing', () => {
  expect(enduredLines({ testResults: [] }, '/')).toEqual(['0 cases in 0 tests, 0 failed']);
});

it('a word chooses a long trial by its name, or the random tests whose name holds it; no word chooses all', () => {
  const names = ['server', 'webkit'];
  const files = ['tests/properties/killed-saves.test.ts', 'tests/properties/equilibria.test.ts'];
  expect(chosenTrials([], names, files)).toEqual({ names, files, unknown: [] });
  expect(chosenTrials(['webkit'], names, files)).toEqual({ names: ['webkit'], files: [], unknown: [] });
  expect(chosenTrials(['killed-', 'server', 'none'], names, files)).toEqual({
    names: ['server'],
    files: [files[0]],
    unknown: ['none'],
  });
});
