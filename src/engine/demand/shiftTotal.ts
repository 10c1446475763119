import { applyCall } from '#engine/ledger/applyCall.ts'
import { limitsOf } from '#engine/ledger/limits.ts'
import type { LedgerState, PlayedBlock } from '#engine/report.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import { callOfRound, NO_CARRY } from '#plan/roundShift.ts'
import type { KnobSteps } from '#units/units.ts'

/** Calls to restate, by block id. */
export type Restated = ReadonlyMap<string, Resistance>

/**
 * The calls to restate so that one block, in every round it is played, is heavier by some
 * steps and no other block changes its nominal total: the block's own call, and the one after
 * it, which otherwise would carry the change on. Null where no such restating exists: a set
 * that builds by changes has no single total, and a call at the end of the knob has no room.
 */
export function shiftTotal(ride: Ride, blocks: readonly PlayedBlock[], blockId: string, steps: KnobSteps): Restated | null {
  const own = playedOf(blocks, blockId)
  if (own.length === 0 || steps === 0) return null
  const after = followersHeld(own, blocks, blockId, steps)
  if (after === null) return null
  for (const call of shiftedCalls(own, steps)) {
    const restated = new Map([...after, [blockId, call]])
    if (keepsTheRest(ride, blocks, restated, blockId, steps)) return restated
  }
  return null
}

const byId = new WeakMap<readonly PlayedBlock[], Map<string, PlayedBlock[]>>()

/** A block in every round it is played; sorted out once for each list of played blocks. */
export function playedOf(blocks: readonly PlayedBlock[], blockId: string): readonly PlayedBlock[] {
  let sorted = byId.get(blocks)
  if (sorted === undefined) {
    sorted = new Map()
    for (const played of blocks) {
      const known = sorted.get(played.block.id)
      if (known) known.push(played)
      else sorted.set(played.block.id, [played])
    }
    byId.set(blocks, sorted)
  }
  return sorted.get(blockId) ?? []
}

/** The calls of the blocks played right after it, restated where they must be; null where one cannot be. */
function followersHeld(own: readonly PlayedBlock[], blocks: readonly PlayedBlock[], blockId: string, steps: KnobSteps): Restated | null {
  const held = new Map<string, Resistance>()
  for (const id of new Set(own.map(({ index }) => blocks[index + 1]?.block.id))) {
    if (id === undefined || id === blockId) continue
    const followers = playedOf(blocks, id)
    const call = heldCall(followers, blocks, blockId, steps)
    if (call === null) return null
    if (call !== followers[0]!.block.resistance) held.set(id, call)
  }
  return held
}

/** The ride with those calls restated. */
export function restate(ride: Ride, calls: Restated): Ride {
  return editSections(ride, (section) =>
    editBlocksOf(section, (block) => {
      const resistance = calls.get(block.id)
      return resistance === undefined ? block : patched(block, { resistance })
    }),
  )
}

/** What rounds have added to a played block's stated total. */
const addedByRounds = ({ set }: PlayedBlock): KnobSteps => (set ? Math.round(set.set.perRound?.steps ?? 0) * (set.round - 1) : 0)

/** The stated total behind a block's nominal ones; null where its rounds do not agree on one. */
function statedNominal(played: readonly PlayedBlock[]): KnobSteps | null {
  const totals = played.map((one) => one.ledger.after.nominal - addedByRounds(one))
  return totals.every((total) => total === totals[0]) ? totals[0]! : null
}

