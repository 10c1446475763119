import type { Finding } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Off the beat, or without a tempo, a block needs a stated cadence or "legs still". */
export function cadenceUnknown(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence, section }) => {
    if (cadence.kind !== 'unknown') return undefined
    const cause = facts.sections[section]!.bpm === undefined ? 'has no beat to follow' : 'is off the beat'
    const onBeat = facts.ride.sections[section]!.song?.strikesPerBeat != null && facts.sections[section]!.bpm !== undefined
    return {
      rule: 'cadenceUnknown',
      severity: 'hint',
      text: `${inQuotes(block)} ${cause} and states no cadence.`,
      why: ARITHMETIC,
      fixes: [
        onBeat ? blockFix(block, 'Ride it on the beat', `Put ${inQuotes(block)} on the beat`, { strikesPerBeat: undefined }) : undefined,
        blockFix(block, 'Ride it at 80 rev/min', `Set ${inQuotes(block)} to 80 rev/min`, { cadence: { rpm: 80 } }),
      ],
    }
  })
}
