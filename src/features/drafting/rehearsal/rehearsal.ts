import type { Plan } from '#engine/leading/led.ts'
import { type Course, courseTimeOf, piecesOf, rideTimeAt } from '#engine/rehearsal/course.ts'
import { courseOfBlock, courseOfRide, shakyLegs } from '#engine/rehearsal/courses.ts'
import { backFrom, blockAt, nextBlockFrom } from '#engine/rehearsal/jumps.ts'
import { placeAt, timeOf } from '#engine/rehearsal/ridePlace.ts'
import { rideScore } from '#engine/rehearsal/rideScore.ts'
import { markShaky, unmarkShaky } from '#plan/commands/markShaky.ts'
import type { AppState, AppStore } from '#store/state.ts'
import type { Seconds } from '#units/units.ts'
import type { Deck, Hand } from './deck.ts'
import { createFrames, type Frames } from './frames.ts'
import { markHere } from './marking.ts'
import { createSpeaker } from './speaker.ts'

/** What is played: the ride, one block of it again and again, or its shaky blocks. */
type Way = { kind: 'ride' } | { kind: 'block'; blockId: string; round: number } | { kind: 'shaky' }

/** Opening: the music is being read. Waiting: at the beginning of a section, for the leader. */
type Phase = 'still' | 'opening' | 'playing' | 'waiting' | 'ended'

/** What is drawn anew when it changes; where the ride is while it plays is asked frame by frame. */
export interface RehearsalState {
  /** Whether the ride is being rehearsed at all. */
  open: boolean
  phase: Phase
  way: Way
}

export type Rehearsal = ReturnType<typeof createRehearsal>

const CLOSED: RehearsalState = { open: false, phase: 'still', way: { kind: 'ride' } }

/**
 * Plays the ride that is shown, and goes with it when it changes: the place in the music stays, blocks
 * move around it. Times are those of the ride clock.
 */
