/**
 * What the parts of `npm test` count, and how counts are summed and said.
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts
 * @typedef {{ name: string, message: string }} Failure
 */
import { relative } from 'node:path'
import { stripVTControlCharacters } from 'node:util'

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
 * The failed tests of Vitest's JSON report, and the files that could not be loaded, each as what it is called and what it said.
 * @param {any} report
 * @param {string} root the folder that files are named from
 * @returns {Failure[]}
 */
export function failedUnitTests({ testResults }, root) {
  return testResults.flatMap((/** @type {any} */ { name, status, message, assertionResults }) => {
    const file = relative(root, name)
    if (status === 'failed' && assertionResults.length === 0) return [{ name: file, message }]
    const failed = assertionResults.filter((/** @type {any} */ test) => test.status === 'failed')
    return failed.map((/** @type {any} */ test) => ({ name: `${file} ${test.fullName}`, message: test.failureMessages.join('\n') }))
  })
}

/**
 * The failed tests of Playwright's JSON report, with what they said at the last try, and the errors outside any test.
 * @returns {Failure[]}
 */
export function failedBrowserTests(/** @type {any} */ { suites = [], specs = [], errors = [] }) {
  const own = specs.flatMap((/** @type {any} */ { file, line, title, tests }) =>
    tests
      .filter((/** @type {any} */ { status }) => status === 'unexpected')
      .map((/** @type {any} */ { results }) => ({ name: `${file}:${line} ${title}`, message: results.at(-1)?.error?.message ?? '' })),
  )
  const outside = errors.map((/** @type {any} */ { message }) => ({ name: 'outside any test', message }))
  return [...own, ...suites.flatMap(failedBrowserTests), ...outside]
}

/** A failed test in a few lines: its name and the beginning of what it said, without colours. */
export function sayFailure(/** @type {Failure} */ { name, message }) {
  const lines = stripVTControlCharacters(message).slice(0, 2000).split('\n').slice(0, 15)
  return [name, ...lines.map((line) => `    ${line}`)].join('\n')
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
