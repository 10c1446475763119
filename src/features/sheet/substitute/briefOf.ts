import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { wallClockAfter } from '#units/wallClockAfter.ts'
import { tell, words } from '#words/words.ts'
import { minutesWords } from './minutesWords.ts'

/** One paragraph of a substitute's brief. */
export interface BriefPart {
  name: string
  lines: string[]
}

/** What the leader has written for a substitute, and what follows from the plan itself. */
export function briefOf(ride: Ride, report: RideReport): BriefPart[] {
  const { room, regulars, mustDo, mustNot } = ride.standIn ?? {}
  const { subNote } = words.sheet
  return [
    { name: subNote({ key: 'room' }), lines: [...linesOf(ride.location), ...linesOf(room), scaleWords(ride)] },
    { name: subNote({ key: 'regulars' }), lines: linesOf(regulars) },
    { name: subNote({ key: 'mustDo' }), lines: [...linesOf(mustDo), ...mustDoOf(ride, report)] },
    { name: subNote({ key: 'mustNot' }), lines: [...linesOf(mustNot), ...mustNotOf(ride)] },
  ].filter(({ lines }) => lines.length > 0)
}

const linesOf = (text: string | undefined): string[] =>
  (text ?? '')
    .split('\n')
    .map((line) => line.trim().replace(/[.;,]+$/, ''))
    .filter((line) => line !== '')

const scaleWords = ({ bike, datum }: Ride): string =>
  words.printed.scale({ bike: tell(bikeName(bike)), unit: bike.unit, steps: bike.stepsPerUnit, fromBase: datum === 'base' })

function mustDoOf({ startsAt, slotMinutes }: Ride, { blocks, overall }: RideReport): string[] {
  const firstHard = blocks.find(({ block }) => Math.max(block.effort.from, block.effort.to) >= HARD)
  const { meet, nothingHard, resistanceFirst, endEasy, offBy, offInside } = words.printed
  return [
    meet,
    ...(firstHard ? [nothingHard({ time: minutesWords(firstHard.from) })] : []),
    resistanceFirst,
    ...(overall.tailSeconds > 0 ? [endEasy({ time: minutesWords(overall.tailSeconds) })] : []),
    startsAt ? offBy({ time: wallClockAfter(startsAt, slotMinutes * 60) }) : offInside({ minutes: slotMinutes }),
  ]
}

/** Effort from which an effort is hard. Common practice. */
const HARD = 7

const mustNotOf = ({ avoidMoves = [] }: Ride): string[] => [
  ...(avoidMoves.length > 0 ? [words.printed.avoid({ moves: avoidMoves })] : []),
  words.printed.never,
]
