import type { Limits } from '#plan/ledger/limits.ts'
import { playCall, type Standing } from '#plan/ledger/playCall.ts'
import { turnedBy } from '#plan/ledger/turnedBy.ts'
import type { Change, Keep, Resistance, SetBlock } from '#plan/model.ts'
import { wholeStep } from '#plan/tidyBlock.ts'
import type { KnobSteps } from '#units/units.ts'
import { type Reading, readCheckpoint, readRange } from './reading.ts'

/** The calls of a set's parts on another scale, and what each round adds there. */
interface Rounds {
  calls: Resistance[]
  perRound: KnobSteps
}

/** How riders come to a set, and what both scales allow. */
export interface Entering {
  was: Standing
  is: Standing
  limits: { was: Limits; is: Limits }
  reading: Reading
}

/**
 * A set of several rounds on another scale. Its parts say the same in every round, and a round adds whole steps: where
 * rounds climb by what is no whole step there, they drift from what they were. They are then put so that the first is as
 * far off on one side as the last on the other.
 */
export function roundsOnScale(set: SetBlock, entering: Entering): Rounds {
  const anchor = set.parts.findIndex(({ resistance }) => !isRelative(resistance))
  const { calls, perRound } = anchor < 0 ? climbing(set, entering) : anchored(set, anchor, entering)
  const drift = halfDrift(set.rounds, entering.reading.change(addedIn(set)), perRound)
  return { calls: calls.map((call) => readCheckpoint(call, (total) => entering.reading.total(total) + drift)), perRound }
}

const addedIn = (set: SetBlock): KnobSteps => Math.round(set.perRound?.steps ?? 0)

/** Whether the end of the knob or a checkpoint keeps riders from where the call would bring them. */
const isHeld = ({ wanted, after }: PartStand): boolean => after !== wanted

/** How far the first round has to be off so that the last is no further, where each adds other than it should. */
const halfDrift = (rounds: number, exact: number, whole: number): number => ((rounds - 1) / 2) * (exact - whole)

export const isRelative = (call: Resistance): call is Keep | Change => call.kind === 'keep' || call.kind === 'change'
const ownSteps = (call: Keep | Change): KnobSteps => (call.kind === 'change' ? call.steps : 0)
/** The very call where it comes to what it came to. */
export const turnedTo = (call: Keep | Change, steps: KnobSteps) => (steps === ownSteps(call) ? call : turnedBy(call, steps))
/** What a round adds is added at its first change, which then is one even where it comes to nothing by itself. */
const turnedInRounds = (call: Change, steps: KnobSteps, perRound: KnobSteps) =>
  steps === 0 && perRound !== 0 ? { ...call, steps } : turnedTo(call, steps)

/** Where the call of a part alone is meant to bring riders, and where they are after it. */
interface PartStand {
  wanted: KnobSteps
  after: KnobSteps
}

/** The places of the first two rounds, part by part: the second begins where the first ended, as all later ones do. */
export function placesOf(set: SetBlock, from: Standing, limits: Limits): [first: PartStand[], second: PartStand[]] {
  let standing = from
  const placesIn = (round: number) =>
    set.parts.map(({ resistance }): PartStand => {
      const { nominal } = standing.state
      const { call, after, next } = playCall(standing, resistance, { set, round }, limits)
      standing = next
      const wanted = isRelative(call) ? nominal + ownSteps(call) : after.nominal
      return { wanted, after: after.nominal }
    })
  return [placesIn(1), placesIn(2)]
}

/**
 * A set of changes alone goes on from where riders come in, and ends where the next round begins: rounded is what a whole
 * round climbs by, and inside it the total of every part but the last.
 */
