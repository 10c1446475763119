import type { Facts } from '#engine/findings/facts.ts'
import { fix, inQuotes, playsOf } from '#engine/findings/finding.ts'
import { amountOfKnob } from '#engine/findings/sizes.ts'
import { totalRoom } from '#engine/findings/totalRoom.ts'
import { applyCall } from '#engine/ledger/applyCall.ts'
import type { Fix, LedgerState } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Block, Resistance } from '#plan/model.ts'
import { callOfRound, NO_CARRY, shiftOfRound } from '#plan/roundShift.ts'
import type { KnobSteps } from '#units/units.ts'

/** How far a call is past a rule's line, from the states before and after it; above 0 is past it. */
export type Excess = (before: LedgerState, after: LedgerState) => KnobSteps

/**
 * Makes a played block's call arrive at another nominal total, or as near as the knob goes: "Add ¾ turn". Undefined where it
 * is there already, is all off, would be lighter than another rule lets it be, or where the other rounds of its set would stay as far past the
 * rule's line as before.
 */
export function resistanceFix(facts: Facts, index: number, wanted: KnobSteps, excess?: Excess): Fix | undefined {
  const { floor, ceiling } = facts.ledger.limits
  const target = Math.min(ceiling, Math.max(floor, wanted))
  const { block, ledger, set } = facts.blocks[index]!
  const steps = target - ledger.after.nominal
  const call = landingCall(facts, index, target)
  if (steps === 0 || !call) return undefined
  if (steps < 0 && playsOf(facts, facts.blocks[index]!).some((one) => one.ledger.after.nominal + steps < totalRoom(facts, one).least.total))
    return undefined
  if (excess && set && set.set.rounds > 1 && worstRound(facts, index, call, excess) >= excess(ledger.before, ledger.after)) return undefined
  const size = amountOfKnob(Math.abs(steps), facts.ride.bike)
  const here = inQuotes(block)
  return steps > 0
    ? callFix(block, `Add ${size}`, `Added ${size} to ${here}`, call)
    : callFix(block, `Take ${size} off`, `Took ${size} off ${here}`, call)
}

/** The set played through with another call for one part: the furthest any round of that part is past the line. */
function worstRound({ blocks, ledger }: Facts, index: number, restated: Resistance, excess: Excess): KnobSteps {
  const { block, set } = blocks[index]!
  let i = index
  while (blocks[i - 1]?.set?.set === set!.set) i--
  let state = ledger.lines[i]!.entry.before
  let carry = NO_CARRY
  let worst = Number.NEGATIVE_INFINITY
  for (let played = blocks[i]; played?.set?.set === set!.set; played = blocks[++i]) {
    const stated = played.block.id === block.id ? restated : played.block.resistance
    const round = callOfRound(stated, set!.set, played.set!.round, carry)
    carry = round.carry
    const { after } = applyCall(state, round.call, ledger.limits)
    if (played.block.id === block.id) worst = Math.max(worst, excess(state, after))
    state = after
  }
  return worst
}

/** States a total in place of a played block's call. */
export function totalFix({ blocks }: Facts, index: number, total: KnobSteps, label: string, done: string): Fix {
  const { block, set } = blocks[index]!
  const stated = total - (set ? shiftOfRound(set.set, set.round) : 0)
  return callFix(block, label, done, { kind: 'total', from: stated, to: stated })
}

function callFix({ id }: Block, label: string, done: string, resistance: Resistance): Fix {
  return fix(label, done, (ride) => editBlock(ride, id, (block) => ({ ...block, resistance })))
}

/**
 * A block's call reworded to arrive at a nominal total, in the kind it has. Where a set plays
 * the block again, a change would add up round by round, so there it becomes a total.
 */
function landingCall({ blocks, ledger }: Facts, index: number, target: KnobSteps): Resistance | undefined {
  const { block, set } = blocks[index]!
  const { call, entry } = ledger.lines[index]!
  const stated = block.resistance
  const shift = set ? shiftOfRound(set.set, set.round) : 0
  const total: Resistance = { kind: 'total', from: target - shift, to: target - shift }
  switch (stated.kind) {
    case 'allOff':
      return undefined
    case 'keep':
      return set && set.set.rounds > 1 ? total : { kind: 'change', mode: 'exact', steps: target - entry.before.nominal }
    case 'change': {
      if (set && set.set.rounds > 1) return stated.checkpoint ? undefined : total
      const given = call.kind === 'change' ? call.steps : stated.steps
      return restated(stated, stated.steps + target - entry.before.nominal - given)
    }
    case 'total':
    case 'byFeel':
      return movedRange(stated, entry.after, target, shift, ledger.limits)
  }
}

type Change = Extract<Resistance, { kind: 'change' }>
type Range = Extract<Resistance, { kind: 'total' | 'byFeel' }>

/** The change with other steps; "at least" and "if you have it" do not survive a change of direction. */
function restated(call: Change, steps: KnobSteps): Resistance {
  if (steps === 0 && !call.checkpoint) return { kind: 'keep' }
  return { ...call, steps, mode: Math.sign(steps) === Math.sign(call.steps) ? call.mode : 'exact' }
}

function movedRange(
  call: Range,
  after: { low: KnobSteps; nominal: KnobSteps; high: KnobSteps },
  target: KnobSteps,
  shift: KnobSteps,
  { floor, ceiling }: { floor: KnobSteps; ceiling: KnobSteps },
): Resistance {
  if (call.kind === 'byFeel') {
    // Riders who choose keep their width on the far side of the target.
    const low = target > after.nominal ? target : Math.min(after.low, target)
    const high = target > after.nominal ? Math.max(after.high, target) : target
    return { kind: 'byFeel', from: low - shift, to: high - shift }
  }
  const steps = target - after.nominal
  const low = Math.min(target, Math.max(floor, after.low + steps))
  const high = Math.max(target, Math.min(ceiling, after.high + steps))
  const range: Resistance = { kind: 'total', from: low - shift, to: high - shift }
  return low === high ? range : { ...range, aim: target - shift }
}
