import type { Facts } from '#engine/findings/facts.ts'
import { fix, playsOf } from '#engine/findings/finding.ts'
import { totalRoom } from '#engine/findings/totalRoom.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Limits } from '#plan/ledger/limits.ts'
import { playCall, standingAt } from '#plan/ledger/playCall.ts'
import { shiftOfRound } from '#plan/ledger/roundShift.ts'
import { turnedBy } from '#plan/ledger/turnedBy.ts'
import type { Block, ByFeel, Resistance, Total } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { KnobSteps } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'

/** How far a call is past a rule's line, from the states before and after it and the call of its round; above 0 is past it. */
export type Excess = (before: LedgerState, after: LedgerState, call?: Resistance) => KnobSteps

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
  const now = excess?.(ledger.before, ledger.after, facts.ledger.lines[index]!.call)
  if (excess && set && set.set.rounds > 1 && worstRound(facts, index, call, excess) >= now!) return undefined
  return callFix(block, ...turnWords(facts, block, steps), call)
}

/** What a turn of the knob is called as a repair, and once done. */
export function turnWords({ ride }: Facts, block: Block, steps: KnobSteps): [label: Said, done: Said] {
  const size = knobSize(Math.abs(steps), ride.bike)
  const here = quotedItem(block)
  return steps > 0
    ? [say('checks.add', { size }), say('checks.added', { size, block: here })]
    : [say('checks.takeOff', { size }), say('checks.tookOff', { size, block: here })]
}

/** Every round of a part may ask for the same call: it is played through once. */
const played = new WeakMap<Facts, Map<string, Map<Excess, KnobSteps>>>()

/** The set played through with another call for one part: the furthest any round of that part is past the line. */
function worstRound(facts: Facts, index: number, restated: Resistance, excess: Excess): KnobSteps {
  const known = played.get(facts) ?? new Map<string, Map<Excess, KnobSteps>>()
  played.set(facts, known)
  const key = `${facts.blocks[index]!.block.id} ${JSON.stringify(restated)}`
  const byLine = known.get(key) ?? new Map<Excess, KnobSteps>()
  known.set(key, byLine)
  const worst = byLine.get(excess) ?? playThrough(facts, index, restated, excess)
  byLine.set(excess, worst)
  return worst
}

function playThrough({ blocks, ledger }: Facts, index: number, restated: Resistance, excess: Excess): KnobSteps {
  const { block, set } = blocks[index]!
  let i = index
  while (blocks[i - 1]?.set?.set === set!.set) i--
  let standing = standingAt(ledger.lines[i]!.entry.before)
  let worst = Number.NEGATIVE_INFINITY
  for (let played = blocks[i]; played?.set?.set === set!.set; played = blocks[++i]) {
    const isIt = played.block.id === block.id
    const { after, call, next } = playCall(standing, isIt ? restated : played.block.resistance, played.set, ledger.limits)
    if (isIt) worst = Math.max(worst, excess(standing.state, after, call))
    standing = next
  }
  return worst
}

/** States a total in place of a played block's call. */
export function totalFix({ blocks }: Facts, index: number, total: KnobSteps, label: Said, done: Said): Fix {
  const { block, set } = blocks[index]!
  const stated = total - (set ? shiftOfRound(set.set, set.round) : 0)
  return callFix(block, label, done, { kind: 'total', from: stated, to: stated })
}

/** The same with the total as its name. */
export function statedFix(facts: Facts, index: number, total: KnobSteps): Fix {
  const { stepsPerUnit } = facts.ride.bike
  const block = quotedItem(facts.blocks[index]!.block)
  return totalFix(
    facts,
    index,
    total,
    say('checksKnob.callTotal', { total, stepsPerUnit }),
    say('checksKnob.calledTotal', { block, total, stepsPerUnit }),
  )
}

export function callFix({ id }: Block, label: Said, done: Said, resistance: Resistance): Fix {
  return fix(label, done, (ride) => editBlock(ride, id, (block) => ({ ...block, resistance })))
}

/**
 * A block's call reworded to arrive at a nominal total, in the kind it has. Where a set plays
 * the block again, a change would add up round by round, so there it becomes a total.
 */
function landingCall({ blocks, ledger }: Facts, index: number, target: KnobSteps): Resistance | undefined {
  const { block, set } = blocks[index]!
  const { call, entry, reached } = ledger.lines[index]!
  const stated = block.resistance
  const shift = set ? shiftOfRound(set.set, set.round) : 0
  switch (stated.kind) {
    case 'allOff':
      return undefined
    case 'keep':
    case 'change': {
      const checkpoint = checkpointOf(stated)
      if (set && set.set.rounds > 1) return { kind: 'total', from: target - shift, to: target - shift, ...(checkpoint && { checkpoint }) }
      const given = call.kind === 'change' ? call.steps : 0
      const own = stated.kind === 'change' ? stated.steps : 0
      return turnedBy(stated, own + target - entry.before.nominal - given)
    }
    case 'total':
      return movedTotal(stated, reached, target, shift, ledger.limits)
    case 'byFeel':
      return nearTotal(stated, reached, target, shift)
  }
}

/** The range as a whole moved to where the target is what it aims at, as far as the knob goes. */
function movedTotal(
  call: Total,
  { low, nominal, high }: LedgerState,
  target: KnobSteps,
  shift: KnobSteps,
  { floor, ceiling }: Limits,
): Total {
  const { aim: _aim, ...rest } = call
  const steps = target - nominal
  const from = Math.min(target, Math.max(floor, (low ?? nominal) + steps)) - shift
  const to = Math.max(target, Math.min(ceiling, (high ?? nominal) + steps)) - shift
  return from === to ? { ...rest, from, to } : { ...rest, from, to, aim: target - shift }
}

/** Riders who choose keep their width on the far side of the target. */
function nearTotal(call: ByFeel, { low, nominal, high }: LedgerState, target: KnobSteps, shift: KnobSteps): ByFeel {
  if (call.orMore) return { ...call, from: target - shift, to: target - shift }
  const from = target > nominal ? target : Math.min(low ?? nominal, target)
  const to = target > nominal ? Math.max(high ?? nominal, target) : target
  return { ...call, from: from - shift, to: to - shift }
}
