import { isJump } from '#engine/cadence/moves.ts'
import type { PlayedBlock } from '#engine/report.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE } from './finding.ts'

const POSITION = "an instructor-training body's public position statement: resistance before standing and sprinting; amount common practice"

/** What a block needs resistance for, and how much. */
interface Need {
  rule: string
  /** Turns over base. */
  turns: number
  /** What is done on too little: "stands", "jumps". */
  doing: string
  why: string
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
