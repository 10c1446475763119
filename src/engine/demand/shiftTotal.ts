import type { PlayedBlock } from '#engine/played.ts'
import { editBlocksOf, editSections, patched } from '#plan/edits.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import { sameState } from '#plan/ledger/ledgerState.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { playCall, type Standing } from '#plan/ledger/playCall.ts'
import { callOfRound, NO_CARRY } from '#plan/ledger/roundShift.ts'
import { turnedBy } from '#plan/ledger/turnedBy.ts'
import type { Change, Keep, Resistance, Ride, Total } from '#plan/model.ts'
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
  if (call.kind === 'total') {
    if (call.from === call.to) return [patched(call, { from: target, to: target, aim: undefined })]
    return [{ ...call, from: call.from + steps, to: call.to + steps, aim: target }]
  }
  if (call.kind !== 'byFeel') return [...relative, statedTotal(target, call)]
  if (call.orMore) return [{ ...call, from: target, to: target }]
  // Riders come from below when it gets heavier: the near end of the range is where they stop.
  const range = steps > 0 ? { from: target, to: Math.max(target, call.to) } : { from: Math.min(target, call.from), to: target }
  return [{ kind: 'byFeel', ...range }]
}

/** A total in place of another call, with where that one says riders should be. */
function statedTotal(total: KnobSteps, call: Resistance): Total {
  const checkpoint = checkpointOf(call)
  return { kind: 'total', from: total, to: total, ...(checkpoint && { checkpoint }) }
}

/** The call of a block that follows, worded so that it lands where it did. */
function heldCall(followers: readonly PlayedBlock[], blocks: readonly PlayedBlock[], blockId: string, steps: KnobSteps): Resistance | null {
  const call = followers[0]!.block.resistance
  if (call.kind === 'allOff') return call
  if (call.kind === 'total' && (call.aim !== undefined || call.from === call.to)) return call
  if (call.kind === 'byFeel' && call.orMore) return call
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
  return statedTotal(nominal, call)
}

const addedTo = (call: Keep | Change, steps: KnobSteps): Resistance => turnedBy(call, steps + (call.kind === 'keep' ? 0 : call.steps))

/** Plays the restated calls through until riders stand where they stood, and compares every nominal total. */
function keepsTheRest(ride: Ride, blocks: readonly PlayedBlock[], restated: Restated, blockId: string, steps: KnobSteps): boolean {
  const limits = limitsOf(ride)
  const own = playedOf(blocks, blockId)
  const first = own[0]!.index
  const last = own.at(-1)!.index
  let standing: Standing = { state: blocks[first]!.ledger.before, carry: carryBefore(blocks, first) }
  for (let i = first; i < blocks.length; i++) {
    const { block, set, ledger } = blocks[i]!
    const { after, under, over, next } = playCall(standing, restated.get(block.id) ?? block.resistance, set, limits)
    const wanted = ledger.after.nominal + (block.id === blockId ? steps : 0)
    if (after.nominal !== wanted) return false
    if (restated.has(block.id) && (under > 0 || over > 0)) return false
    standing = next
    if (i > last && sameState(after, ledger.after)) return true
  }
  return true
}

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
