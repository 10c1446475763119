import { beatCadence } from '#engine/cadence/playCadence.ts'
import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** A stated cadence that the beat of the song does not give, in a block that is said to ride on it. */
export function offBeatCadence(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence, index, section }) => {
    if (cadence.kind !== 'turning' || !block.cadence) return undefined
    const beat = beatCadence(facts.timeline.blocks[index]!, facts.ride.sections[section]!)
    if (!beat) return undefined
    const off = Math.max(Math.abs(cadence.from - beat.from), Math.abs(cadence.to - beat.to))
    if (off <= facts.rules.offBeatRpm + 1e-6) return undefined
    const stated = cadence.from === cadence.to ? `${say(cadence.from)}` : `${say(cadence.from)} to ${say(cadence.to)}`
    return {
      rule: 'offBeatCadence',
      severity: 'hint',
      text: `${inQuotes(block)} states ${stated} rev/min, but on this beat the legs turn at ${say(beat.from)}.`,
      why: COMMON_PRACTICE,
      amount: off,
      fixes: [
        blockFix(block, 'Ride it on the beat', `Put ${inQuotes(block)} on the beat`, { cadence: undefined }),
        blockFix(block, 'Mark it off the beat', `Marked ${inQuotes(block)} off the beat`, { strikesPerBeat: null }),
      ],
    }
  })
}

const say = (rpm: number): string => formatNumber(rpm, 1)