function climbing(set: SetBlock, { was, is, reading }: Entering): Rounds {
  const calls = set.parts.map(({ resistance }) => resistance as Keep | Change)
  const last = calls.findLastIndex(({ kind }) => kind === 'change')
  const off = is.state.nominal - reading.total(was.state.nominal)
  const added = reading.change(addedIn(set))
  const exact = reading.change(calls.reduce((sum, call) => sum + ownSteps(call), 0)) + added
  const { climb, perRound } = nearestClimb(exact, added, set.rounds, off)
  // Riders who start from elsewhere stay as far off as they are: made up for in one round, it would be in all.
  const drift = halfDrift(set.rounds, exact, climb) + (Math.abs(off) > 1 ? off : 0)
  let old = was.state.nominal
  let now = is.state.nominal
  const read = calls.map((call, part) => {
    if (call.kind === 'keep') return call
    old += call.steps
    const total = part === last ? is.state.nominal + climb - perRound : wholeStep(reading.total(old) + drift)
    const steps = total - now
    now = total
    return turnedInRounds(call, steps, perRound)
  })
  return { calls: read, perRound }
}

interface Climb {
  /** What a round ends higher than the one before. */
  climb: KnobSteps
  /** The part of it that is no part's own. */
  perRound: KnobSteps
}

/**
 * Whole steps next to what a round climbs by and adds with which the end of no round is far off, for riders who come in off
 * by so much. The first round adds nothing.
 */
function nearestClimb(exact: number, added: number, rounds: number, off: number): Climb {
  const furthest = ({ climb, perRound }: Climb) => {
    const start = off - (perRound - added)
    return Math.max(Math.abs(start + climb - exact), Math.abs(start + rounds * (climb - exact)))
  }
  const near = (value: number) => [wholeStep(value), Math.floor(value) + 0, Math.ceil(value) + 0]
  const choices = near(added).flatMap((perRound) => near(exact).map((climb): Climb => ({ climb, perRound })))
  return choices.reduce((best, one) => (furthest(one) < furthest(best) - 1e-9 ? one : best))
}

/** A set in which something is stated: from there on every part has its own total in a round, and the next round begins where the last part is. */
function anchored(set: SetBlock, anchor: number, { was, is, limits, reading }: Entering): Rounds {
  const [first, second] = placesOf(set, was, limits.was)
  const added = reading.change(addedIn(set))
  const perRound = wholeStep(added)
  const drift = halfDrift(set.rounds, added, perRound)
  const total = (steps: KnobSteps) => reading.total(steps) + drift
  const calls = set.parts.map(({ resistance }) => resistance)
  let now = 0
  for (const [part, call] of calls.entries()) {
    if (part < anchor) continue
    const before = now
    now = call.kind === 'allOff' ? limits.is.floor : wholeStep(total(first[part]!.after))
    if (call.kind === 'total' || call.kind === 'byFeel') calls[part] = readRange(call, total)
    if (call.kind === 'change') calls[part] = turnedInRounds(call, wholeStep(total(first[part]!.wanted)) - before, perRound)
    if (call.kind === 'keep' && part > 0 && first[part]!.after === first[part - 1]!.after) now = before
  }
  // The parts before are entered from outside once, and from the end of the set in every later round.
  let outside = is.state.nominal
  let inside = now
  let adds = perRound
  for (const [part, call] of calls.slice(0, anchor).entries()) {
    let turns = 0
    let added = 0
    if (call.kind === 'change') {
      added = adds
      const wanted = [reading.total(first[part]!.wanted) - outside, total(second[part]!.wanted) - inside - added] as const
      const isTorn = Math.abs(wanted[0] - wanted[1]) > 1
      turns = wholeStep(isTorn ? wanted[1] : (wanted[0] + wanted[1]) / 2)
      calls[part] = turnedInRounds(call, turns, perRound)
      adds = 0
    }
    outside = isHeld(first[part]!) ? wholeStep(reading.total(first[part]!.after)) : outside + turns
    inside = isHeld(second[part]!) ? wholeStep(total(second[part]!.after)) : inside + turns + added
  }
  return { calls, perRound }
}
