import type { Constants } from '#engine/constants.ts'
import type { Measures } from '#engine/shape/measures.ts'
import type { Overall } from '#engine/shape/overall.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'

type Efforts = Pick<Constants, 'workEffort' | 'warmUpEffort'>

/** The measures of a class as names and words; those that have nothing to tell are left out. */
export function sayMeasures(measures: Measures, overall: Overall, { workEffort, warmUpEffort }: Efforts): { name: string; says: string }[] {
  const { warmUp, coolDown, riding, firstHard, longestHard, longestStanding, peak } = measures
  const { panelsRide: ours } = words
  const share = (seconds: number) => (riding > 0 ? seconds / riding : null)
  const rows: [name: string, says: string | false][] = [
    [ours.warmUp, warmUp !== null && ours.warmUpIs({ seconds: warmUp, share: share(warmUp), level: warmUpEffort })],
    [ours.coolDown, ours.coolDownIs({ seconds: coolDown, share: share(coolDown) })],
    [ours.work, overall.workSeconds > 0 && ours.workIs({ share: overall.workShare, level: workEffort, ratio: overall.ratio })],
    [ours.firstHard, firstHard !== null && ours.firstHardIs({ at: firstHard, longest: longestHard })],
    [ours.peak, peak !== null && ours.peakIs({ level: peak.effort, at: peak.at, last: lastOf(measures, peak.at) })],
    [ours.standing, longestStanding > 0 && ours.standingIs({ seconds: longestStanding })],
  ]
  return rows.flatMap(([name, says]) => (says === false ? [] : [{ name, says }]))
}

/** Where the hardest comes again, its last time is what riders are told of before the class. */
const lastOf = ({ lastHardest }: Measures, first: Seconds): Seconds | null =>
  lastHardest !== null && lastHardest > first + 0.5 ? lastHardest : null
