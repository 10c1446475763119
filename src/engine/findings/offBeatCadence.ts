import { beatCadence } from '#engine/cadence/beatCadence.ts'
import { paceRange } from '#engine/cadence/paceRange.ts'
import type { PlayedCadence } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Rpm } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

type Turning = Extract<PlayedCadence, { kind: 'turning' }>

/** A stated cadence that the beat of the song does not give, in a block that is said to ride on it. */
export function offBeatCadence(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence, index, section }) => {
    if (cadence.kind !== 'turning' || !block.cadence) return undefined
    const beat = beatCadence(facts.timeline.blocks[index]!, facts.ride.sections[section]!)
    if (!beat) return undefined
    const off = furthest(cadence, beat)
    if (off <= facts.rules.offBeatRpm + 1e-6) return undefined
    const stated = cadence.from === cadence.to ? `${say(cadence.from)}` : `${say(cadence.from)} to ${say(cadence.to)}`
    return {
      rule: 'offBeatCadence',
      severity: 'hint',
      text: `${inQuotes(block)} states ${stated} rev/min, but on this beat the legs turn at ${paceRange(beat)
        .map(say)
        .filter((rpm, i, all) => i === 0 || rpm !== all[0])
        .join(' to ')}.`,
      why: COMMON_PRACTICE,
      amount: off,
      fixes: [
        blockFix(block, 'Ride it on the beat', `Put ${inQuotes(block)} on the beat`, { cadence: undefined }),
        blockFix(block, 'Mark it off the beat', `Marked ${inQuotes(block)} off the beat`, { strikesPerBeat: null }),
      ],
    }
  })
}

/** How far a stated cadence is from what the beat gives: at its two ends, and a level one also where the tempo is furthest from it. */
function furthest(stated: Turning, beat: Turning): Rpm {
  const ends = [stated.from - beat.from, stated.to - beat.to]
  const between = stated.from === stated.to ? [stated.from - beat.least, stated.from - beat.most] : []
  return Math.max(...[...ends, ...between].map(Math.abs))
}

const say = (rpm: number): string => formatNumber(rpm, 1)
