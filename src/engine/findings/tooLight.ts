import { isJump } from '#engine/cadence/moves.ts'
import type { Finding, PlayedBlock } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from './finding.ts'
import { type Excess, resistanceFix } from './fixes/resistanceFix.ts'
import { amountOfKnob, turnsInSteps } from './sizes.ts'

const POSITION = "an instructor-training body's public position statement: resistance before standing and sprinting; amount common practice"

interface Need {
  rule: string
  /** Turns over base. */
  turns: number
  /** What is done on too little: "stands", "jumps". */
  doing: string
  why: string
}

/** Standing, jumping, pushing or pedalling fast on too little resistance. The strongest need of a block speaks. */
export function tooLight(facts: Facts): Finding[] {
  const { ride, ledger } = facts
  return eachBlock(facts, (played) => {
    const need = needOf(facts, played)
    if (!need) return undefined
    const least = Math.ceil(turnsInSteps(need.turns, ride) - 1e-9)
    const target = ledger.limits.base + least
    const excess: Excess = (_, after) => target - after.nominal
    const missing = excess(played.ledger.before, played.ledger.after)
    if (missing <= 0) return undefined
    const over = least - missing
    return {
      rule: need.rule,
      severity: over <= 0 ? 'problem' : 'warning',
      text: `${inQuotes(played.block)} ${need.doing} ${placeOf(over, ride)}; at least ${amountOfKnob(least, ride.bike)} over base keeps the legs in charge.`,
      why: need.why,
      amount: missing,
      fixes: [resistanceFix(facts, played.index, target, excess)],
    }
  })
}

function placeOf(over: KnobSteps, { bike }: Ride): string {
  if (over === 0) return 'at base'
  return `${amountOfKnob(Math.abs(over), bike)} ${over > 0 ? 'over' : 'under'} base`
}

/** What a block needs resistance for; undefined with legs still, or all off, which has its own finding. */
export function needOf(facts: Facts, played: PlayedBlock): Need | undefined {
  if (played.cadence.kind === 'still' || played.block.resistance.kind === 'allOff') return undefined
  return strongest(needsOf(facts, played))
}

function needsOf({ rules }: Facts, { block, cadence }: PlayedBlock): Need[] {
  const needs: Need[] = []
  const { posture, terrain, move } = block
  const up = posture === 'standing' || posture === 'hovering'
  if (up) needs.push({ rule: 'lightStanding', turns: rules.standingTotal, doing: 'stands', why: POSITION })
  if (move && (isJump(move.name) || up)) {
    needs.push({
      rule: 'lightMove',
      turns: rules.moveTotal,
      doing: isJump(move.name) ? 'jumps' : 'moves out of the saddle',
      why: COMMON_PRACTICE,
    })
  }
  if (terrain === 'push' || terrain === 'surge')
    needs.push({ rule: 'lightPush', turns: rules.pushTotal, doing: 'goes hard', why: POSITION })
  if (cadence.kind === 'turning' && Math.max(cadence.from, cadence.to) >= rules.fastLegsRpm) {
    needs.push({ rule: 'fastLegs', turns: rules.fastLegsTotal, doing: 'spins fast', why: POSITION })
  }
  return needs
}

const strongest = (needs: readonly Need[]): Need | undefined =>
  needs.reduce<Need | undefined>((most, need) => (most && most.turns >= need.turns ? most : need), undefined)
