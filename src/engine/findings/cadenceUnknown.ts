import type { Finding } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import type { Rpm } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, eachBlock } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** A pace that suits most riding. */
const EASY: Readonly<{ from: Rpm; to: Rpm }> = { from: 80, to: 80 }

/** Off the beat, or without a tempo, a block needs a stated cadence or "legs still". */
export function cadenceUnknown(facts: Facts): Finding[] {
  return eachBlock(facts, ({ block, cadence, section }) => {
    if (cadence.kind !== 'unknown') return undefined
    const hasBeat = facts.sections[section]!.bpm !== undefined
    const onBeat = facts.ride.sections[section]!.song?.strikesPerBeat != null && hasBeat
    const here = quotedItem(block)
    return {
      rule: 'cadenceUnknown',
      severity: 'hint',
      text: say(hasBeat ? 'checksRiding.offBeat' : 'checksRiding.noBeat', { block: here }),
      why: ARITHMETIC,
      fixes: [
        onBeat
          ? blockFix(block, say('checks.rideOnBeat'), say('checks.putOnBeat', { block: here }), { strikesPerBeat: undefined })
          : undefined,
        blockFix(block, say('checks.rideAt', EASY), say('checks.setCadence', { block: here, ...EASY }), { cadence: { rpm: EASY.from } }),
      ],
    }
  })
}
