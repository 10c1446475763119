/**
 * `npm test`: runs every part whatever the others did, then says what each gave and how long it took.
 * The last line is always `N passed, N failed`, with `, N skipped` where there were any. Lint and types count as one each;
 * a part that crashes, or reports no test at all, counts as one failure. Above it stand the tests that failed, each with the
 * beginning of what it said, and those that passed at the second try only, as browser tests may where `CI` is set.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { fileURLToPath } from 'node:url'
import {
  asOne,
  countBrowserTests,
  countUnitTests,
  failedBrowserTests,
  failedUnitTests,
  inWords,
  plus,
  sayFailure,
  secondTries,
  withExitCode,
} from './counts.mjs'
import { findBrowser } from './find-browser.mjs'

/**
 * @typedef {import('./counts.mjs').Counts} Counts
 * @typedef {import('./counts.mjs').Failure} Failure
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

/** @type {string[]} */
const again = []
/** @type {Failure[]} */
const failures = []
const results = []
for (const part of PARTS) results.push(await runPart(part))
rmSync(reports, { recursive: true, force: true })

console.log('')
for (const { name, counts, seconds } of results)
  console.log(`${name.padEnd(8)} ${inWords(counts).padEnd(36)} ${seconds.toFixed(1).padStart(6)} s`)
for (const failure of failures) console.log(`\nfailed: ${sayFailure(failure)}`)
if (again.length > 0) console.log(`\npassed at the second try: ${again.join(', ')}`)
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
    counts = asOne(1)
  }
  return { name, counts, seconds: (performance.now() - start) / 1000 }
}

function runUnitTests() {
  const file = join(reports, 'unit.json')
  const exitCode = runScript('test:unit', ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`])
  const report = read(file)
  if (report) failures.push(...failedUnitTests(report, ROOT))
  return withExitCode(exitCode, report && countUnitTests(report))
}

async function runBrowserTests() {
  await findBrowser()
  const file = join(reports, 'browser.json')
  const exitCode = runScript('test:browser', [], { RIDEWRIGHT_REPORT: file })
  const report = read(file)
  if (report) {
    again.push(...secondTries(report))
    failures.push(...failedBrowserTests(report))
  }
  return withExitCode(exitCode, report && countBrowserTests(report))
}

/** A part's report; undefined where it left none. */
function read(/** @type {string} */ file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined
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
