/**
 * `npm test`: runs every part whatever the others did, then says what each gave and how long it took.
 * The last line is always `N passed, N failed`, with `, N skipped` where there were any. Lint and types count as one each;
 * a part that crashes, or reports no test at all, counts as one failure.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { fileURLToPath } from 'node:url'
import { findBrowser } from './find-browser.mjs'

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts
 * @typedef {{ name: string, run: () => Counts | Promise<Counts> }} Part
 */

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const reports = mkdtempSync(join(tmpdir(), 'ridewright-test-'))

/** @type {Part[]} */
const PARTS = [
  { name: 'lint', run: () => asOne(runScript('lint')) },
  { name: 'types', run: () => asOne(runScript('types')) },
  { name: 'unit', run: runUnitTests },
  { name: 'browser', run: runBrowserTests },
]

const results = []
for (const part of PARTS) results.push(await runPart(part))
rmSync(reports, { recursive: true, force: true })

console.log('')
for (const { name, counts, seconds } of results)
  console.log(`${name.padEnd(8)} ${inWords(counts).padEnd(36)} ${seconds.toFixed(1).padStart(6)} s`)
const total = results.map((result) => result.counts).reduce(plus)
console.log(`\n${inWords(total)}`)
process.exitCode = total.failed > 0 ? 1 : 0

async function runPart(/** @type {Part} */ { name, run }) {
  console.log(`\n── ${name}`)
  const start = performance.now()
  let counts
  try {
    counts = await run()
  } catch (error) {
    console.error(error instanceof Error ? error.message : error)
    counts = { passed: 0, failed: 1, skipped: 0 }
  }
  return { name, counts, seconds: (performance.now() - start) / 1000 }
}

function runUnitTests() {
  const file = join(reports, 'unit.json')
  const exitCode = runScript('test:unit', ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`])
  return checked(exitCode, file, countUnitTests)
}

async function runBrowserTests() {
  await findBrowser()
  const file = join(reports, 'browser.json')
  return checked(runScript('test:browser', [], { RIDEWRIGHT_REPORT: file }), file, countBrowserTests)
}

/** A test file that could not be loaded has no tests of its own and counts as one failure. */
function countUnitTests(/** @type {any} */ report) {
  const loaded = { passed: report.numPassedTests, failed: report.numFailedTests, skipped: report.numPendingTests + report.numTodoTests }
  const broken = report.testResults.filter((/** @type {any} */ file) => file.status === 'failed' && file.assertionResults.length === 0)
  return plus(loaded, { passed: 0, failed: broken.length, skipped: 0 })
}

/** Errors outside any test (the build, the set-up) count as failures; there are no retries, so nothing is flaky. */
function countBrowserTests(/** @type {any} */ { stats, errors }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length, skipped: stats.skipped }
}

/**
 * The counts of a report, with one failure added where the exit code tells of one that the report does not.
 * @param {number} exitCode
 * @param {string} file
 * @param {(report: any) => Counts} count
 */
function checked(exitCode, file, count) {
  if (!existsSync(file)) return asOne(exitCode === 0 ? 1 : exitCode)
  const counts = count(JSON.parse(readFileSync(file, 'utf8')))
  const ranNothing = counts.passed + counts.failed === 0
  return counts.failed === 0 && (exitCode !== 0 || ranNothing) ? plus(counts, asOne(1)) : counts
}

/** @returns {Counts} */
function asOne(/** @type {number} */ exitCode) {
  return exitCode === 0 ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 }
}

/** @returns {Counts} */
function plus(/** @type {Counts} */ a, /** @type {Counts} */ b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped }
}

function inWords(/** @type {Counts} */ { passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`
}

/**
 * @param {string} script a script of package.json, so that a part run alone is the part run here
 * @param {string[]} words
 * @param {Record<string, string>} env
 * @returns {number} its exit code; 1 when a signal ended it
 */
function runScript(script, words = [], env = {}) {
  const npm = process.env.npm_execpath
  const [program, ...first] = npm ? [process.execPath, npm] : ['npm']
  const all = [...first, 'run', '--silent', script, '--', ...words]
  return spawnSync(program, all, { cwd: ROOT, stdio: 'inherit', env: { ...process.env, ...env }, shell: !npm }).status ?? 1
}
