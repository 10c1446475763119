import type { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import type { Ride, StrikesPerBeat } from '#plan/model.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { tell, words } from '#words/words.ts'
import { asidesOf } from './asidesOf.ts'
import { cadenceWords } from './cadenceWords.ts'
import type { Band, SongClock } from './contents.ts'
import { handOverOf, type LeadHands } from './handOver.ts'
import { rowOf } from './rowOf.ts'

interface BandSource {
  ride: Ride
  report: RideReport
  /** What is said of every played block. */
  spoken: ReturnType<typeof linesByBlock>
  section: SectionReport
  /** Of the section. */
  index: number
  songClock: SongClock
  /** Id of the leader the sheet is made for. */
  reader?: string
  hands: LeadHands
}

/** The band of one section: its head and a row for each of its changes. */
export function bandOf({ ride, report, spoken, section, index, songClock, reader, hands }: BandSource): Band {
  const source = ride.sections[index]!
  const played = report.blocks.slice(section.blocks.from, section.blocks.to)
  const { opening, closing } = asidesOf(report)
  return {
    id: section.sectionId,
    number: index + 1,
    title: source.title || undefined,
    song: source.song?.title || undefined,
    artist: source.song?.artist || undefined,
    facts: [
      words.printed.from({ from: beginOf(section), seconds: section.to - beginOf(section) }),
      ...tempoFacts(section, source.song?.strikesPerBeat, played[0]),
      words.printed.inAndOut({ enters: tell(section.entersAt), leaves: tell(section.leavesAt) }),
    ],
    lead: played[0]?.foot ?? undefined,
    handOver: played[0] && handOverTo({ ride, report, reader, hands }, played[0]),
    before: index === 0 ? opening : undefined,
    rows: played.map((block, row) =>
      rowOf({ ride, section, block, lines: spoken[block.index]!, before: played[row - 1], songClock, reader, hands }),
    ),
    after: index === ride.sections.length - 1 ? closing : undefined,
  }
}

/** Who takes over with a section, or who has it: sections stand on pages of their own. */
function handOverTo(
  { ride, report, reader, hands }: Pick<BandSource, 'ride' | 'report' | 'reader' | 'hands'>,
  { block, index }: PlayedBlock,
): string | undefined {
  const last = report.blocks[index - 1]
  if (hands === 'unsaid' || (hands === 'one' && last)) return undefined
  const roles = rolesOf(ride, block)
  return handOverOf(ride, roles, last && rolesOf(ride, last.block), reader) ?? handOverOf(ride, roles, undefined, reader)
}

/** "158 bpm, 79 rpm on the beat": tempo, cadence, and the pedal strokes per beat that join them. */
function tempoFacts(section: SectionReport, strikes: StrikesPerBeat | undefined, first: PlayedBlock | undefined): string[] {
  const cadence = first && cadenceWords(first.cadence)
  const beat = section.bpm === undefined ? undefined : words.measures.bpm(section.bpm, 0)
  const joined = beat && cadence && first.cadence.kind === 'turning' && strikes !== undefined
  const turning = joined ? words.printed.strokes({ cadence, strokes: STROKES[`${strikes}`] }) : cadence
  const facts = [beat, turning].filter((fact) => fact !== undefined)
  return [...(facts.length > 0 ? [facts.join(', ')] : []), ...(section.unit.name === 'six' ? [words.printed.sixes] : [])]
}

const STROKES = { 0.5: 'half', 1: 'on', 2: 'double', null: 'off' } as const
