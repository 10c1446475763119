import { paceRange } from '#engine/cadence/paceRange.ts'
import type { BlockDemand } from '#engine/demand/blockDemand.ts'
import { demandAt } from '#engine/demand/demandOfBlock.ts'
import { apartRuns, apartWithin, gapPieces } from '#engine/demand/intentGap.ts'
import { quadraticAt } from '#engine/demand/quadratic.ts'
import { playedOf, type Restated, restate, shiftTotal } from '#engine/demand/shiftTotal.ts'
import { asPlanned, type Closing, type ClosingSetup, effortHelps, stepsToClose, type Tried } from '#engine/demand/stepsToClose.ts'
import { amountOfKnob } from '#engine/ledger/amountOfKnob.ts'
import { sizeWords } from '#engine/ledger/settingWords.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix, RiderReport } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { Effort } from '#units/units.ts'
import type { Facts } from './facts.ts'
import { atBlock, COMMON_PRACTICE, fix, inQuotes, type Noticed } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'
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
  const { from, to } = played.block.effort
  const said = `${place(facts, played)} is about ${sayDemand(asked)} of 10 for the ${rider.name} and you ask for ${sayEfforts(from, to)}`
  return {
    rule: 'intentAgainstDemand',
    severity: 'warning',
    text: `${said}${advice(facts, closing, calls)}`,
    why: COMMON_PRACTICE,
    amount: here.excess,
    fixes: () => [calls === null ? undefined : stepsFix(facts, played, closing, calls), effortFix(rounds, here, setup)],
  }
}

/** "“climb”, 1½ turns at 70 rev/min". */
function place({ ride }: Facts, { block, cadence, ledger }: PlayedBlock): string {
  const total = ledger.after.nominal
  const base = ride.datum === 'base'
  const knob =
    base && total === 0 ? 'base' : `${amountOfKnob(Math.abs(total), ride.bike)}${base ? (total < 0 ? ' under base' : ' over base') : ''}`
  if (cadence.kind !== 'turning') return `${inQuotes(block)}, ${knob},`
  const [from, to] = paceRange(cadence)
  const pace = from === to ? formatNumber(from, 0) : `${formatNumber(from, 0)} to ${formatNumber(to, 0)}`
  return `${inQuotes(block)}, ${knob} at ${pace} rev/min,`
}

/** Effort to the nearest half: "5", "5½". */
const sayEffort = (effort: Effort): string => formatSetting(Math.round(effort * 2), 2)

/** "5", or "4 to 6" where a ramp makes it so. */
function sayEfforts(from: Effort, to: Effort): string {
  const [first, last] = [sayEffort(from), sayEffort(to)]
  return first === last ? first : `${first} to ${last}`
}

const sayDemand = ({ pieces }: BlockDemand): string =>
  sayEfforts(demandAt(pieces, pieces[0]!.from), quadraticAt(pieces.at(-1)!.effort, pieces.at(-1)!.to - pieces.at(-1)!.from))

function advice({ ride }: Facts, closing: Closing, calls: Restated | null): string {
  const { steps, closes, demand } = closing
  const size = sizeWords(Math.abs(steps), ride.bike)
  const move = steps > 0 ? `add ${size}` : `take ${size} off`
  if (steps !== 0 && calls === null) {
    return `; ${move} would bring it to ${sayEffort(demand)}, but the calls around it build on each other and have no single total to change.`
  }
  if (closes) return `; ${move}.`
  const reached = steps === 0 ? '' : `; ${move} to come to ${sayEffort(demand)}`
  return `${reached}; ${reason(closing)}.`
}

function reason({ prevented, beyond, reason: ended }: Closing): string {
  switch (prevented) {
    case 'step':
      return beyond === undefined
        ? 'one step of this bike is too coarse to meet it'
        : `the next step of this bike is already ${sayEffort(beyond)}`
    case 'room':
      return ended!
    case 'calibration':
      return 'beyond the calibrated points the watts are only a guess, so more steps say nothing'
    case 'ramp':
    case undefined:
      return 'effort and load do not rise and fall together here, so no single change meets both ends'
  }
}

function stepsFix({ ride }: Facts, { block }: PlayedBlock, { steps }: Closing, calls: Restated): Fix {
  const size = amountOfKnob(Math.abs(steps), ride.bike)
  const [label, done] = steps > 0 ? [`Add ${size}`, `Added ${size} to`] : [`Take ${size} off`, `Took ${size} off`]
  return fix(label, `${done} ${inQuotes(block)}`, (before) => restate(before, calls))
}

/** The other way to agree: plan what the bike asks, to the nearest half; only where that is nearer. */
function effortFix(rounds: readonly PlayedBlock[], here: Tried, setup: ClosingSetup): Fix | undefined {
  const { block } = rounds[0]!
  const moved = (effort: Effort): Effort => Math.min(10, Math.max(0, Math.round((effort + here.mean) * 2) / 2))
  const effort = { from: moved(block.effort.from), to: moved(block.effort.to) }
  if (!effortHelps(rounds, here, setup, effort)) return undefined
  const words = sayEfforts(effort.from, effort.to)
  return blockFix(block, `Plan ${words} instead`, `Set the effort of ${inQuotes(block)} to ${words}`, { effort })
}
