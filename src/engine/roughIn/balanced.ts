import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/**
 * A song's form with its efforts as long as what follows them lets riders recover from: a louder stretch goes on into a
 * quieter one that is longer than itself, by whole pairs of eights, until both are about as long. Builds stay as they are.
 *
 * @param most seconds of an effort
 */
export function balanced(segments: readonly Segment[], eightSeconds: Seconds, most: Seconds): Segment[] {
  const result = segments.map((segment) => ({ ...segment }))
  for (const [index, segment] of result.entries()) {
    const next = result[index + 1]
    if (!segment.up || !next || next.up) continue
    // After a song's last one the next song begins with a quiet phrase.
    const quiet = next.eights - (next.build ?? 0)
    const rest = quiet + (index === result.length - 2 ? PHRASE_EIGHTS : 0)
    const longest = Math.floor(most / eightSeconds / 2) * 2
    const more = Math.floor(Math.min((rest - segment.eights) / 2, longest - segment.eights, quiet - PHRASE_EIGHTS) / 2) * 2
    if (more <= 0) continue
    segment.eights += more
    next.eights -= more
  }
  return result
}
