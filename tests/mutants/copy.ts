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

export function copyOf(root: string): Copy {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'ridewright-mutants-')))
  for (const name of topLevelNames()) cpSync(join(root, name), join(folder, name), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  mkdirSync(join(folder, '.cache'))
  const [report, notes] = [join(folder, '.cache/report.json'), join(folder, '.cache/notes.jsonl')]

  async function vitest(words: readonly string[], env: Record<string, string>, limit = Number.POSITIVE_INFINITY): Promise<boolean> {
    for (const old of [report, notes]) if (old === report || 'MUTANT_NOTES' in env) rmSync(old, { force: true })
    const tool = join(folder, 'node_modules/vitest/vitest.mjs')
    const shared = ['--run', '--config', 'tests/mutants/vitest.config.ts', '--reporter=json', `--outputFile=${report}`]
    const child = spawn(process.execPath, [tool, ...words, ...shared], {
      cwd: folder,
      env: { ...process.env, ...env },
      stdio: 'ignore',
      detached: true,
    })
    return new Promise((resolve, reject) => {
      // Its workers are a group of their own: one that turns in a circle does not hear that it should end.
      const timer = Number.isFinite(limit) ? setTimeout(() => process.kill(-child.pid!, 'SIGKILL'), limit) : undefined
      child.on('error', reject)
      child.on('close', (_, signal) => {
        clearTimeout(timer)
        resolve(signal === null)
      })
    })
  }

  /** Runs it again where a file failed without one of its tests: on a busy machine that may be a worker that could not start. */
  async function firstFailure(words: readonly string[], env: Record<string, string>, limit?: number): Promise<string | 'timeLimit' | null> {
    for (const isLast of [false, true]) {
      if (!(await vitest(words, env, limit))) return 'timeLimit'
      if (!existsSync(report)) throw new Error('The tests could not be run.')
      const { success, testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report
      if (success) return null
      const file = testResults.find(({ status }) => status === 'failed')
      const test = file?.assertionResults.find(({ status }) => status === 'failed')
      if (test || isLast)
        return file ? `${file.name.slice(folder.length + 1)}: ${test?.fullName ?? file.message}` : 'an error outside of all tests'
    }
    return null
  }

  return {
    write: (path, text) => writeFileSync(join(folder, path), text),
    visit: async (paths) => {
      const failure = await firstFailure(['related', ...paths, '--exclude=tests/repository/**'], { MUTANT_NOTES: notes })
      if (failure !== null) throw new Error(`Without a mistake a test fails: ${failure}`)
      const lines = readFileSync(notes, 'utf8').trimEnd().split('\n')
      return lines.map((line) => JSON.parse(line) as Visited)
    },
    run: async (mutant, files, limit) => {
      const env = { MUTANT: String(mutant), MUTANT_ORDER: files.join('\n') }
      const failure = await firstFailure(['run', ...files, '--bail=1'], env, limit)
      if (failure === null) return 'survived'
      return failure === 'timeLimit' ? failure : { noticedBy: failure }
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}
