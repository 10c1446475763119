import type { Constants } from '#engine/constants.ts'
import { type SectionClock, sectionClock } from '#engine/cues/sectionClock.ts'
import type { RideReport } from '#engine/report.ts'
import { type Cue, type CueMoment, isCounted, type Ride } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'
import type { Counts } from '#units/units.ts'
import type { Deck } from './deck.ts'
import { type Mouth, openMouth } from './mouth.ts'
import type { Passage } from './passage.ts'
import type { Voice } from './voice.ts'

/** A cue with the block it belongs to. */
export interface Spoken {
  blockId: string
  cue: Cue
  /** Where it stands among the block's cues: before its start below 0, in seconds or counts, then seconds from it. */
  order: number
  /** Shorter ways to say it, for where it turns out too long. */
  shorter: readonly string[]
}

interface Saying {
  moment: CueMoment
  counts: Counts
  text: string
  order: number
  count?: 4 | 8
  shorter?: readonly string[]
}

/** What everything that speaks has in common. */
export interface Speaking {
  ride: Ride
  report: RideReport
  rules: Constants
  voice: Voice
  /** Passages whose words are to be written. */
  mine: readonly Passage[]
  deck: Deck
  mouth: Mouth
  clocks: readonly SectionClock[]
  isCountedIn: (passage: Passage) => boolean
  /** Keeps a cue; it may still be replaced by the one that is returned with another text and lead. */
  keep: (passage: Passage, saying: Saying) => Spoken
  spoken: Spoken[]
}

export function beginSpeaking(
  ride: Ride,
  report: RideReport,
  rules: Constants,
  mine: readonly Passage[],
  deck: Deck,
  voice: Voice,
): Speaking {
  const newId = idMaker(ride)
  const spoken: Spoken[] = []
  const isCountedIn = ({ section }: Passage): boolean => isCounted(ride.sections[section]!)
  return {
    ride,
    report,
    rules,
    voice,
    mine,
    deck,
    mouth: openMouth(ride, report, rules),
    clocks: report.sections.map(({ one }, index) => sectionClock(ride.sections[index]!, one)),
    isCountedIn,
    spoken,
    keep: (passage, { moment, counts, text, order, count, shorter = [] }) => {
      const lead = isCountedIn(passage) ? { counts } : { seconds: counts / 2 }
      const one = { blockId: passage.block.id, cue: { id: newId(), moment, lead, text, ...(count && { count }) }, order, shorter }
      spoken.push(one)
      return one
    },
  }
}

/** Ids no part of the ride has, the same for the same ride. */
function idMaker(ride: Ride): () => string {
  const taken = new Set(idsOf(ride))
  let last = 0
  return () => {
    do last++
    while (taken.has(`cue${last}`))
    return `cue${last}`
  }
}
