import type { CountingUnit } from '#engine/timeline/countingUnit.ts'
import type { Section } from '#plan/model.ts'
import type { Counts } from '#units/units.ts'
import { words } from '#words/words.ts'

/** A place in a song an edge falls on, in the song's counts, and what it is called there. */
export interface Landing {
  count: Counts
  words: string
}

/** How near a pulled edge has to come, as a share of an eight (common practice: marks half an eight, phrases a little more). */
const DRAW = { mark: 0.5, phrase: 0.7 } as const

/**
 * Where an edge pulled to a count of the song falls: on a section mark that is near, else on a phrase that is near, else on
 * the nearest eight; always behind the block's start.
 *
 * @param start count of the song on which the block begins
 * @param pointed count of the song under the pointer, as a fraction
 */
export function landingAt({ song }: Section, { eight, phrase }: CountingUnit, start: Counts, pointed: Counts): Landing {
  const isNear = (count: Counts, share: number) => count > start && Math.abs(count - pointed) <= share * eight
  const mark = (song?.marks ?? [])
    .filter(({ count }) => isNear(count, DRAW.mark))
    .sort((a, b) => Math.abs(a.count - pointed) - Math.abs(b.count - pointed))[0]
  if (mark) return { count: mark.count, words: mark.label }
  const onPhrase = Math.round(pointed / phrase) * phrase
  if (isNear(onPhrase, DRAW.phrase)) return { count: onPhrase, words: words.drafting.phrase({ number: onPhrase / phrase + 1 }) }
  const onEight = Math.max(Math.round(pointed / eight), Math.floor(start / eight) + 1) * eight
  return onEight % phrase === 0
    ? { count: onEight, words: words.drafting.phrase({ number: onEight / phrase + 1 }) }
    : { count: onEight, words: words.drafting.eight({ number: onEight / eight + 1, unit: eight }) }
}
