import { editSections, mapSame, patched, withItems } from '#plan/edits.ts'
import { applyCall, checkpointOf } from '#plan/ledger/applyCall.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import { standingAt } from '#plan/ledger/playCall.ts'
import { playItem } from '#plan/ledger/standingBefore.ts'
import { statedAs } from '#plan/ledger/statedAs.ts'
import { type Block, type Item, isSet, type Resistance, type Ride, type SetBlock } from '#plan/model.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import { readCheckpoint, readingOf, readRange, type Scale } from './reading.ts'
import { type Entering, isRelative, placesOf, roundsOnScale, turnedTo } from './roundsOnScale.ts'

/**
 * The ride in the steps of another scale. What is rounded are totals: riders are walked through all calls on both
 * scales, and a change becomes what leads from where they stand now to the nearest step of where it led, so that
 * no rounding adds up. The parts of a set are the same in every round (`roundsOnScale`). A stay stays one, except
 * before anything is called, where riders may start from elsewhere. What differs in nothing is the very same object.
 *
 * @param reading what a step of the one is on the other; a turn stays a turn unless given
 * @returns the ride with its bike and datum as they were. Cost: linear in what is played.
 */
export function onScale(ride: Ride, scale: Scale, reading = readingOf(ride, scale)): Ride {
  const limits = { was: limitsOf(ride), is: limitsOf(scale) }
  let entering: Entering = {
    was: standingAt(startOf(limits.was)),
    is: standingAt(startOf(limits.is)),
    limits,
    reading,
  }
  let isStart = true
  const read = <I extends Item>(item: I, change: (item: I) => I): I => {
    const next = change(item)
    entering = after(entering, item, next)
    isStart &&= partsOf(item).every(({ resistance }) => resistance.kind === 'keep')
    return next
  }
  const readBlock = (block: Block) => read(block, (it) => withCall(it, callOnScale(it.resistance, entering, isStart), entering))
  const readSet = (set: SetBlock) => {
    if (set.rounds > 1) return read(set, (it) => setOnScale(it, entering, isStart))
    return withRounds(set, mapSame(set.parts, readBlock), entering.reading.change(set.perRound?.steps ?? 0))
  }
  return editSections(ride, (section) =>
    withItems(
      section,
      mapSame(section.blocks, (item) => (isSet(item) ? readSet(item) : readBlock(item))),
    ),
  )
}

const partsOf = (item: Item): readonly Block[] => (isSet(item) ? item.parts : [item])

/** Both walked through an item, each as it is written there. */
function after(entering: Entering, before: Item, now: Item): Entering {
  const { was, is, limits } = entering
  return { ...entering, was: playItem(before, was, limits.was), is: playItem(now, is, limits.is) }
}

function callOnScale(call: Resistance, entering: Entering, isStart: boolean): Resistance {
  const { was, is, limits, reading } = entering
  const { total } = reading
  switch (call.kind) {
    case 'allOff':
      return call
    case 'byFeel':
      return readCheckpoint(readRange(call, total), total)
    case 'total': {
      const read = readCheckpoint(readRange(call, total), total)
      // Riders who do not come from quite where they came from would aim at another total of the range.
      const aim = wholeStep(total(applyCall(was.state, call, limits.was).after.nominal))
      return applyCall(is.state, read, limits.is).after.nominal === aim || aim < read.from || aim > read.to ? read : { ...read, aim }
    }
    case 'keep':
      return readCheckpoint(isStart ? turnedTo(call, wholeStep(total(was.state.nominal)) - is.state.nominal) : call, total)
    case 'change': {
      // From another start an offer would reach over all the way there: it is stated.
      if (isStart && call.mode !== 'exact' && isElsewhere(entering)) {
        const { checkpoint } = call
        const stated = statedAs(applyCall(was.state, call, limits.was).reached)
        return readCheckpoint({ ...readRange(stated, total), ...(checkpoint && { checkpoint }) }, total)
      }
      return readCheckpoint(turnedTo(call, wholeStep(total(was.state.nominal + call.steps)) - is.state.nominal), total)
    }
  }
}

/** Whether riders come from another total than they did. */
const isElsewhere = ({ was, is, reading }: Entering): boolean => is.state.nominal !== wholeStep(reading.total(was.state.nominal))

/** The block with another call, and the leader's own total read anew. */
const withCall = (block: Block, resistance: Resistance, { reading: { total } }: Entering): Block =>
  patched(block, { resistance, ownTotal: block.ownTotal === undefined ? undefined : wholeStep(total(block.ownTotal)) })

const withRounds = (set: SetBlock, parts: readonly Block[], perRound: number): SetBlock =>
  patched(set, { parts, perRound: set.perRound && { steps: wholeStep(perRound) } })

function setOnScale(set: SetBlock, entering: Entering, isStart: boolean): SetBlock {
  const stated = isStart ? withStart(set, entering) : set
  const { calls, perRound } = roundsOnScale(stated, entering)
  const parts = mapSame(set.parts, (part, index) => withCall(part, calls[index]!, entering))
  return withRounds(set, parts, perRound)
}

/**
 * A set that opens the ride, where riders start from elsewhere on the other scale: its first part states the total it
 * comes to, since a change would make up for the start in every round. Not where rounds climb by their changes, which no
 * total of one part can say.
 */
function withStart(set: SetBlock, entering: Entering): SetBlock {
  const [{ resistance }] = set.parts as [Block]
  if (!isElsewhere(entering) || !isRelative(resistance)) return set
  const [[one], [two]] = placesOf(set, entering.was, entering.limits.was)
  if (two!.wanted - one!.wanted !== Math.round(set.perRound?.steps ?? 0)) return set
  const checkpoint = checkpointOf(resistance)
  const total: Resistance = { kind: 'total', from: one!.wanted, to: one!.wanted, ...(checkpoint && { checkpoint }) }
  return { ...set, parts: set.parts.with(0, { ...set.parts[0]!, resistance: total }) }
}
