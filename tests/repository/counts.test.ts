import { describe, expect, test } from 'vitest'
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
} from '#ci/counts.mjs'

const clean = { passed: 7, failed: 0, skipped: 0 }

describe('unit tests are counted', () => {
  const report = { numPassedTests: 5, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1, testResults: [] }

  test('by what became of each', () => {
    expect(countUnitTests(report)).toEqual({ passed: 5, failed: 1, skipped: 3 })
  })

  test('with one failure for a file that could not be loaded, and none more for one whose tests failed', () => {
    const unloaded = { status: 'failed', assertionResults: [] }
    const failing = { status: 'failed', assertionResults: [{ status: 'failed' }] }
    expect(countUnitTests({ ...report, testResults: [unloaded, failing] }).failed).toBe(2)
  })
})

describe('browser tests are counted', () => {
  test('with errors outside any test as failures, and as passed what passed at the second try', () => {
    const stats = { expected: 9, unexpected: 1, flaky: 1, skipped: 4 }
    expect(countBrowserTests({ stats, errors: [{ message: 'the build broke' }] })).toEqual({ passed: 10, failed: 2, skipped: 4 })
  })

  test('and those that passed at the second try are named, wherever they stand', () => {
    const spec = (title: string, line: number, status: string) => ({ file: 'a.spec.ts', line, title, tests: [{ status }] })
    const suites = [
      { specs: [spec('at once', 3, 'expected'), spec('at last', 7, 'flaky')], suites: [{ specs: [spec('inside', 20, 'flaky')] }] },
      { specs: [spec('never', 9, 'unexpected'), spec('left out', 12, 'skipped')] },
    ]
    expect(secondTries({ suites })).toEqual(['a.spec.ts:7 at last', 'a.spec.ts:20 inside'])
    expect(secondTries({ suites: [] })).toEqual([])
  })
})

describe('a failure is named, with what it said', () => {
  test('of unit tests, by file and test, files that could not be loaded among them', () => {
    const passed = { status: 'passed', fullName: 'adds up', failureMessages: [] }
    const failed = { status: 'failed', fullName: 'sums parts', failureMessages: ['expected 3', 'expected 4'] }
    const testResults = [
      { name: '/here/tests/a.test.ts', status: 'failed', message: '', assertionResults: [passed, failed] },
      { name: '/here/tests/b.test.ts', status: 'failed', message: 'no such module', assertionResults: [] },
      { name: '/here/tests/c.test.ts', status: 'passed', message: '', assertionResults: [passed] },
    ]
    expect(failedUnitTests({ testResults }, '/here')).toEqual([
      { name: 'tests/a.test.ts sums parts', message: 'expected 3\nexpected 4' },
      { name: 'tests/b.test.ts', message: 'no such module' },
    ])
  })

  test('of browser tests, by what the last try said, wherever they stand, and of errors outside any', () => {
    const tried = (...messages: string[]) => messages.map((message) => ({ error: { message } }))
    const spec = (title: string, line: number, status: string, results: object[]) => ({
      file: 'a.spec.ts',
      line,
      title,
      tests: [{ status, results }],
    })
    const inside = { specs: [spec('inside', 20, 'unexpected', tried('one', 'two'))] }
    const suites = [{ specs: [spec('at last', 7, 'flaky', tried('one')), spec('never', 9, 'unexpected', [{}])], suites: [inside] }]
    expect(failedBrowserTests({ suites, errors: [{ message: 'the build broke' }] })).toEqual([
      { name: 'a.spec.ts:9 never', message: '' },
      { name: 'a.spec.ts:20 inside', message: 'two' },
      { name: 'outside any test', message: 'the build broke' },
    ])
  })

  test('in its first lines and without colours', () => {
    const message = ['\u001b[31mno\u001b[39m', ...Array.from({ length: 40 }, (_, line) => `line ${line}`)].join('\n')
    const said = sayFailure({ name: 'a test', message }).split('\n')
    expect(said.slice(0, 3)).toEqual(['a test', '    no', '    line 0'])
    expect(said).toHaveLength(16)
    expect(sayFailure({ name: 'a ride', message: 'x'.repeat(9000) }).length).toBeLessThan(2100)
  })
})

describe('a part', () => {
  test('without a report has failed, whatever its exit code', () => {
    expect(withExitCode(0, undefined)).toEqual(asOne(1))
  })

  test('that ran nothing has failed', () => {
    expect(withExitCode(0, { passed: 0, failed: 0, skipped: 3 })).toEqual({ passed: 0, failed: 1, skipped: 3 })
  })

  test('whose exit code tells of a failure that its report does not has failed once', () => {
    expect(withExitCode(1, clean)).toEqual({ ...clean, failed: 1 })
    expect(withExitCode(1, { ...clean, failed: 2 })).toEqual({ ...clean, failed: 2 })
    expect(withExitCode(0, clean)).toEqual(clean)
  })
})

test('the closing line sums the parts and names skipped tests only where there are any', () => {
  const total = [asOne(0), asOne(1), clean].reduce(plus)
  expect(inWords(total)).toBe('8 passed, 1 failed')
  expect(inWords({ ...total, skipped: 2 })).toBe('8 passed, 1 failed, 2 skipped')
})
