import { LIMITS } from '#plan/document/schema.ts'
import type { Wrong } from '#plan/document/wrong.ts'
import { type Block, type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import type { Fault, Rule } from './rule.ts'

/**
 * What a ride makes, not only what it lists: rounds times parts, cues said in every round, all its words, all its time. Each
 * bound is far above any class, and low enough that a ride that is opened is planned at once. One fault at most, since they
 * have one cause.
 */
export const staysAClass: Rule = (ride) => {
  const { played, spoken } = made(ride)
  if (played > LIMITS.played) return [fault({ problem: 'playsTooMuch', count: played, most: LIMITS.played })]
  if (spoken > LIMITS.spoken) return [fault({ problem: 'saysTooMuch', count: spoken, most: LIMITS.spoken })]
  const words = lettersOf(ride)
  if (words > LIMITS.letters) return [fault({ problem: 'tooManyWords', count: words, most: LIMITS.letters })]
  const hours = ride.sections.reduce((sum, section) => sum + Math.max(0, section.leadInSeconds) + secondsOf(section), 0) / 3600
  return hours > LIMITS.hours ? [fault({ problem: 'lastsTooLong', count: hours, most: LIMITS.hours })] : []
}

const fault = (wrong: Wrong): Fault => ({ path: [], wrong })

function made({ sections }: Ride): { played: number; spoken: number } {
  let played = 0
  let spoken = 0
  for (const { blocks } of sections) {
    for (const item of blocks) {
      const [times, parts] = isSet(item) ? [item.rounds, item.parts] : [1, [item]]
      played += times * parts.length
      for (const { cues } of parts) spoken += times * cues.length
    }
  }
  return { played, spoken }
}

/** Letters of everything that is written on blocks and cues. */
const lettersOf = ({ sections }: Ride): number =>
  sections.reduce(
    (sum, { blocks }) => sum + blocks.reduce((all, item) => all + partsOf(item).reduce((n, one) => n + lettersOn(one), 0), 0),
    0,
  )

const lettersOn = ({ label, feel, notes, easier, harder, cues }: Block): number =>
  [label, feel, notes, easier?.text, harder?.text].reduce((sum, text) => sum + (text?.length ?? 0), 0) +
  cues.reduce((sum, { text }) => sum + text.length, 0)

const partsOf = (item: Item): readonly Block[] => (isSet(item) ? item.parts : [item])

/** How long a section lasts at most: its blocks, or its song where that lasts longer. */
function secondsOf({ song, inCount = 0, blocks }: Section): Seconds {
  let counts = 0
  let seconds = 0
  for (const item of blocks) {
    const times = isSet(item) ? item.rounds : 1
    for (const { length } of partsOf(item)) {
      if ('counts' in length) counts += times * length.counts
      else seconds += times * length.seconds
    }
  }
  const counted = song?.grid ? secondAt(song.grid, inCount + counts) - secondAt(song.grid, inCount) : counts / 2
  return Math.max(seconds + counted, song?.lengthSeconds ?? 0)
}
