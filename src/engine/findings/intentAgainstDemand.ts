import { paceRange } from '#engine/cadence/paceRange.ts'
import type { BlockDemand } from '#engine/demand/blockDemand.ts'
import { demandAt } from '#engine/demand/demandOfBlock.ts'
import { apartRuns, apartWithin, gapPieces } from '#engine/demand/intentGap.ts'
import { quadraticAt } from '#engine/demand/quadratic.ts'
import { playedOf, type Restated, restate, shiftTotal } from '#engine/demand/shiftTotal.ts'
import { asPlanned, type Closing, type ClosingSetup, effortHelps, stepsToClose, type Tried } from '#engine/demand/stepsToClose.ts'
import { knobSize } from '#engine/ledger/knobSize.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix, RiderReport } from '#engine/report.ts'
import { quotedItem, riderInSentence } from '#plan/names.ts'
import type { Effort, Rpm } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, fix, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'
import { turnWords } from './fixes/resistanceFix.ts'
import { totalRoom } from './totalRoom.ts'

/**
 * Where the bike asks the reference rider for clearly more or less than the plan, for longer
 * than a moment. One finding a block, at the first time it is played; the whole steps that
 * close it, or what keeps them from it.
 */
export function intentAgainstDemand(facts: Facts): Finding[] {
  const rider = facts.riders.find(({ reference }) => reference)
  if (!rider) return []
  const apart = longApart(facts, rider)
  const seen = new Set<string>()
  return facts.blocks.flatMap((played) => {
    const { id } = played.block
    if (!apart.has(played.index) || seen.has(id)) return []
    seen.add(id)
    return [atBlock(facts, played.index, notice(facts, played, rider))]
  })
}

/** Played blocks that belong to an unbroken stretch apart long enough to matter. */
function longApart({ blocks, rules }: Facts, { demand }: RiderReport): ReadonlySet<number> {
  const apart = blocks.map((played, index) => {
    // What is planned on a stopped wheel or off the bike is no load on the knob.
    const asked = played.cadence.kind === 'still' ? null : demand[index]
    return { index, apart: asked ? apartWithin(gapPieces(played, asked.pieces), rules.intentGap) : [] }
  })
  // A stretch of just the limit must not tip over it by a rounding error of the beat.
  const long = apartRuns(apart).filter(({ from, to }) => to - from > rules.intentGapSeconds + 1e-6)
  return new Set(long.flatMap((run) => run.blocks))
}

function notice(facts: Facts, played: PlayedBlock, { rider, demand }: RiderReport): Noticed {
  const { ride, rules, blocks } = facts
  const asked = demand[played.index]!
  const rounds = playedOf(blocks, played.block.id)
  const setup: ClosingSetup = { ride, rider, roomOf: (one) => totalRoom(facts, one), rules }
  const here = asPlanned(rounds, setup)
  const closing = stepsToClose(rounds, here, setup)
  const calls = closing.steps === 0 ? null : shiftTotal(ride, blocks, played.block.id, closing.steps)
  return {
    rule: 'intentAgainstDemand',
    severity: 'warning',
    text: say('checksKnob.intentAgainstDemand', {
      block: quotedItem(played.block),
      at: knobSize(played.ledger.after.nominal, ride.bike),
      fromBase: ride.datum === 'base',
      rpm: paceOf(played),
      rider: riderInSentence(rider),
      estimated: estimated(asked),
      planned: inHalves(played.block.effort.from, played.block.effort.to),
      change: closing.steps === 0 ? null : knobSize(closing.steps, ride.bike),
      reaches: toHalf(closing.demand),
      fix: closing.steps !== 0 && calls === null ? 'builds' : closing.closes ? 'closes' : 'short',
      reason: closing.closes ? null : reason(closing),
    }),
    why: COMMON_PRACTICE,
    amount: here.excess,
    fixes: () => [calls === null ? undefined : stepsFix(facts, played, closing, calls), effortFix(rounds, here, setup)],
  }
}

function paceOf({ cadence }: PlayedBlock): { from: Rpm; to: Rpm } | null {
  if (cadence.kind !== 'turning') return null
  const [from, to] = paceRange(cadence)
  return { from, to }
}

/** An effort is told to the nearest half: 5, 5½. */
const toHalf = (effort: Effort): Effort => Math.round(effort * 2) / 2

const inHalves = (from: Effort, to: Effort): { from: Effort; to: Effort } => ({ from: toHalf(from), to: toHalf(to) })

const estimated = ({ pieces }: BlockDemand): { from: Effort; to: Effort } =>
  inHalves(demandAt(pieces, pieces[0]!.from), quadraticAt(pieces.at(-1)!.effort, pieces.at(-1)!.to - pieces.at(-1)!.from))

/** What keeps whole steps from closing it, as the end of a sentence. */
function reason({ prevented, beyond, reason: ended }: Closing): Said {
  switch (prevented) {
    case 'step':
      return beyond === undefined ? say('checksKnob.stepTooCoarse') : say('checksKnob.nextStep', { level: toHalf(beyond) })
    case 'room':
      return ended!
    case 'calibration':
      return say('checksKnob.onlyGuessed')
    case 'ramp':
    case undefined:
      return say('checksKnob.rampApart')
  }
}

const stepsFix = (facts: Facts, { block }: PlayedBlock, { steps }: Closing, calls: Restated): Fix =>
  fix(...turnWords(facts, block, steps), (before) => restate(before, calls))

/** The other way to agree: plan what the bike asks, to the nearest half; only where that is nearer. */
function effortFix(rounds: readonly PlayedBlock[], here: Tried, setup: ClosingSetup): Fix | undefined {
  const { block } = rounds[0]!
  const moved = (effort: Effort): Effort => Math.min(10, Math.max(0, Math.round((effort + here.mean) * 2) / 2))
  const effort = { from: moved(block.effort.from), to: moved(block.effort.to) }
  if (!effortHelps(rounds, here, setup, effort)) return undefined
  return blockFix(block, say('checksKnob.planInstead', effort), say('checksKnob.plannedInstead', { block: quotedItem(block), ...effort }), {
    effort,
  })
}
