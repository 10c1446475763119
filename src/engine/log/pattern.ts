import type { TaughtClass } from '#plan/kept/taught.ts'

/** What of a class riders would know again. */
export interface ClassPattern {
  /** Songs by {@link songKey}. */
  songs: ReadonlySet<string>
  /** Runs of three blocks within a song by terrain, posture and move; the whole run where a song has fewer. */
  moves: ReadonlySet<string>
  /** Effort at the middles of a hundred equal parts of the class. */
  arc: readonly number[]
}

const PARTS = 100
const RUN = 3

/** Text by its letters and figures alone: no capitals, accents or marks. */
export const bareText = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/** The same for the same song, however its title and artist were typed. */
export const songKey = ({ title, artist }: { title: string; artist?: string }): string => [title, artist ?? ''].map(bareText).join('/')

/** The pattern of a class as it was taught: what was skipped in it is none of it. */
export function patternOf({ sections }: Pick<TaughtClass, 'sections'>): ClassPattern {
  const taught = sections.filter(({ outcome }) => outcome !== 'skipped')
  const blocks = taught.map((section) => section.blocks.filter(({ skipped }) => !skipped))
  return {
    songs: new Set(taught.filter(({ song }) => song).map(songKey)),
    moves: new Set(blocks.flatMap((run) => runsOf(run.map(({ terrain, posture, move }) => `${terrain}-${posture}-${move ?? ''}`)))),
    arc: arcOf(blocks.flat()),
  }
}

function runsOf(steps: readonly string[]): string[] {
  if (steps.length === 0) return []
  if (steps.length < RUN) return [steps.join(' ')]
  return steps.slice(RUN - 1).map((_, i) => steps.slice(i, i + RUN).join(' '))
}

function arcOf(blocks: readonly { seconds: number; effort: number }[]): number[] {
  const total = blocks.reduce((sum, { seconds }) => sum + seconds, 0)
  if (total <= 0) return []
  let index = 0
  let end = blocks[0]!.seconds
  return Array.from({ length: PARTS }, (_, part) => {
    const at = ((part + 0.5) * total) / PARTS
    while (end < at && index < blocks.length - 1) end += blocks[++index]!.seconds
    return blocks[index]!.effort
  })
}
