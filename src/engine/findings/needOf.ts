import { ruleAt } from '#engine/anotherBike/turnsAt.ts'
import { isJump } from '#engine/cadence/moves.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { KnobSteps } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE } from './finding.ts'
import type { RuleName } from './ruleNames.ts'

const POSITION = say('sources.resistanceNeeded')

/** What a block needs resistance for, and how much. */
interface Need {
  rule: RuleName
  /** The least total, in whole steps over base. */
  least: KnobSteps
  /** What is done on too little. */
  doing: 'stands' | 'jumps' | 'moves' | 'goesHard' | 'pedalsFast'
  why: Said
}

/** What a block needs resistance for; undefined with legs still, or all off, which has its own finding. */
export function needOf(facts: Facts, played: PlayedBlock): Need | undefined {
  if (played.cadence.kind === 'still' || played.block.resistance.kind === 'allOff') return undefined
  const strongest = demandsOf(facts, played).reduce<Demanded | undefined>(
    (most, one) => (most && most.turns >= one.turns ? most : one),
    undefined,
  )
  if (!strongest) return undefined
  const { rule, turns, doing, why } = strongest
  return { rule, least: ruleAt(facts, played, turns, 'atLeast'), doing, why }
}

/** A need as the rules have it, in turns over base. */
type Demanded = Omit<Need, 'least'> & { turns: number }

function demandsOf({ rules }: Facts, { block, cadence }: PlayedBlock): Demanded[] {
  const needs: Demanded[] = []
  const { terrain, move } = block
  const up = isOutOfSaddle(block)
  if (up) needs.push({ rule: 'lightStanding', turns: rules.standingTotal, doing: 'stands', why: POSITION })
  if (move && (isJump(move.name) || up)) {
    needs.push({
      rule: 'lightMove',
      turns: rules.moveTotal,
      doing: isJump(move.name) ? 'jumps' : 'moves',
      why: COMMON_PRACTICE,
    })
  }
  if (terrain === 'push' || terrain === 'surge') needs.push({ rule: 'lightPush', turns: rules.pushTotal, doing: 'goesHard', why: POSITION })
  if (cadence.kind === 'turning' && cadence.most >= rules.fastLegsRpm) {
    needs.push({ rule: 'fastLegs', turns: rules.fastLegsTotal, doing: 'pedalsFast', why: POSITION })
  }
  return needs
}
