import type { PlayedBlock, RideReport, SectionReport } from '#engine/report.ts'
import type { Ride, StrikesPerBeat } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { cadenceWords } from './cadenceWords.ts'
import type { Band, SongClock } from './contents.ts'
import { rowOf } from './rowOf.ts'

/** The band of one section: its head and a row for each of its changes. */
export function bandOf(ride: Ride, report: RideReport, section: SectionReport, index: number, songClock: SongClock): Band {
  const source = ride.sections[index]!
  const played = report.blocks.slice(section.blocks.from, section.blocks.to)
  return {
    id: section.sectionId,
    number: index + 1,
    title: nameOfSection(ride, source),
    artist: source.song?.artist || undefined,
    facts: [
      `at ${formatClock(section.one)}`,
      `${formatClock(section.to - section.one)} long`,
      ...tempoFacts(section, source.song?.strikesPerBeat, played[0]),
      `enters ${section.entersAt}, leaves ${section.leavesAt}`,
    ],
    lead: played[0]?.foot ?? undefined,
    rows: played.map((block, row) => rowOf({ ride, section, block, before: played[row - 1], songClock })),
  }
}

function tempoFacts(section: SectionReport, strikes: StrikesPerBeat | undefined, first: PlayedBlock | undefined): string[] {
  const cadence = first && cadenceWords(first.cadence)
  if (section.bpm === undefined) return cadence ? [cadence] : []
  return [`${formatNumber(section.bpm, 0)} bpm`, ...(cadence ? [`${cadence}${strikeWords(strikes)}`] : [])]
}

/** How the cadence hangs on the beat: one strike a beat is the rule and needs no words. */
function strikeWords(strikes: StrikesPerBeat | undefined): string {
  if (strikes === undefined) return ''
  if (strikes === null) return ' off the beat'
  return { 0.5: ', ½ strike a beat', 1: ', 1 strike a beat', 2: ', 2 strikes a beat' }[strikes]
}
