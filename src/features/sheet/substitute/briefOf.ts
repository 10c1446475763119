import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { wallClockAfter } from '#units/wallClockAfter.ts'
import { minutesWords } from './minutesWords.ts'

/** One paragraph of a substitute's brief. */
export interface BriefPart {
  name: string
  lines: string[]
}

/** What the leader has written for a substitute, and what follows from the plan itself. */
export function briefOf(ride: Ride, report: RideReport): BriefPart[] {
  const { room, regulars, mustDo, mustNot } = ride.standIn ?? {}
  return [
    { name: 'the room', lines: [...linesOf(ride.location), ...linesOf(room), `${ride.bike.name}: ${scaleWords(ride)}`] },
    { name: 'what regulars expect', lines: linesOf(regulars) },
    { name: 'must do', lines: [...linesOf(mustDo), ...mustDoOf(ride, report)] },
    { name: 'must not', lines: [...linesOf(mustNot), ...mustNotOf(ride)] },
  ].filter(({ lines }) => lines.length > 0)
}

const linesOf = (text: string | undefined): string[] =>
  (text ?? '')
    .split('\n')
    .map((line) => line.trim().replace(/[.;,]+$/, ''))
    .filter((line) => line !== '')

function scaleWords({ bike, datum }: Ride): string {
  const step = bike.stepsPerUnit === 1 ? `whole ${bike.unit}s` : `${bike.unit}s in ${bike.stepsPerUnit} steps`
  return datum === 'base' ? `totals are ${step} over each rider’s own base` : `totals are ${step} from the loose wheel`
}

function mustDoOf(ride: Ride, { blocks, overall }: RideReport): string[] {
  const firstHard = blocks.find(({ block }) => Math.max(block.effort.from, block.effort.to) >= HARD)
  const end = ride.startsAt
    ? `off the bikes by ${wallClockAfter(ride.startsAt, ride.slotMinutes * 60)}`
    : `off the bikes inside ${ride.slotMinutes} min`
  return [
    'meet newcomers, show the brake, find base',
    ...(firstHard ? [`nothing hard in the first ${minutesWords(firstHard.from)}`] : []),
    'resistance on before anyone stands; say how long, how many, how hard before every effort',
    ...(overall.tailSeconds > 0 ? [`the last ${minutesWords(overall.tailSeconds)} easy`] : []),
    end,
  ]
}

/** Effort from which an effort is hard. Common practice. */
const HARD = 7

const mustNotOf = ({ avoidMoves = [] }: Ride): string[] => [
  ...(avoidMoves.length > 0 ? [`this room does no ${joinWords(avoidMoves)}`] : []),
  'no fast legs without resistance, no feet off moving pedals',
]
