/** Tests that whatever went wrong is counted. */
import { expect, it } from 'vitest';
import { countPlaywright, countVitest, total, withEnding } from './counts.js';

const file = (status: string, ...statuses: string[]) => ({
  name: 'x.test.ts',
  status,
  assertionResults: statuses.map((each) => ({ status: each })),
});

it('passed and failed tests are counted over all files', () => {
  const testResults = [file('passed', 'passed', 'passed'), file('failed', 'passed', 'failed')];
  expect(countVitest({ testResults })).toEqual({ passed: 3, failed: 1 });
});

it('a skipped test and one still to be written count as failed', () => {
  const testResults = [file('passed', 'passed', 'skipped', 'pending', 'todo')];
  expect(countVitest({ testResults })).toEqual({ passed: 1, failed: 3 });
});

it('a file that could not be loaded, that failed outside its tests or that holds none counts as one failed', () => {
  const testResults = [file('failed'), file('failed', 'passed'), file('passed')];
  expect(countVitest({ testResults })).toEqual({ passed: 1, failed: 3 });
});

it('in the browser flaky and skipped tests and errors outside tests count as failed', () => {
  const stats = { expected: 5, unexpected: 1, flaky: 1, skipped: 1 };
  expect(countPlaywright({ stats, errors: [{}] })).toEqual({ passed: 5, failed: 4 });
  expect(countPlaywright({ stats })).toEqual({ passed: 5, failed: 3 });
});

it('a stage that ran nothing has failed, and so has one that ended badly though its tests passed', () => {
  expect(withEnding({ passed: 0, failed: 0 }, true)).toEqual({ passed: 0, failed: 1 });
  expect(withEnding({ passed: 3, failed: 0 }, false)).toEqual({ passed: 3, failed: 1 });
  expect(withEnding({ passed: 3, failed: 2 }, false)).toEqual({ passed: 3, failed: 2 });
  expect(withEnding({ passed: 3, failed: 0 }, true)).toEqual({ passed: 3, failed: 0 });
});

it('the total is the sum of the stages', () => {
  expect(
    total([
      { passed: 1, failed: 0 },
      { passed: 2, failed: 3 },
    ]),
  ).toEqual({ passed: 3, failed: 3 });
});
