/** Turns what the test runners report into two numbers, so that whatever went wrong is counted. */

/** @typedef {{ passed: number, failed: number }} Count */

/**
 * @typedef {{ testResults: { name: string, status: string, assertionResults: { status: string }[] }[] }} VitestReport
 * @typedef {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number },
 *   errors?: unknown[] }} PlaywrightReport
 */

/**
 * A test that was skipped or is still to be written counts as failed, and so does a file that could not be loaded.
 * @param {VitestReport} report @returns {Count}
 */
export function countVitest(report) {
  const count = { passed: 0, failed: 0 };
  for (const file of report.testResults) {
    const passed = file.assertionResults.filter((each) => each.status === 'passed').length;
    const failed = file.assertionResults.length - passed;
    count.passed += passed;
    count.failed += failed;
    if (failed === 0 && (file.status === 'failed' || passed === 0)) count.failed += 1;
  }
  return count;
}

/**
 * A flaky or skipped test counts as failed, and so does each error outside a test.
 * @param {PlaywrightReport} report
 * @returns {Count}
 */
export function countPlaywright(report) {
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + skipped + (report.errors?.length ?? 0) };
}

/**
 * The count of a stage, given how its program ended: one that ran nothing, or ended badly although every test passed,
 * has one failure more. @param {Count} count @param {boolean} endedWell @returns {Count}
 */
export function withEnding(count, endedWell) {
  const ranNothing = count.passed + count.failed === 0;
  const hiddenFailure = !endedWell && count.failed === 0;
  return ranNothing || hiddenFailure ? { passed: count.passed, failed: count.failed + 1 } : count;
}

/**
 * @param {Count[]} counts
 * @returns {Count}
 */
export function total(counts) {
  return counts.reduce(
    (sum, each) => ({ passed: sum.passed + each.passed, failed: sum.failed + each.failed }),
    { passed: 0, failed: 0 },
  );
}
