import type { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import type { Ride, StrikesPerBeat } from '#plan/model.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
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
      `${formatClock(beginOf(section))} for ${formatClock(section.to - beginOf(section))}`,
      ...tempoFacts(section, source.song?.strikesPerBeat, played[0]),
      `in ${section.entersAt}, out ${section.leavesAt}`,
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

/** "158 bpm, 79 rpm ×1": tempo, cadence, and the strikes a beat that join them. */
function tempoFacts(section: SectionReport, strikes: StrikesPerBeat | undefined, first: PlayedBlock | undefined): string[] {
  const cadence = first && cadenceWords(first.cadence)
  const beat = section.bpm === undefined ? undefined : `${formatNumber(section.bpm, 0)} bpm`
  const turning = beat && first?.cadence.kind === 'turning' ? `${cadence}${strikeWords(strikes)}` : cadence
  const facts = [beat, turning].filter((fact) => fact !== undefined)
  return [...(facts.length > 0 ? [facts.join(', ')] : []), ...(section.unit.name === 'six' ? ['counted in sixes'] : [])]
}

function strikeWords(strikes: StrikesPerBeat | undefined): string {
  if (strikes === undefined) return ''
  return strikes === null ? ' off the beat' : { 0.5: ' ×½', 1: ' ×1', 2: ' ×2' }[strikes]
}
