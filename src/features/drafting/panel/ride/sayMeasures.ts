import type { Constants } from '#engine/constants.ts'
import type { Measures } from '#engine/shape/measures.ts'
import type { Overall } from '#engine/shape/overall.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'

type Efforts = Pick<Constants, 'workEffort' | 'warmUpEffort'>

/** The measures of a class as names and words; those that have nothing to tell are left out. */
export function sayMeasures(
  measures: Measures,
  overall: Overall,
  { workEffort, warmUpEffort }: Efforts,
): { name: string; words: string }[] {
  const { warmUp, coolDown, riding, firstHard, longestHard, longestStanding, peak } = measures
  const share = (seconds: number) => (riding > 0 ? ` (${Math.round((100 * seconds) / riding)} %)` : '')
  const rows: [name: string, words: string | false][] = [
    ['warm-up', warmUp !== null && `${formatClock(warmUp)}${share(warmUp)} before the first effort of ${formatEffort(warmUpEffort)}`],
    ['cool-down', `${formatClock(coolDown)}${share(coolDown)}`],
    [
      'work',
      overall.workSeconds > 0 &&
        `${Math.round(100 * overall.workShare)} % of the riding at ${formatEffort(workEffort)} or more${ratioOf(overall)}`,
    ],
    ['first hard', firstHard !== null && `${formatClock(firstHard)}; the longest lasts ${formatDuration(longestHard)}`],
    ['peak', peak !== null && `${formatEffort(peak.effort)} at ${formatClock(peak.at)}${lastOf(measures, peak.at)}`],
    ['standing', longestStanding > 0 && `${formatDuration(longestStanding)} at the longest`],
  ]
  return rows.flatMap(([name, words]) => (words === false ? [] : [{ name, words }]))
}

/** Where the hardest comes again, its last time is what riders are told of before the class. */
const lastOf = ({ lastHardest }: Measures, first: Seconds): string =>
  lastHardest !== null && lastHardest > first + 0.5 ? `, the last time at ${formatClock(lastHardest)}` : ''

const ratioOf = ({ ratio }: Overall): string => (ratio === null ? '' : `; ${formatNumber(ratio, 2)} to 1 of easy`)
