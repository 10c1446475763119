import type { Seconds } from '#units/units.ts'
import type { Segment } from './phrases.ts'

/**
 * A song's form whose last two louder stretches are one effort, held through the quieter one between them, where the
 * music does not build in it and the level takes so long an effort.
 *
 * @param most seconds of the effort
 */
export function holdsThrough(segments: readonly Segment[], eightSeconds: Seconds, most: Seconds): Segment[] {
  const last = segments.findLastIndex(({ up }) => up)
  const [one, gap, two] = segments.slice(Math.max(0, last - 2), last + 1)
  if (!one?.up || !gap || gap.build || !two) return [...segments]
  const eights = one.eights + gap.eights + two.eights
  return eights * eightSeconds > most ? [...segments] : [...segments.slice(0, last - 2), { eights, up: true }, ...segments.slice(last + 1)]
}
