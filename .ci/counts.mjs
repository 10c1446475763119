/**
 * What the parts of `npm test` count, and how counts are summed and said.
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts
 */

/**
 * A part that either works or does not.
 * @returns {Counts}
 */
export function asOne(/** @type {number} */ exitCode) {
  return exitCode === 0 ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 }
}

/**
 * Vitest's JSON report. A file that could not be loaded has no tests of its own and counts as one failure.
 * @returns {Counts}
 */
export function countUnitTests(/** @type {any} */ report) {
  const broken = report.testResults.filter((/** @type {any} */ file) => file.status === 'failed' && file.assertionResults.length === 0)
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  }
}

/**
 * Playwright's JSON report. Errors outside any test (the build, the set-up) count as failures. A test that passed at the
 * second try counts as passed, and is named by `secondTries`.
 * @returns {Counts}
 */
export function countBrowserTests(/** @type {any} */ { stats, errors }) {
  return { passed: stats.expected + stats.flaky, failed: stats.unexpected + errors.length, skipped: stats.skipped }
}

/**
 * The tests of Playwright's JSON report that passed at the second try, as "file:line title".
 * @returns {string[]}
 */
export function secondTries(/** @type {any} */ { suites = [], specs = [] }) {
  const own = specs.filter((/** @type {any} */ { tests }) => tests.some((/** @type {any} */ { status }) => status === 'flaky'))
  return [...own.map((/** @type {any} */ { file, line, title }) => `${file}:${line} ${title}`), ...suites.flatMap(secondTries)]
}

/**
 * A part's counts, with one failure added where its exit code tells of one that its report does not, or where nothing ran.
 * @param {number} exitCode
 * @param {Counts | undefined} counts undefined when the part left no report
 * @returns {Counts}
 */
export function withExitCode(exitCode, counts) {
  if (!counts) return asOne(1)
  const ranNothing = counts.passed + counts.failed === 0
  return counts.failed === 0 && (exitCode !== 0 || ranNothing) ? plus(counts, asOne(1)) : counts
}

/** @returns {Counts} */
export function plus(/** @type {Counts} */ a, /** @type {Counts} */ b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped }
}

/** The plain line a run closes with. */
export function inWords(/** @type {Counts} */ { passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`
}
