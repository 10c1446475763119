import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import { asidesOf } from '#features/sheet/contents/asidesOf.ts'
import type { Aside } from '#features/sheet/contents/contents.ts'
import { leadersOf } from '#features/sheet/contents/leadersOf.ts'
import { headerFacts } from '#features/sheet/contents/sheetContents.ts'
import { stampOf } from '#features/sheet/contents/stampOf.ts'
import type { Ride } from '#plan/model.ts'
import { and } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { type BriefPart, briefOf } from './briefOf.ts'
import { minutesWords } from './minutesWords.ts'
import { type StretchGroup, stretchesOf } from './stretchesOf.ts'

/** What someone needs who takes the class over with other music: no counts, no parts of songs. */
export interface SubstituteContents {
  title: string
  aim?: string
  facts: string[]
  stamp: string
  /** The room, the regulars, what has to be and what must not be. */
  brief: BriefPart[]
  bands: SubstituteBand[]
  /** What the numbers mean, and how to stay safe. */
  footer: string
}

/** One section: a stretch of the class with a character of its own. */
export interface SubstituteBand {
  id: string
  number: number
  /** What it is, in terrain words: "climb", "pushes and recoveries". */
  character: string
  /** "from 2½ min, 3¾ min long, about 65 rpm". */
  facts: string[]
  /** The welcome before the first, and the wipe-down after the last. */
  before?: Aside
  groups: StretchGroup[]
  after?: Aside
}

/** Pure; the report must be the ride's own. */
export function substituteContents(ride: Ride, report: RideReport, date: string): SubstituteContents {
  return {
    title: ride.title || words.names.untitled,
    aim: ride.aim || undefined,
    facts: [...headerFacts(ride, report), ...[leadersOf(ride)].filter((names) => names !== undefined)],
    stamp: stampOf(ride, date),
    brief: briefOf(ride, report),
    bands: report.sections.flatMap((section, index) => bandOf(ride, report, section, index)),
    footer: `${words.printed.subFooter({ unit: ride.bike.unit, fromBase: ride.datum === 'base' })} ${words.printed.safety}`,
  }
}

function bandOf(ride: Ride, report: RideReport, section: SectionReport, index: number): SubstituteBand[] {
  const played = report.blocks.slice(section.blocks.from, section.blocks.to).filter(({ from, to }) => to > from)
  if (played.length === 0) return []
  const groups = stretchesOf(ride, played)
  const { opening, closing } = asidesOf(report, minutesWords)
  const isLast = report.blocks.findLast(({ from, to }) => to > from)!.section === index
  const isFirst = report.blocks.find(({ from, to }) => to > from)!.section === index
  return [
    {
      id: section.sectionId,
      number: index + 1,
      character: characterOf(groups),
      facts: [
        words.printed.subFrom({ time: minutesWords(beginOf(section)) }),
        words.printed.subLong({ time: minutesWords(section.to - beginOf(section)) }),
        ...paceOf(played),
      ],
      before: isFirst ? opening : undefined,
      groups,
      after: isLast ? closing : undefined,
    },
  ]
}

/** The roads it takes most time on, at most two: "climb and recovery". */
function characterOf(groups: readonly StretchGroup[]): string {
  const time = new Map<string, number>()
  for (const { times, stretches } of groups)
    for (const { road, seconds } of stretches) time.set(road, (time.get(road) ?? 0) + times * seconds)
  const [first, second] = [...time].sort((a, b) => b[1] - a[1])
  return second && second[1] > first![1] / 3 ? and([first![0], second[0]]) : first![0]
}

/** The legs' speed most of the time, to the nearest five: any song of about that will do. */
function paceOf(played: readonly PlayedBlock[]): string[] {
  const turning = played.flatMap(({ cadence, from, to }) => (cadence.kind === 'turning' ? [{ rpm: cadence.mean, seconds: to - from }] : []))
  const seconds = turning.reduce((sum, one) => sum + one.seconds, 0)
  if (seconds === 0) return []
  const mean = turning.reduce((sum, one) => sum + one.rpm * one.seconds, 0) / seconds
  return [words.printed.aboutRpm({ rpm: Math.round(mean / 5) * 5 })]
}
