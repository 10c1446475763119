import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import { type StrainCurve, strainAt } from '#engine/shape/strainCurve.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { isInside, startsWithBlock } from '#plan/cueStart.ts'
import type { Cue, CueMoment, Ride } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { wordsOfCue } from './countWords.ts'
import { type SectionClock, sectionClock } from './sectionClock.ts'
import { type SpeechRules, speechSeconds, wordsPerSecond } from './speechRate.ts'
import { utteranceOfCue } from './utterance.ts'

/** One cue as it is spoken, on the ride clock. */
export interface CueLine {
  readonly cue: Cue
  /** Index into the report's blocks. */
  readonly block: number
  readonly moment: CueMoment
  /** The change the words belong to: the start of the block, for form and story its end. */
  readonly change: Seconds
  readonly from: Seconds
  readonly to: Seconds
  readonly words: number
  /** Strain of the one who speaks, 0 for a leader off the bike. */
  readonly strain: number
  /** Leader id. */
  readonly speaker: string
  /** Counts between the last word and the change; beats, or half seconds where there is no song. */
  readonly lead: Counts
  /** A count-in: as many beats as it counts, however many words. */
  readonly count?: Counts
}

interface Placing {
  readonly ride: Ride
  readonly blocks: readonly PlayedBlock[]
  readonly sections: readonly SectionReport[]
  readonly strain: StrainCurve
  readonly rules: SpeechRules
}

/**
 * Every cue of every played block on the ride clock, in order. Words end as long before the
 * change as the cue says, on a beat where there is a song (a lead in seconds goes to the
 * nearest, half a beat off at most), and start as much earlier as they take to say. A count-in
 * takes up its own counts. Words for the very first change start with the ride, and words inside
 * a block no sooner than it.
 */
export function placeCues(placing: Placing): CueLine[] {
  const { ride, blocks, sections } = placing
  const clocks = sections.map(({ one }, i) => sectionClock(ride.sections[i]!, one))
  const lines: CueLine[] = []
  for (const played of blocks) {
    if (played.to <= played.from) continue
    for (const cue of played.block.cues) {
      const line = placeCue(cue, played, clocks[played.section]!, placing)
      if (line) lines.push(line)
    }
  }
  return lines.sort(bySpoken)
}

function placeCue(cue: Cue, played: PlayedBlock, clock: SectionClock, { ride, strain, rules }: Placing): CueLine | null {
  const speech = speechOf(ride)
  const words = wordsOfCue(cue, speech)
  const count = countOf(cue)
  if (words === 0 && count === undefined) return null
  const inside = isInside(cue)
  const change = inside ? played.to : played.from
  const changeBeat = clock.beatAt(change)
  const to = clock.counted
    ? clock.atBeat(changeBeat - leadInBeats(cue, change, changeBeat, clock))
    : change - ('seconds' in cue.lead ? cue.lead.seconds : cue.lead.counts / 2)
  const speaker = speakerOf(ride, played)
  // Nothing is said of a block before its change, which is what words “at its start” rest on.
  const soonest = inside ? played.from : 0
  const working = played.block.walk || played.block.posture === 'offBike' ? 0 : strainAt(strain, Math.max(soonest, to))
  const length =
    count === undefined ? speechSeconds(utteranceOfCue(cue, speech), wordsPerSecond(speaker.wordsPerMinute, working, rules), rules) : 0
  const from = count === undefined ? to - length : clock.atBeat(clock.beatAt(to) - count)
  const begins = inside && startsWithBlock(cue.lead) ? soonest : Math.max(soonest, from)
  const ends = begins + (to - from)
  return {
    cue,
    block: played.index,
    moment: cue.moment,
    change,
    from: begins,
    to: ends,
    words,
    strain: working,
    speaker: speaker.id,
    lead: changeBeat - clock.beatAt(ends),
    ...(count !== undefined && { count }),
  }
}

/** Four or eight for a count-in, undefined for words. */
const countOf = (cue: Cue): Counts | undefined => (cue.moment === 'countIn' ? (cue.count ?? 4) : undefined)

/** A lead in seconds goes to the nearest beat of the song. */
function leadInBeats({ lead }: Cue, change: Seconds, changeBeat: number, clock: SectionClock): Counts {
  if ('counts' in lead) return lead.counts
  return Math.max(0, Math.round(changeBeat - clock.beatAt(change - lead.seconds)))
}

function speakerOf(ride: Ride, { block }: PlayedBlock): Ride['leaders'][number] {
  const id = block.mic ?? block.leader
  return ride.leaders.find((leader) => leader.id === id) ?? ride.leaders[0]!
}

/** Lines by the time they start. Of those that start together the longer one comes last, and of equally long ones the one written last. */
const bySpoken = (a: CueLine, b: CueLine): number => a.from - b.from || a.to - b.to