export function createRehearsal(store: AppStore, deck: Deck) {
  let state = CLOSED
  /** Where it stands while it does not play. */
  let standing: Seconds = 0
  let plan = planOf(store.getState())
  let course: Course = { legs: [], repeats: false }
  /** The second of the course up to which cues have been said. */
  let spokenTo: Seconds = 0
  /** Another one for every start and stop: what was begun before it no longer counts. */
  let turn = 0
  const listeners = new Set<() => void>()
  const speaker = createSpeaker(store)
  const frames: Frames = createFrames(() => state.phase === 'playing')

  const set = (next: Partial<RehearsalState>) => {
    state = { ...state, ...next }
    for (const listener of listeners) listener()
    frames.wake()
  }

  const hand: Hand = {
    onTick: (at) => {
      if (plan) for (const { from, to } of piecesOf(course, spokenTo, at)) speaker.played(plan, from, to)
      spokenTo = Math.max(spokenTo, at)
    },
    onEnd: () => {
      standing = course.legs.at(-1)?.to ?? 0
      speaker.hush()
      const waits = state.way.kind === 'ride' && plan !== null && standing < plan.report.overall.total
      set({ phase: waits ? 'waiting' : 'ended' })
    },
    onTaken: (at) => {
      turn++
      standing = rideTimeAt(course, at)
      speaker.hush()
      set({ phase: 'still' })
    },
    onFiles: () => follow(plan),
  }

  /** The course of a way from a moment on, and where on it that is. */
  function courseFrom(at: Plan, way: Way, moment: Seconds): { course: Course; from: Seconds } {
    const { waits } = store.getState().rehearsalHabits
    if (way.kind === 'ride') {
      const whole = courseOfRide(at, waits ? moment : null)
      return { course: whole, from: moment }
    }
    const next = way.kind === 'shaky' ? { legs: shakyLegs(at), repeats: false } : courseOfBlock(playedOf(at, way)!)
    return { course: next, from: courseTimeOf(next, moment) }
  }

  function scoreOf(at: Plan) {
    const { click, ticks } = store.getState().rehearsalHabits
    return rideScore(at, course, { isThere: deck.isThere, clickOver: click, ticks })
  }

  async function playFrom(moment: Seconds): Promise<void> {
    if (!plan) return
    deck.stop(hand)
    const at = moment >= plan.report.overall.total ? 0 : Math.max(0, moment)
    standing = at
    const next = courseFrom(plan, state.way, at)
    course = next.course
    if (course.legs.length === 0) {
      set({ open: true, phase: 'still', way: { kind: 'ride' } })
      return
    }
    standing = rideTimeAt(course, next.from)
    speaker.hush()
    spokenTo = next.from
    set({ open: true, phase: 'opening' })
    const mine = ++turn
    const plays = await deck.play(hand, scoreOf(plan), next.from, store.getState().rehearsalHabits.speed)
    if (mine === turn) set({ phase: plays ? 'playing' : 'still' })
  }

  function stop(): void {
    turn++
    const at = deck.stop(hand)
    if (at !== null) standing = rideTimeAt(course, at)
    speaker.hush()
  }

  function pause(): void {
    stop()
    set({ phase: 'still' })
  }

  function timeAt(timestamp?: number): Seconds {
    const at = deck.heardAt(hand, timestamp)
    return at === null ? standing : rideTimeAt(course, at)
  }

  const isRunning = () => state.phase === 'playing' || state.phase === 'opening'
  const go = (moment: Seconds) => {
    if (isRunning()) void playFrom(moment)
    else {
      standing = moment
      set({ phase: 'still' })
    }
  }

  /** The ride as it is now, with the same place in its music. */
  function follow(next: Plan | null): void {
    const before = plan
    plan = next
    if (!state.open || !before) return
    if (!next || next.ride.id !== before.ride.id) {
      close()
      return
    }
    const moved = (moment: Seconds) => timeOf(next, placeAt(before, moment), moment)
    const way = isStillThere(next, state.way) ? state.way : { kind: 'ride' as const }
    if (state.phase === 'playing') {
      deck.follow(hand, (at) => {
        const now = courseFrom(next, way, moved(rideTimeAt(course, at)))
        course = now.course
        spokenTo = Math.max(0, now.from - (at - spokenTo))
        return { score: scoreOf(next), at: now.from }
      })
      set({ way })
    } else if (state.phase === 'opening') {
      state = { ...state, way }
      void playFrom(moved(standing))
    } else {
      standing = moved(standing)
      set({ way })
    }
  }

  function close(): void {
    stop()
    standing = 0
    set(CLOSED)
  }

  return {
    snapshot: () => state,
    subscribe: (listener: () => void) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    /** Every frame while it plays. */
    frames,
    /** The moment of the ride clock that is heard at a timestamp of the page, or now; where it stands while nothing plays. */
    timeAt,
    plan: () => plan,
    /** The block that is ridden now; null between blocks. */
    blockNow: (): string | null => (plan && blockAt(plan, timeAt())?.block.id) ?? null,
    /** Opens the bar at a moment, without playing. */
    open: (at: Seconds) => {
      plan = planOf(store.getState())
      standing = at
      set({ ...CLOSED, open: true })
    },
    playFrom: (at: Seconds) => {
      plan = planOf(store.getState())
      return playFrom(at)
    },
    /** Plays, or stops where it is. */
    toggle: () => (isRunning() ? pause() : void playFrom(standing)),
    pause,
    /** Elsewhere in the ride: on from there where it plays, ready there where it does not. A course through something else is left. */
    seek: (at: Seconds) => {
      state = { ...state, way: { kind: 'ride' } }
      go(at)
    },
    next: () => {
      if (!plan) return
      const at = timeAt()
      const leg = state.way.kind === 'shaky' ? shakyLegs(plan).find(({ from }) => from > at) : undefined
      if (state.way.kind === 'block') state = { ...state, way: { kind: 'ride' } }
      go(leg?.from ?? nextBlockFrom(plan, at))
    },
    back: () => {
      if (!plan) return
      if (state.way.kind === 'block') return go(playedOf(plan, state.way)?.from ?? 0)
      go(backFrom(plan, timeAt()))
    },
    /** The block that is ridden again and again, or on with the ride after it. */
    toggleRepeat: () => {
      if (!plan) return
      const at = timeAt()
      const block = blockAt(plan, at)
      const way: Way =
        state.way.kind === 'block' || !block ? { kind: 'ride' } : { kind: 'block', blockId: block.block.id, round: block.set?.round ?? 1 }
      state = { ...state, way }
      // The music goes on where it is: only what comes after the block is another thing.
      if (state.phase === 'playing') follow(plan)
      else set({})
    },
    /** Writes a mark into the song that plays. False where no song with beats does. */
    mark: (label: string, timestamp?: number): boolean => {
      const place = plan && placeAt(plan, timeAt(timestamp))
      return place?.kind === 'section' && markHere(store, place.sectionId, place.songSecond, label, 'eight') !== null
    },
    playShaky: () => {
      if (!plan) return
      const [first] = shakyLegs(plan)
      if (!first) return
      state = { ...state, way: { kind: 'shaky' } }
      void playFrom(first.from)
    },
    /** Marks the block that is ridden as shaky, or takes its mark away. False between blocks, and where the ride cannot be changed. */
    toggleShaky: (timestamp?: number): boolean => {
      const { ride, run } = store.getState()
      const blockId = plan && blockAt(plan, timeAt(timestamp))?.block.id
      if (!ride || !blockId) return false
      return run(ride.shaky?.includes(blockId) ? unmarkShaky(ride, { blockId }) : markShaky(ride, { blockId }))
    },
    close,
    /** Goes with the ride and the habits of the store until told to stop, which ends the rehearsal. */
    attend: () => {
      const leave = store.subscribe((now, before) => {
        if (now.previewing === null && (now.shown !== plan?.ride || now.shownReport !== plan?.report)) follow(planOf(now))
        const [habits, had] = [now.rehearsalHabits, before.rehearsalHabits]
        if (habits === had) return
        if (habits.speed !== had.speed) deck.setRate(hand, habits.speed)
        if (habits.click !== had.click || habits.ticks !== had.ticks || habits.waits !== had.waits) follow(plan)
        if (!habits.speaks && had.speaks) speaker.hush()
      })
      return () => {
        leave()
        close()
      }
    },
  }
}

const planOf = ({ shown, shownReport }: AppState): Plan | null => (shown && shownReport ? { ride: shown, report: shownReport } : null)

const playedOf = ({ report }: Plan, { blockId, round }: Extract<Way, { kind: 'block' }>) =>
  report.blocks.find(({ block, set }) => block.id === blockId && (set?.round ?? 1) === round)

function isStillThere(plan: Plan, way: Way): boolean {
  if (way.kind === 'ride') return true
  if (way.kind === 'shaky') return shakyLegs(plan).length > 0
  const played = playedOf(plan, way)
  return played !== undefined && played.to > played.from
}
