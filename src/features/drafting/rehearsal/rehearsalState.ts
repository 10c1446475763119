import type { Plan } from '#engine/leading/led.ts'
import { type Course, courseTimeOf, rideTimeAt } from '#engine/rehearsal/course.ts'
import { courseOfBlock, courseOfRide, shakyLegs } from '#engine/rehearsal/courses.ts'
import { placeAt, timeOf } from '#engine/rehearsal/ridePlace.ts'
import type { Seconds } from '#units/units.ts'

/** What is played: the ride, one block of it again and again, or its shaky blocks. */
export type Way = { kind: 'ride' } | { kind: 'block'; blockId: string; round: number } | { kind: 'shaky' }

/** Opening: the music is being read. Waiting: at the beginning of a section, for the leader. */
type Phase = 'still' | 'opening' | 'playing' | 'waiting' | 'ended'

/** What is drawn anew when it changes; where the ride is while it plays is asked frame by frame. */
export interface RehearsalState {
  /** Whether the ride is being rehearsed at all. */
  open: boolean
  phase: Phase
  way: Way
}

/** All there is to know of a rehearsal. Times are those of the ride clock, but where it says the course's. */
interface Rehearsed {
  shown: RehearsalState
  plan: Plan | null
  /** Where it stands while it does not play. */
  standing: Seconds
  course: Course
  /** The second of the course that playing was last asked to go on from. */
  from: Seconds
  /** The second of the course up to which cues have been said. */
  spokenTo: Seconds
  /** Another one for every start and stop: what was begun before it no longer counts. */
  turn: number
}

/** What happens to a rehearsal: by a hand, by the player, or because the ride has changed. */
export type RehearsalEvent =
  | { kind: 'opened'; plan: Plan | null; at: Seconds }
  | { kind: 'wayChosen'; way: Way }
  /** Playing is asked for. `waits`: it ends where the next section begins. */
  | { kind: 'started'; plan: Plan; at: Seconds; waits: boolean }
  /** The player plays, or cannot. */
  | { kind: 'begun'; turn: number; plays: boolean }
  /** The player has come to a second of the course. */
  | { kind: 'heard'; at: Seconds }
  | { kind: 'ended' }
  /** Stopped at a second of the course; null where nothing was heard. */
  | { kind: 'stopped'; at: Seconds | null }
  /** Elsewhere in the ride, without playing. */
  | { kind: 'went'; at: Seconds }
  /** The ride has changed; `at` is the second of the course that is heard, null where none is. */
  | { kind: 'changed'; plan: Plan | null; at: Seconds | null; waits: boolean }
  | { kind: 'closed' }

const RIDE: Way = { kind: 'ride' }
const CLOSED: RehearsalState = { open: false, phase: 'still', way: RIDE }

export const unopened = (plan: Plan | null): Rehearsed => ({
  shown: CLOSED,
  plan,
  standing: 0,
  course: { legs: [], repeats: false },
  from: 0,
  spokenTo: 0,
  turn: 0,
})

/** What a rehearsal is after something has happened to it; the very same object where that changes nothing. */
export function rehearsedAfter(state: Rehearsed, event: RehearsalEvent): Rehearsed {
  switch (event.kind) {
    case 'opened':
      return { ...state, plan: event.plan, standing: event.at, shown: { ...CLOSED, open: true } }
    case 'wayChosen':
      return shows(state, { way: event.way })
    case 'started':
      return started(state, event)
    case 'begun':
      return event.turn === state.turn ? shows(state, { phase: event.plays ? 'playing' : 'still' }) : state
    case 'heard':
      return event.at > state.spokenTo ? { ...state, spokenTo: event.at } : state
    case 'ended': {
      const standing = state.course.legs.at(-1)?.to ?? 0
      const waits = state.shown.way.kind === 'ride' && state.plan !== null && standing < state.plan.report.overall.total
      return shows({ ...state, standing }, { phase: waits ? 'waiting' : 'ended' })
    }
    case 'stopped':
      return shows(
        { ...state, turn: state.turn + 1, standing: event.at === null ? state.standing : rideTimeAt(state.course, event.at) },
        { phase: 'still' },
      )
    case 'went':
      return shows({ ...state, standing: event.at }, { phase: 'still' })
    case 'changed':
      return changed(state, event)
    case 'closed':
      return { ...state, turn: state.turn + 1, standing: 0, shown: CLOSED }
  }
}

const shows = (state: Rehearsed, change: Partial<RehearsalState>): Rehearsed => ({ ...state, shown: { ...state.shown, ...change } })

/** From the end of the ride it begins anew; where the way leads through nothing the bar stands open and nothing plays. */
function started(state: Rehearsed, { plan, at: asked, waits }: Extract<RehearsalEvent, { kind: 'started' }>): Rehearsed {
  const at = asked >= plan.report.overall.total ? 0 : Math.max(0, asked)
  const { course, from } = courseFrom(plan, state.shown.way, at, waits)
  const turn = state.turn + 1
  if (course.legs.length === 0) return { ...state, plan, course, turn, standing: at, shown: { ...CLOSED, open: true } }
  const standing = rideTimeAt(course, from)
  return { ...state, plan, course, from, standing, spokenTo: from, turn, shown: { ...state.shown, open: true, phase: 'opening' } }
}

/** The ride as it is now, with the same place in its music. Another ride ends the rehearsal. */
function changed(state: Rehearsed, { plan, at, waits }: Extract<RehearsalEvent, { kind: 'changed' }>): Rehearsed {
  const before = state.plan
  if (!state.shown.open || !before) return { ...state, plan }
  if (!plan || plan.ride.id !== before.ride.id) return { ...rehearsedAfter(state, { kind: 'closed' }), plan }
  const moved = (moment: Seconds) => timeOf(plan, placeAt(before, moment), moment)
  const way = isStillThere(plan, state.shown.way) ? state.shown.way : RIDE
  const next = shows({ ...state, plan }, { way })
  if (state.shown.phase !== 'playing') return { ...next, standing: moved(state.standing) }
  if (at === null) return next
  const { course, from } = courseFrom(plan, way, moved(rideTimeAt(state.course, at)), waits)
  return { ...next, course, from, spokenTo: Math.max(0, from - (at - state.spokenTo)) }
}

/** The course of a way from a moment on, and where on it that is. */
function courseFrom(plan: Plan, way: Way, moment: Seconds, waits: boolean): { course: Course; from: Seconds } {
  if (way.kind === 'ride') return { course: courseOfRide(plan, waits ? moment : null), from: moment }
  const course = way.kind === 'shaky' ? { legs: shakyLegs(plan), repeats: false } : courseOfBlock(playedOf(plan, way)!)
  return { course, from: courseTimeOf(course, moment) }
}

/** The block that is played again and again, as the ride has it. */
export const playedOf = ({ report }: Plan, { blockId, round }: Extract<Way, { kind: 'block' }>) =>
  report.blocks.find(({ block, set }) => block.id === blockId && (set?.round ?? 1) === round)

function isStillThere(plan: Plan, way: Way): boolean {
  if (way.kind === 'ride') return true
  if (way.kind === 'shaky') return shakyLegs(plan).length > 0
  const played = playedOf(plan, way)
  return played !== undefined && played.to > played.from
}
