import { beatCadence } from '#engine/cadence/beatCadence.ts'
import { paceRange } from '#engine/cadence/paceRange.ts'
import type { PlayedCadence } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import type { Rpm } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock } from './finding.ts'
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
    const here = quotedItem(block)
    const [from, to] = paceRange(beat)
    return {
      rule: 'offBeatCadence',
      severity: 'hint',
      text: say('checksRiding.offBeatCadence', { block: here, rpm: { from: cadence.from, to: cadence.to }, beat: { from, to } }),
      why: COMMON_PRACTICE,
      amount: off,
      fixes: [
        blockFix(block, say('checks.rideOnBeat'), say('checks.putOnBeat', { block: here }), { cadence: undefined }),
        blockFix(block, say('checksRiding.markOffBeat'), say('checksRiding.markedOffBeat', { block: here }), { strikesPerBeat: null }),
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
