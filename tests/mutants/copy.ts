import { spawn } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { topLevelNames } from '#tests/support/repositoryFiles.ts'

/** A file of tests, what it took, and the mistakes whose place it came by. */
export interface Visited {
  file: string
  seen: number[]
  milliseconds: number
}

/** What came of running tests: the first that failed, or nothing; `timeLimit` where they had to be stopped. */
export type Outcome = { noticedBy: string } | 'survived' | 'timeLimit'

/** The repository in a folder of its own, where its tests are run; the packages are not copied. */
export interface Copy {
  write: (path: string, text: string) => void
  /** Runs all tests of these files and of what uses them, but none that reads the source; throws where one fails. */
  visit: (paths: readonly string[]) => Promise<Visited[]>
  /** Runs files of tests in this order with a mistake switched on, until one fails. */
  run: (mutant: number, files: readonly string[], limit: number) => Promise<Outcome>
  remove: () => void
}

interface Report {
  success: boolean
  testResults: { name: string; status: string; message: string; assertionResults: { status: string; fullName: string }[] }[]
}

interface Failure {
  file: string
  test: string | undefined
  message: string
}

export function copyOf(root: string): Copy {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'ridewright-mutants-')))
  for (const name of topLevelNames()) cpSync(join(root, name), join(folder, name), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  mkdirSync(join(folder, '.cache'))
  const [report, notes] = [join(folder, '.cache/report.json'), join(folder, '.cache/notes.jsonl')]

  let running: number | undefined
  const leave = () => {
    if (running !== undefined) process.kill(-running, 'SIGKILL')
    rmSync(folder, { recursive: true, force: true })
  }
  // Pressed Ctrl+C, it leaves nothing behind either.
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => {
      leave()
      process.exit(1)
    })
  }

  async function vitest(words: readonly string[], env: Record<string, string>, limit = Number.POSITIVE_INFINITY): Promise<boolean> {
    rmSync(report, { force: true })
    const tool = join(folder, 'node_modules/vitest/vitest.mjs')
    const shared = ['--run', '--config', 'tests/mutants/vitest.config.ts', '--reporter=json', `--outputFile=${report}`]
    const child = spawn(process.execPath, [tool, ...words, ...shared], {
      cwd: folder,
      // The bundler that made this runner has put “production” there.
      env: { ...process.env, NODE_ENV: 'test', ...env },
      stdio: 'ignore',
      detached: true,
    })
    return new Promise((resolve, reject) => {
      // With its workers it is a group of its own: one that turns in a circle does not hear that it should end.
      running = child.pid
      const timer = Number.isFinite(limit) ? setTimeout(() => process.kill(-child.pid!, 'SIGKILL'), limit) : undefined
      child.on('error', reject)
      child.on('close', (_, signal) => {
        clearTimeout(timer)
        running = undefined
        resolve(signal === null)
      })
    })
  }

  /** What failed in the last run: the files, each with the first of its tests that did. On a busy machine a file may fail because it could not be started. */
  function failures(): Failure[] {
    if (!existsSync(report)) throw new Error('The tests could not be run.')
    const { success, testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report
    const failed = testResults
      .filter(({ status }) => status === 'failed')
      .map(({ name, message, assertionResults }) => ({
        file: name,
        test: assertionResults.find(({ status }) => status === 'failed')?.fullName,
        message,
      }))
    return success || failed.length > 0 ? failed : [{ file: '', test: undefined, message: 'an error outside of all tests' }]
  }

  const inWords = ({ file, test, message }: Failure): string => `${file.slice(folder.length + 1)}: ${test ?? message}`

  return {
    write: (path, text) => writeFileSync(join(folder, path), text),
    visit: async (paths) => {
      await vitest(['related', ...paths, '--exclude=tests/repository/**'], { MUTANT_NOTES: notes })
      let failed = failures()
      if (failed.length > 0 && failed.every(({ file, test }) => file !== '' && test === undefined)) {
        await vitest(['run', ...failed.map(({ file }) => file)], { MUTANT_NOTES: notes })
        failed = failures()
      }
      if (failed.length > 0) throw new Error(`Without a mistake a test fails: ${failed.map(inWords).join(', ')}`)
      const lines = readFileSync(notes, 'utf8').trimEnd().split('\n')
      return lines.map((line) => JSON.parse(line) as Visited)
    },
    run: async (mutant, files, limit) => {
      const env = { MUTANT: String(mutant), MUTANT_ORDER: files.join('\n') }
      for (const isLast of [false, true]) {
        if (!(await vitest(['run', ...files, '--bail=1'], env, limit))) return 'timeLimit'
        const [first] = failures()
        if (!first) return 'survived'
        if (first.test !== undefined || isLast) return { noticedBy: inWords(first) }
      }
      return 'survived'
    },
    remove: leave,
  }
}
