import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/**
 * A song's form with a last louder stretch as long as the level's longest effort: it begins earlier, and what it covers is
 * taken from what was before it. The song begins with a quieter phrase all the same.
 *
 * @param most seconds of the longest effort
 */
export function endsLong(segments: readonly Segment[], eightSeconds: Seconds, most: Seconds): Segment[] {
  const last = segments.findLastIndex(({ up }) => up)
  if (last < 0) return [...segments]
  const to = sum(segments.slice(0, last + 1))
  const wanted = Math.floor(most / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS
  const eights = Math.max(segments[last]!.eights, Math.min(wanted, to - PHRASE_EIGHTS))
  const from = to - eights
  const before: Segment[] = []
  for (const segment of segments.slice(0, last)) {
    const left = Math.min(segment.eights, from - sum(before))
    if (left > 0) before.push({ eights: left, up: segment.up })
  }
  // Riders come down before it.
  const quiet = before.at(-1)
  if (quiet?.up) {
    const [down, kept] = [Math.min(2 * PHRASE_EIGHTS, quiet.eights), Math.max(0, quiet.eights - 2 * PHRASE_EIGHTS)]
    before.splice(-1, 1, ...(kept > 0 ? [{ eights: kept, up: true }] : []), { eights: down, up: false })
  }
  return [...before, { eights, up: true }, ...segments.slice(last + 1)]
}

const sum = (segments: readonly Segment[]): number => segments.reduce((all, { eights }) => all + eights, 0)
