import { calibrationOf } from '#engine/demand/calibration.ts'
import { legsOf, pedalling } from '#engine/demand/ridden.ts'
import { riderSetting } from '#engine/demand/riderSetting.ts'
import { restate, shiftTotal } from '#engine/demand/shiftTotal.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix, RiderReport } from '#engine/report.ts'
import { RECOVERIES } from '#engine/reserve/recovery.ts'
import { reserveAt, reserveCurve } from '#engine/reserve/reserveCurve.ts'
import { NOTHING_LEFT } from '#engine/reserve/reserveReport.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { quotedItem, riderInSentence } from '#plan/names.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, fix, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'
import { turnWords } from './fixes/resistanceFix.ts'

const WHY = say('sources.criticalPower')

/**
 * The block in which a rider's reserve has run out by most of the recoveries; what one of them alone says stays in the
 * band. For the rider the class is judged by it
 * always counts; for the others it is enough that an easier option is offered there.
 */
export function reserveRunsOut(facts: Facts): Finding[] {
  return facts.riders.flatMap((report) => {
    const { runsOut, byRecovery } = report.reserve
    const played = runsOut?.block === undefined ? undefined : facts.blocks[runsOut.block]
    if (!runsOut || !played || (!report.reference && played.block.easier)) return []
    const steps = stepsOff(facts, played, report)
    const noticed: Noticed = {
      rule: 'reserveRunsOut',
      of: report.rider.id,
      severity: report.reference ? 'problem' : 'warning',
      text: say('checksRide.reserveRunsOut', {
        rider: riderInSentence(report.rider),
        block: quotedItem(played.block),
        at: runsOut.at,
        // Somewhat stronger legs on a somewhat lighter bike would have enough.
        may: report.band.mayLast(),
        models: runsOut.recoveries,
        of: RECOVERIES.length,
        less: steps === null ? null : knobSize(steps, facts.ride.bike),
      }),
      why: WHY,
      amount: -Math.min(...byRecovery.map(({ minimum }) => minimum.share)),
      fixes: () => [lighter(facts, played, steps), report.reference ? undefined : easierOption(facts, played, steps)],
    }
    return [atBlock(facts, played.index, noticed, runsOut.at)]
  })
}

/** Fewest steps off the block with which its end leaves something in reserve by most recoveries; null where base does not do it. */
function stepsOff({ ride, ledger }: Facts, played: PlayedBlock, { rider, reserve }: RiderReport): KnobSteps | null {
  const { from } = played
  const floor = ride.datum === 'base' ? Math.max(ledger.limits.floor, ledger.limits.base) : ledger.limits.floor
  const calibration = calibrationOf(ride.bike)
  const legs = legsOf(rider)
  for (let steps = 1; played.ledger.after.nominal - steps >= floor; steps++) {
    const setting = riderSetting(ride.bike, ride.datum, rider, played.ledger.after.nominal - steps)
    const span = pedalling(played, played, setting, calibration, legs)
    const short = reserve.byRecovery.filter((curve) => {
      const { recovery, tau } = curve
      return reserveCurve([span], rider, { recovery, tau, start: reserveAt(curve, from) * rider.wPrime }).minimum.share < NOTHING_LEFT
    })
    if (2 * short.length < RECOVERIES.length) return steps
  }
  return null
}

function lighter(facts: Facts, { block }: PlayedBlock, steps: KnobSteps | null): Fix | undefined {
  const { ride, blocks } = facts
  const calls = steps === null ? null : shiftTotal(ride, blocks, block.id, -steps)
  if (steps === null || calls === null) return undefined
  return fix(...turnWords(facts, block, -steps), (before) => restate(before, calls))
}

function easierOption({ ride }: Facts, { block }: PlayedBlock, steps: KnobSteps | null): Fix {
  const { numbers, sentences } = speechOf(ride)
  const less = sentences.lighter(steps === null ? null : numbers.size(steps, ride.bike))
  return blockFix(block, say('checksRide.offerEasier', { words: less }), say('checksRide.offeredEasier', { block: quotedItem(block) }), {
    easier: { text: less },
  })
}
