import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/**
 * A song's form whose last two louder stretches are one effort, held through the quieter one between them and rising
 * where the music builds in it. Where the level does not take all of it, it begins later, at a phrase.
 *
 * @param most seconds of the effort
 */
export function holdsThrough(segments: readonly Segment[], eightSeconds: Seconds, most: Seconds): Segment[] {
  const last = segments.findLastIndex(({ up }) => up)
  const [one, gap, two] = segments.slice(Math.max(0, last - 2), last + 1)
  if (!one?.up || !gap || !two) return [...segments]
  const longest = Math.floor(most / eightSeconds / PHRASE_EIGHTS + 1e-9) * PHRASE_EIGHTS
  const { build = 0 } = gap
  const late = Math.max(0, one.eights + gap.eights + two.eights - longest)
  // Beginning inside the build, or after the first stretch is over, it would be another effort.
  if (late > one.eights) return [...segments]
  const effort: Segment = {
    eights: one.eights + gap.eights + two.eights - late,
    up: true,
    ...(build > 0 && { rise: { eights: build, last: two.eights } }),
  }
  return [...withQuiet(segments.slice(0, last - 2), late), effort, ...segments.slice(last + 1)]
}

/** The same with a quiet stretch at its end that is so much longer; no build is left in it, since nothing follows the build at once. */
function withQuiet(segments: readonly Segment[], more: number): Segment[] {
  const quiet = segments.at(-1)
  if (more === 0) return [...segments]
  return quiet && !quiet.up
    ? [...segments.slice(0, -1), { eights: quiet.eights + more, up: false }]
    : [...segments, { eights: more, up: false }]
}
