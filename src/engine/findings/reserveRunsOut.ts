import { calibrationOf } from '#engine/demand/calibration.ts'
import { legsOf, pedalling } from '#engine/demand/ridden.ts'
import { riderSetting } from '#engine/demand/riderSetting.ts'
import { restate, shiftTotal } from '#engine/demand/shiftTotal.ts'
import { sizeWords } from '#engine/ledger/settingWords.ts'
import type { Finding, Fix, PlayedBlock, RiderReport } from '#engine/report.ts'
import { reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { formatClock } from '#units/formatClock.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { atBlock, fix, inQuotes, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'
import { amountOfKnob } from './sizes.ts'

const WHY = 'critical-power model, differential form (Skiba et al., Eur J Appl Physiol 2015); an estimate for a modelled rider'

/**
 * The block in which a rider's reserve first runs out. For the rider the class is judged by it
 * always counts; for the others it is enough that an easier option is offered there.
 */
export function reserveRunsOut(facts: Facts): Finding[] {
  return facts.riders.flatMap((report) => {
    const { runsOut, minimum } = report.reserve
    const played = runsOut?.block === undefined ? undefined : facts.blocks[runsOut.block]
    if (!runsOut || !played || (!report.reference && played.block.easier)) return []
    const steps = stepsOff(facts, played, report)
    const noticed: Noticed = {
      rule: `reserveRunsOut.${report.rider.id}`,
      severity: report.reference ? 'problem' : 'warning',
      text: `The reserve of the ${report.rider.name} runs out in ${inQuotes(played.block)} at ${formatClock(runsOut.at)}${advice(facts, steps)}.`,
      why: WHY,
      amount: -minimum.share,
      fixes: () => [lighter(facts, played, steps), report.reference ? undefined : easierOption(facts, played, steps)],
    }
    return [atBlock(facts, played.index, noticed, runsOut.at)]
  })
}

const advice = ({ ride }: Facts, steps: KnobSteps | null): string =>
  steps === null
    ? '; it needs an easier block or a longer recovery before it'
    : `; ${sizeWords(steps, ride.bike)} less would see them through`

/** Fewest steps off the block with which its end leaves something in reserve; null where base does not do it. */
function stepsOff({ ride, ledger }: Facts, played: PlayedBlock, { rider, reserve }: RiderReport): KnobSteps | null {
  const { from } = played
  const floor = ride.datum === 'base' ? Math.max(ledger.limits.floor, ledger.limits.base) : ledger.limits.floor
  const start = reserveAt(reserve, from) * rider.wPrime
  for (let steps = 1; played.ledger.after.nominal - steps >= floor; steps++) {
    const setting = riderSetting(ride.bike, ride.datum, rider, played.ledger.after.nominal - steps)
    const span = pedalling(played, played, setting, calibrationOf(ride.bike), legsOf(rider))
    if (!reserveCurve([span], rider, start).runsOut) return steps
  }
  return null
}

function lighter({ ride, blocks }: Facts, { block }: PlayedBlock, steps: KnobSteps | null): Fix | undefined {
  const calls = steps === null ? null : shiftTotal(ride, blocks, block.id, -steps)
  if (steps === null || calls === null) return undefined
  const size = amountOfKnob(steps, ride.bike)
  return fix(`Take ${size} off`, `Took ${size} off ${inQuotes(block)}`, (before) => restate(before, calls))
}

function easierOption({ ride }: Facts, { block }: PlayedBlock, steps: KnobSteps | null): Fix {
  const less = steps === null ? 'at base, same legs' : `${sizeWords(steps, ride.bike)} less, same legs`
  return blockFix(block, `Offer “${less}”`, `Offered an easier option in ${inQuotes(block)}`, { easier: { text: less } })
}
