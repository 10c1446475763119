import { sectionClock } from '#engine/cues/sectionClock.ts'
import type { Plan } from '#engine/leading/led.ts'
import type { SectionReport } from '#engine/played.ts'
import type { Section } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Sounding } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'

/** So short that nobody hears it, and long enough that a cut does not crack (common practice). */
export const SOFT_EDGE: Seconds = 0.012

/**
 * Which songs sound when, on the ride clock, each with the second of its file: a song from its
 * in-point to where its section ends. What the file holds before the first beat sounds in the
 * lead-in, as far as that is long enough, unless an in-point cuts it off. Where the next song fades
 * in over it, a song goes on to its own end, ever softer; the next one enters at full volume, because its one must be heard.
 *
 * @param isThere whether a song's file can be played, by its fingerprint
 */
export function songsOf({ ride, report }: Plan, isThere: (fingerprint: string) => boolean): Sounding[] {
  return ride.sections.flatMap((section, i) => {
    const { song } = section
    if (!song?.fingerprint || !isThere(song.fingerprint)) return []
    const placed = report.sections[i]!
    const atOne = songSecondAtOne(section)
    const from = placed.one - runUp(section, placed, atOne)
    const songFrom = atOne - (placed.one - from)
    const end = Math.min(ownEnd(section, placed, lastBlockEnd({ ride, report }, placed)), from + song.lengthSeconds - songFrom)
    if (!(end > from)) return []
    const fadeOut = Math.max(SOFT_EDGE, end - placed.to)
    return [{ key: section.id, song: song.fingerprint, from, to: end, songFrom, fadeIn: SOFT_EDGE, fadeOut }]
  })
}

/** The second of the file that is heard on the section's count one. */
export const songSecondAtOne = ({ song, inCount }: Section): Seconds => (song?.grid ? secondAt(song.grid, inCount ?? 0) : 0)

/** How long before count one the file begins; negative where it begins only after it. */
function runUp({ inCount = 0 }: Section, { from, one }: SectionReport, atOne: Seconds): Seconds {
  if (atOne < 0) return atOne
  return inCount > 0 ? 0 : Math.max(0, Math.min(atOne, one - from))
}

/** Where the section would end without the next one coming in over it. */
function ownEnd(section: Section, { one, counts, to }: SectionReport, blocksEnd: Seconds): Seconds {
  const music = counts ? sectionClock(section, one).at(counts.total) : one + (section.song?.lengthSeconds ?? 0)
  return Math.max(to, music, blocksEnd)
}

function lastBlockEnd({ report }: Plan, { one, blocks }: SectionReport): Seconds {
  return blocks.to > blocks.from ? one + report.blocks[blocks.to - 1]!.sectionTo : one
}
