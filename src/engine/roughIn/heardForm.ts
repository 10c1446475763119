import { type Loudness, meanLoudness } from '#engine/loudness/meanLoudness.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import type { Stretch } from './stretches.ts'

/** Between a song's quiet phrases and its loud ones, LU, from which on it has a form that can be heard (common practice). */
const LEAST_SPREAD = 2
/** Most of a song that counts as loud: riders have to come down in it (common practice). */
const MOST_UP = 0.6

/**
 * A song's louder and quieter stretches in whole phrases: louder than half-way between its quietest and loudest tenth,
 * and the loudest three fifths at most. Null where it is about as loud throughout.
 *
 * @param eights to be laid out, from the stretch's first count
 * @param loudness of the song's seconds from its start, LUFS
 */
export function heardForm(stretch: Stretch, eights: number, loudness: Loudness): Segment[] | null {
  const starts = Array.from({ length: Math.ceil(eights / PHRASE_EIGHTS) }, (_, phrase) => phrase * PHRASE_EIGHTS)
  const sizes = starts.map((start) => Math.min(PHRASE_EIGHTS, eights - start))
  const levels = starts.map((start, phrase) => meanLoudness(loudness, secondOf(stretch, start), secondOf(stretch, start + sizes[phrase]!)))
  const known = levels.filter((level) => level !== undefined).toSorted((a, b) => a - b)
  const [quiet, loud] = [at(known, 0.1), at(known, 0.9)]
  if (quiet === undefined || loud === undefined || loud - quiet < LEAST_SPREAD) return null
  const line = Math.max((quiet + loud) / 2, at(known, 1 - MOST_UP)!)
  // What lies beyond the sound that is known is quiet.
  return sizes.map((size, phrase): Segment => {
    const builds = size === PHRASE_EIGHTS && isBuilding(stretch, starts[phrase]!, levels[phrase + 1], loudness)
    return builds ? { eights: size, up: false, build: size } : { eights: size, up: (levels[phrase] ?? line) > line }
  })
}

/** Eights at the end of a stretch of a song through which its sound builds towards what follows, in whole phrases; 0 where it does not. */
export function heardBuild(stretch: Stretch, from: number, to: number, loudness: Loudness): number {
  let start = to
  while (start - PHRASE_EIGHTS >= from) {
    const level = meanLoudness(loudness, secondOf(stretch, start), secondOf(stretch, start + PHRASE_EIGHTS))
    if (!isBuilding(stretch, start - PHRASE_EIGHTS, level, loudness)) break
    start -= PHRASE_EIGHTS
  }
  return to - start
}

/** A phrase builds where it is louder from eight to eight, by so much in all, none of which is one leap, and the next phrase is louder still (common practice). */
const BUILD: Readonly<{ rise: number; leap: number }> = { rise: 1.2, leap: 0.7 }

function isBuilding(stretch: Stretch, start: number, next: number | undefined, loudness: Loudness): boolean {
  const eights = Array.from({ length: PHRASE_EIGHTS }, (_, i) =>
    meanLoudness(loudness, secondOf(stretch, start + i), secondOf(stretch, start + i + 1)),
  )
  if (next === undefined || eights.some((level) => level === undefined)) return false
  const known = eights as number[]
  const rise = known.at(-1)! - known[0]!
  const steps = known.slice(1).map((level, i) => level - known[i]!)
  return rise >= BUILD.rise && steps.every((step) => step > 0 && step <= BUILD.leap * rise) && next > known.at(-1)!
}

const at = (sorted: readonly number[], share: number): number | undefined => sorted[Math.round(share * (sorted.length - 1))]

/** The second of the song at which an eight of a stretch begins. */
function secondOf({ section, eightAmount, eightSeconds }: Stretch, eight: number): Seconds {
  const grid = section.song?.grid
  return grid ? secondAt(grid, (section.inCount ?? 0) + eight * eightAmount) : eight * eightSeconds
}
