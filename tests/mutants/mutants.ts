import process from 'node:process'
import { chanceOf } from '#tests/fuzz/chance.ts'
import { ROOT, readRepositoryFile, repositoryFiles } from '#tests/support/repositoryFiles.ts'
import { type Copy, copyOf, type Outcome, type Visited } from './copy.ts'
import { type Mutant, mutantsOf } from './mutantsOf.ts'
import { overlap, type Planted, planted } from './planted.ts'

/** Where mistakes are made: what is computed, kept and written, all of it pure. */
const FOLDERS = ['src/engine', 'src/plan', 'src/formats']

/** Tests that take this many times as long as without the mistake turn in a circle; with seconds for a busy machine on top. */
const TIMES_AS_LONG = 8
const GRACE = 120_000

/** Each mistake meets at most so many seconds of tests, where that is set; what then survives might not survive them all. */
const BUDGET = 1000 * Number(process.env.MUTANT_SECONDS ?? Number.POSITIVE_INFINITY)

/** Makes so many mistakes, one after another, and prints which of them the tests notice. */
export default async function run(count: number, seed: number, places: readonly string[] = FOLDERS): Promise<void> {
  const files = places
    .flatMap((folder) => (folder.endsWith('.ts') ? [folder] : repositoryFiles(folder)))
    .filter((path) => path.endsWith('.ts'))
  const mutants = chosen(
    files.flatMap((path) => mutantsOf(path, readRepositoryFile(path))),
    count,
    seed,
  )
  console.log(`${mutants.length} mistakes from seed ${seed}; first the tests run once without one`)
  const copy = copyOf(ROOT)
  try {
    const paths = [...new Set(mutants.map(({ path }) => path))]
    for (const path of paths) copy.write(path, planted(readRepositoryFile(path), mutants.filter((mutant) => mutant.path === path))) // biome-ignore format: one row
    const visited = await copy.visit(paths)
    const outcomes: Outcome[] = []
    for (const mutant of mutants) {
      const outcome = await tried(copy, mutant, visited)
      outcomes.push(outcome)
      console.log(lineOf(mutant, outcome, within(comingBy(visited, mutant), BUDGET).length))
    }
    console.log(`\n${summary(outcomes)} (seed ${seed})`)
  } finally {
    copy.remove()
  }
}

/** Mistakes drawn from all there are, in the order of the source; none of them within another. */
function chosen(all: readonly Mutant[], count: number, seed: number): Planted[] {
  const chance = chanceOf(seed)
  const left = [...all]
  const taken: Mutant[] = []
  while (taken.length < count && left.length > 0) {
    const [mutant] = left.splice(chance.below(left.length), 1)
    if (!taken.some((other) => overlap(other, mutant!))) taken.push(mutant!)
  }
  return taken
    .sort((a, b) => (a.path === b.path ? a.from - b.from : a.path < b.path ? -1 : 1))
    .map((mutant, i) => ({ ...mutant, id: i + 1 }))
}

/** A file of the tests of the same folder counts as this many times as quick as it is: that is where a mistake belongs to be noticed. */
const NEARER = 10

/** The files of tests that come by a mistake, the nearest and quickest first. */
function comingBy(visited: readonly Visited[], { id, path }: Planted): Visited[] {
  const near = `/${path.replace(/^src\//, 'tests/').replace(/\/[^/]*$/, '/')}`
  // What keeps all that is computed as text notices most.
  const isNear = (file: string) => file.includes(near) || file.includes('/asItWas')
  const weight = ({ file, milliseconds }: Visited) => (isNear(file) ? milliseconds / NEARER : milliseconds)
  return visited.filter(({ seen }) => seen.includes(id)).sort((a, b) => weight(a) - weight(b))
}

/** The first of them that took so long together, and one at least. */
function within(tests: readonly Visited[], milliseconds: number): Visited[] {
  let sum = 0
  return tests.filter((test) => {
    const fits = sum === 0 || sum + test.milliseconds <= milliseconds
    sum += test.milliseconds
    return fits
  })
}

async function tried(copy: Copy, mutant: Planted, visited: readonly Visited[]): Promise<Outcome> {
  const tests = within(comingBy(visited, mutant), BUDGET)
  if (tests.length === 0) return 'survived'
  const usual = tests.reduce((sum, { milliseconds }) => sum + milliseconds, 0)
  return copy.run(
    mutant.id,
    tests.map(({ file }) => file),
    GRACE + TIMES_AS_LONG * usual,
  )
}

function lineOf(mutant: Planted, outcome: Outcome, tests: number): string {
  const { path, line, was, becomes } = mutant
  const change = becomes === '' ? `without ${short(was)}` : `${short(was)} → ${short(becomes)}`
  return `${path}:${line}  ${change}\n    ${wordsOf(outcome, tests)}`
}

function wordsOf(outcome: Outcome, tests: number): string {
  if (outcome === 'timeLimit') return 'noticed: the tests do not end'
  if (outcome !== 'survived') return `noticed by ${outcome.noticedBy}`
  return tests === 0 ? 'SURVIVED: no test comes by' : `SURVIVED ${tests} ${tests === 1 ? 'file' : 'files'} of tests`
}

function summary(outcomes: readonly Outcome[]): string {
  const survived = outcomes.filter((outcome) => outcome === 'survived').length
  const stopped = outcomes.filter((outcome) => outcome === 'timeLimit').length
  const noticed = outcomes.length - survived
  const share = outcomes.length === 0 ? 0 : Math.round((1000 * noticed) / outcomes.length) / 10
  return `${noticed} of ${outcomes.length} noticed, ${share} %, ${stopped} of them because the tests did not end; ${survived} survived`
}

const short = (code: string): string => {
  const line = code.replace(/\s+/g, ' ')
  return line.length > 90 ? `${line.slice(0, 60)} … ${line.slice(-25)}` : line
}
