import type { Plan } from '#engine/leading/led.ts'
import { piecesOf, rideTimeAt } from '#engine/rehearsal/course.ts'
import { shakyLegs } from '#engine/rehearsal/courses.ts'
import { backFrom, blockAt, nextBlockFrom } from '#engine/rehearsal/jumps.ts'
import { placeAt } from '#engine/rehearsal/ridePlace.ts'
import { rideScore } from '#engine/rehearsal/rideScore.ts'
import { markShaky, unmarkShaky } from '#plan/commands/markShaky.ts'
import type { AppState, AppStore } from '#store/state.ts'
import type { Seconds } from '#units/units.ts'
import type { Deck, Hand } from './deck.ts'
import { createFrames, type Frames } from './frames.ts'
import { markHere } from './marking.ts'
import { playedOf, type RehearsalEvent, rehearsedAfter, unopened, type Way } from './rehearsalState.ts'
import { createSpeaker } from './speaker.ts'

export type Rehearsal = ReturnType<typeof createRehearsal>

/**
 * Plays the ride that is shown, and goes with it when it changes: the place in the music stays, blocks
 * move around it. What it is after each thing that happens is said by `rehearsalState.ts`; here are
 * only the player, the voice, and the store. Times are those of the ride clock.
 */
export function createRehearsal(store: AppStore, deck: Deck) {
  let state = unopened(planOf(store.getState()))
  const listeners = new Set<() => void>()
  const speaker = createSpeaker(store)
  const frames: Frames = createFrames(() => state.shown.phase === 'playing')

  const become = (event: RehearsalEvent) => {
    state = rehearsedAfter(state, event)
  }
  const tell = () => {
    for (const listener of listeners) listener()
    frames.wake()
  }
  const send = (event: RehearsalEvent) => {
    become(event)
    tell()
  }

  const hand: Hand = {
    onTick: (at) => {
      const { plan, course, spokenTo } = state
      if (plan) for (const { from, to } of piecesOf(course, spokenTo, at)) speaker.played(plan, from, to)
      become({ kind: 'heard', at })
    },
    onEnd: () => {
      speaker.hush()
      send({ kind: 'ended' })
    },
    onTaken: (at) => {
      speaker.hush()
      send({ kind: 'stopped', at })
    },
    onFiles: () => follow(state.plan),
  }

  const habits = () => store.getState().rehearsalHabits
  const scoreOf = (plan: Plan) => rideScore(plan, state.course, { isThere: deck.isThere, clickOver: habits().click, ticks: habits().ticks })

  async function playFrom(at: Seconds, plan = state.plan): Promise<void> {
    if (!plan) return
    deck.stop(hand)
    speaker.hush()
    send({ kind: 'started', plan, at, waits: habits().waits })
    if (state.shown.phase !== 'opening') return
    const { turn, from } = state
    const plays = await deck.play(hand, scoreOf(plan), from, habits().speed)
    if (turn === state.turn) send({ kind: 'begun', turn, plays })
  }

  function pause(): void {
    speaker.hush()
    send({ kind: 'stopped', at: deck.stop(hand) })
  }

  function close(): void {
    deck.stop(hand)
    speaker.hush()
    send({ kind: 'closed' })
  }

  function timeAt(timestamp?: number): Seconds {
    const at = deck.heardAt(hand, timestamp)
    return at === null ? state.standing : rideTimeAt(state.course, at)
  }

  const isRunning = () => state.shown.phase === 'playing' || state.shown.phase === 'opening'
  const go = (at: Seconds) => (isRunning() ? void playFrom(at) : send({ kind: 'went', at }))

  function follow(plan: Plan | null): void {
    const { open, phase } = state.shown
    const changed = (at: Seconds | null) => become({ kind: 'changed', plan, at, waits: habits().waits })
    if (open && phase === 'playing' && plan && plan.ride.id === state.plan?.ride.id)
      deck.follow(hand, (at) => {
        changed(at)
        return { score: scoreOf(plan), at: state.from }
      })
    else changed(null)
    if (!open) return
    if (!state.shown.open) {
      deck.stop(hand)
      speaker.hush()
    }
    if (state.shown.phase === 'opening') void playFrom(state.standing)
    else tell()
  }

  return {
    snapshot: () => state.shown,
    subscribe: (listener: () => void) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    /** Every frame while it plays. */
    frames,
    /** The moment of the ride clock that is heard at a timestamp of the page, or now; where it stands while nothing plays. */
    timeAt,
    plan: () => state.plan,
    /** The block that is ridden now; null between blocks. */
    blockNow: (): string | null => (state.plan && blockAt(state.plan, timeAt())?.block.id) ?? null,
    /** Opens the bar at a moment, without playing. */
    open: (at: Seconds) => send({ kind: 'opened', plan: planOf(store.getState()), at }),
    playFrom: (at: Seconds) => playFrom(at, planOf(store.getState())),
    /** Plays, or stops where it is. */
    toggle: () => (isRunning() ? pause() : void playFrom(state.standing)),
    pause,
    /** Elsewhere in the ride: on from there where it plays, ready there where it does not. A course through something else is left. */
    seek: (at: Seconds) => {
      become({ kind: 'wayChosen', way: { kind: 'ride' } })
      go(at)
    },
    next: () => {
      const { plan } = state
      if (!plan) return
      const { way } = state.shown
      const at = timeAt()
      const leg = way.kind === 'shaky' ? shakyLegs(plan).find(({ from }) => from > at) : undefined
      if (way.kind === 'block') become({ kind: 'wayChosen', way: { kind: 'ride' } })
      go(leg?.from ?? nextBlockFrom(plan, at))
    },
    back: () => {
      const { plan } = state
      if (!plan) return
      const { way } = state.shown
      go(way.kind === 'block' ? (playedOf(plan, way)?.from ?? 0) : backFrom(plan, timeAt()))
    },
    /** The block that is ridden again and again, or on with the ride after it. */
    toggleRepeat: () => {
      const { plan } = state
      if (!plan) return
      const block = blockAt(plan, timeAt())
      const way: Way =
        state.shown.way.kind === 'block' || !block
          ? { kind: 'ride' }
          : { kind: 'block', blockId: block.block.id, round: block.set?.round ?? 1 }
      become({ kind: 'wayChosen', way })
      // The music goes on where it is: only what comes after the block is another thing.
      if (state.shown.phase === 'playing') follow(plan)
      else tell()
    },
    /** Writes a mark into the song that plays. False where no song with beats does. */
    mark: (label: string, timestamp?: number): boolean => {
      const place = state.plan && placeAt(state.plan, timeAt(timestamp))
      return place?.kind === 'section' && markHere(store, place.sectionId, place.songSecond, label, 'eight') !== null
    },
    playShaky: () => {
      const [first] = state.plan ? shakyLegs(state.plan) : []
      if (!first) return
      become({ kind: 'wayChosen', way: { kind: 'shaky' } })
      void playFrom(first.from)
    },
    /** Marks the block that is ridden as shaky, or takes its mark away. False between blocks, and where the ride cannot be changed. */
    toggleShaky: (timestamp?: number): boolean => {
      const { ride, run } = store.getState()
      const blockId = state.plan && blockAt(state.plan, timeAt(timestamp))?.block.id
      if (!ride || !blockId) return false
      return run(ride.shaky?.includes(blockId) ? unmarkShaky(ride, { blockId }) : markShaky(ride, { blockId }))
    },
    close,
    /** Goes with the ride and the habits of the store until told to stop, which ends the rehearsal. */
    attend: () => {
      const leave = store.subscribe((now, before) => {
        const { plan } = state
        if (now.previewing === null && (now.shown !== plan?.ride || now.shownReport !== plan?.report)) follow(planOf(now))
        const [has, had] = [now.rehearsalHabits, before.rehearsalHabits]
        if (has === had) return
        if (has.speed !== had.speed) deck.setRate(hand, has.speed)
        if (has.click !== had.click || has.ticks !== had.ticks || has.waits !== had.waits) follow(state.plan)
        if (!has.speaks && had.speaks) speaker.hush()
      })
      return () => {
        leave()
        close()
      }
    },
  }
}

const planOf = ({ shown, shownReport }: AppState): Plan | null => (shown && shownReport ? { ride: shown, report: shownReport } : null)
