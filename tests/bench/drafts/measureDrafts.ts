import { computeRide } from '#engine/computeRide.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import type { Criterion, Drafted } from '#tests/support/drafts/criterion.ts'
import { draftTasks } from '#tests/support/drafts/draftPlaylists.ts'
import { HELD, STRUCTURE } from '#tests/support/drafts/draftStructure.ts'
import { told } from '#tests/support/told.ts'
import { printDraft } from './printDraft.ts'

/** Every criterion drafts are counted by; those of their words go here too. */
const CRITERIA: readonly Criterion[] = [...STRUCTURE, ...HELD]

/** Sets of playlists by name; drafts are tuned on A only. */
const SETS: Record<string, number> = { A: 1, B: 2, C: 3, D: 4 }

interface Asked {
  /** A criterion whose misses are listed. */
  failing: string | undefined
  /** A class whose drafts alone are made, and printed. */
  printed: string | undefined
  /** Only every so many classes, for a quick look. */
  every: number | undefined
}

/** Drafts the 360 classes of a set and counts how many have what is asked. */
export default function measureDrafts(set: string, { failing, printed, every = 1 }: Asked): string[] {
  const times: number[] = []
  const tasks = draftTasks(SETS[set]!).filter(({ ride }, i) => (printed === undefined ? i % every === 0 : ride.title === printed))
  const drafts = tasks.map((task): Drafted => {
    const start = performance.now()
    const { ride, arc, songs } = roughIn(task.ride, { seed: task.seed, drives: task.drives })!
    times.push(performance.now() - start)
    return {
      task,
      ride,
      report: computeRide(ride),
      told: { arc: arc.map((text) => told(text)), songs: songs.map((song) => ({ ...song, text: told(song.text) })) },
    }
  })
  const lines = CRITERIA.map((criterion) => {
    const judged = drafts.flatMap((drafted) => criterion.judge(drafted) ?? [])
    const have = judged.filter(Boolean).length
    const share = judged.length === 0 ? 1 : have / judged.length
    return `${criterion.words.padEnd(72)} ${String(have).padStart(4)} of ${String(judged.length).padEnd(4)} ${(100 * share).toFixed(1).padStart(6)} %  aim ${100 * criterion.aim} %${share < criterion.aim ? '  MISSED' : ''}`
  })
  const sorted = times.toSorted((a, b) => a - b)
  lines.push(`a draft takes ${sorted[Math.floor(sorted.length / 2)]!.toFixed(0)} ms (median), ${sorted.at(-1)!.toFixed(0)} ms at most`)
  const wanted = CRITERIA.find(({ id }) => id === failing)
  if (wanted) for (const drafted of drafts) if (wanted.judge(drafted) === false) lines.push(sayMiss(drafted))
  if (printed !== undefined) for (const drafted of drafts) lines.push('', ...printDraft(drafted))
  return lines
}

const sayMiss = ({ task, report }: Drafted): string =>
  `  ${task.ride.title} (draft ${task.seed}): ${report.difficulty.points.toFixed(0)} points (${Object.values(report.difficulty.parts)
    .map((part) => part.toFixed(0))
    .join(' ')}), ${report.findings
    .filter(({ severity }) => severity !== 'hint')
    .map(({ text }) => text)
    .join(' ')}`