/** Ways to word the heavier or lighter call, the nearest to the old wording first. */
function shiftedCalls(own: readonly PlayedBlock[], steps: KnobSteps): Resistance[] {
  const call = own[0]!.block.resistance
  const nominal = statedNominal(own)
  const relative = call.kind === 'keep' || call.kind === 'change' ? [addedTo(call, steps)] : []
  if (nominal === null) return relative
  const target = nominal + steps
  const total: Resistance = { kind: 'total', from: target, to: target }
  if (call.kind === 'total' && call.from !== call.to) return [{ ...call, from: call.from + steps, to: call.to + steps, aim: target }]
  if (call.kind !== 'byFeel') return [...relative, total]
  // Riders come from below when it gets heavier: the near end of the range is where they stop.
  const range = steps > 0 ? { from: target, to: Math.max(target, call.to) } : { from: Math.min(target, call.from), to: target }
  return [{ kind: 'byFeel', ...range }]
}

/** The call of a block that follows, worded so that it lands where it did. */
function heldCall(followers: readonly PlayedBlock[], blocks: readonly PlayedBlock[], blockId: string, steps: KnobSteps): Resistance | null {
  const call = followers[0]!.block.resistance
  if (call.kind === 'allOff') return call
  if (call.kind === 'total' && (call.aim !== undefined || call.from === call.to)) return call
  if (call.kind === 'keep' || call.kind === 'change') {
    const always = followers.every(({ index }) => blocks[index - 1]?.block.id === blockId)
    if (always) return addedTo(call, -steps)
  }
  const nominal = statedNominal(followers)
  if (nominal === null) return null
  if (call.kind === 'total') return { ...call, aim: nominal }
  if (call.kind === 'byFeel') {
    return steps > 0
      ? { ...call, from: Math.min(call.from, nominal), to: nominal }
      : { ...call, from: nominal, to: Math.max(call.to, nominal) }
  }
  return { kind: 'total', from: nominal, to: nominal }
}

type Relative = Extract<Resistance, { kind: 'keep' | 'change' }>

function addedTo(call: Relative, steps: KnobSteps): Resistance {
  if (call.kind === 'keep') return { kind: 'change', mode: 'exact', steps }
  const sum = call.steps + steps
  if (sum === 0 && call.checkpoint === undefined) return { kind: 'keep' }
  // "At least" and "if you have it" are about adding; a change turned round or to nothing is a plain one.
  const mode = Math.sign(sum) === Math.sign(call.steps) ? call.mode : 'exact'
  return { ...call, mode, steps: sum }
}

/** Plays the restated calls through until riders stand where they stood, and compares every nominal total. */
function keepsTheRest(ride: Ride, blocks: readonly PlayedBlock[], restated: Restated, blockId: string, steps: KnobSteps): boolean {
  const limits = limitsOf(ride)
  const own = playedOf(blocks, blockId)
  const first = own[0]!.index
  const last = own.at(-1)!.index
  let state = blocks[first]!.ledger.before
  let carry = carryBefore(blocks, first)
  for (let i = first; i < blocks.length; i++) {
    const { block, set, ledger } = blocks[i]!
    const stated = restated.get(block.id) ?? block.resistance
    const round = set && callOfRound(stated, set.set, set.round, carry)
    carry = round?.carry ?? NO_CARRY
    const { after, under, over } = applyCall(state, round?.call ?? stated, limits)
    const wanted = ledger.after.nominal + (block.id === blockId ? steps : 0)
    if (after.nominal !== wanted) return false
    if (restated.has(block.id) && (under > 0 || over > 0)) return false
    state = after
    if (i > last && sameState(state, ledger.after)) return true
  }
  return true
}

const sameState = (a: LedgerState, b: LedgerState): boolean => a.low === b.low && a.nominal === b.nominal && a.high === b.high

/** What the set's rounds had already added before a played part. */
function carryBefore(blocks: readonly PlayedBlock[], index: number): typeof NO_CARRY {
  const { set } = blocks[index]!
  let carry = NO_CARRY
  let start = index
  while (start > 0 && set && blocks[start - 1]!.set?.set === set.set) start--
  for (let i = start; i < index; i++) {
    const played = blocks[i]!
    carry = callOfRound(played.block.resistance, played.set!.set, played.set!.round, carry).carry
  }
  return carry
}
