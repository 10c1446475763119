import { snapMark } from '#engine/alignment/snapMark.ts'
import type { Plan } from '#engine/leading/led.ts'
import { songScore } from '#engine/rehearsal/songScore.ts'
import { songSecondAtOne } from '#engine/rehearsal/songsOf.ts'
import { quietSong } from '#plan/commands/markSong.ts'
import type { Section, Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { countAt, eightOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { AppStore } from '#store/state.ts'
import type { Counts, Seconds } from '#units/units.ts'
import type { Deck, Hand } from './deck.ts'
import { createFrames } from './frames.ts'
import { countMeant, type MarkStep, markHere } from './marking.ts'

interface HearingState {
  /** The section whose song is heard, or was. */
  sectionId: string | null
  phase: 'still' | 'opening' | 'playing'
  /** Whether the song's own file sounds; else its beats alone, beside whatever plays it elsewhere. */
  sounds: boolean
  /** Where a stretch to be kept quiet begins, once that was said. */
  quietFrom: Counts | null
}

export type SongHearing = ReturnType<typeof createSongHearing>

const NOTHING: HearingState = { sectionId: null, phase: 'still', sounds: false, quietFrom: null }

/**
 * One song of the ride by itself, with a click on every beat: the grid held against the music, and
 * marks tapped while it plays. Times are seconds of the song's file. A grid that is nudged meanwhile
 * moves the click at once and leaves the music alone.
 */
export function createSongHearing(store: AppStore, deck: Deck) {
  let state = NOTHING
  let standing: Seconds = 0
  let turn = 0
  /** The ride that is played from. */
  let followed = store.getState().shown
  const listeners = new Set<() => void>()
  const frames = createFrames(() => state.phase === 'playing')

  const set = (next: Partial<HearingState>) => {
    state = { ...state, ...next }
    for (const listener of listeners) listener()
    frames.wake()
  }
  const hand: Hand = {
    onEnd: () => {
      standing = 0
      set({ phase: 'still' })
    },
    onTaken: (at) => {
      turn++
      standing = at
      set({ phase: 'still' })
    },
    onFiles: () => follow(),
  }

  const sectionNow = (): Section | undefined => {
    const { shown } = store.getState()
    return shown && state.sectionId !== null ? findSection(shown, state.sectionId) : undefined
  }
  const isThere = ({ fingerprint }: Song) => fingerprint !== undefined && deck.isThere(fingerprint)

  function scoreOf(song: Song, { inCount = 0 }: Section) {
    const sounds = isThere(song)
    return songScore(song, inCount, { sounds, clicks: !sounds || store.getState().rehearsalHabits.click })
  }

  async function play(sectionId: string, from: Seconds): Promise<boolean> {
    if (state.sectionId !== sectionId) state = { ...NOTHING, sectionId }
    followed = store.getState().shown
    const section = sectionNow()
    const song = section?.song
    if (!section || !song) return false
    standing = from
    const sounds = isThere(song)
    set({ phase: 'opening', sounds })
    const mine = ++turn
    // What plays elsewhere plays at its own pace.
    const plays = await deck.play(hand, scoreOf(song, section), from, sounds ? store.getState().rehearsalHabits.speed : 1)
    if (mine !== turn) return false
    set({ phase: plays ? 'playing' : 'still' })
    return plays
  }

  function stop(): void {
    turn++
    standing = deck.stop(hand) ?? standing
    set({ phase: 'still' })
  }

  /** The song as it is now; the music goes on. */
  function follow(): void {
    if (state.phase === 'still') return
    followed = store.getState().shown
    const section = sectionNow()
    const { song } = section ?? {}
    if (!section || !song) {
      stop()
      return
    }
    deck.follow(hand, (at) => ({ score: scoreOf(song, section), at }))
    if (isThere(song) !== state.sounds) set({ sounds: isThere(song) })
  }

  const secondNow = (timestamp?: number): Seconds => deck.heardAt(hand, timestamp) ?? standing

  const snapped = (step: MarkStep, timestamp?: number): Counts | null => {
    const section = sectionNow()
    return section ? countMeant(section, secondNow(timestamp), step) : null
  }

  return {
    snapshot: () => state,
    subscribe: (listener: () => void) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    frames,
    play,
    stop,
    /** The second of the song that is heard at a timestamp of the page, or now; where it stands while nothing plays. */
    secondAt: secondNow,
    /** Elsewhere in the song. */
    seek: (sectionId: string, at: Seconds) => {
      if (state.phase === 'playing' && state.sectionId === sectionId) void play(sectionId, at)
      else {
        if (state.phase !== 'still') stop()
        standing = at
        set({ ...NOTHING, sectionId })
      }
    },
    /**
     * A one is heard at a timestamp, of a song that plays elsewhere: the first starts the clock at the
     * song's in-point, later ones set the nearest eight right.
     */
    oneNow: async (sectionId: string, timestamp: number, now: () => number) => {
      const { shown } = store.getState()
      const section = shown && findSection(shown, sectionId)
      const grid = section?.song?.grid
      if (!section || !grid) return
      const running = state.phase === 'playing' && state.sectionId === sectionId
      const { inCount = 0 } = section
      const heard = running ? countAt(grid, secondNow(timestamp)) : inCount
      const one = secondAt(grid, snapMark(heard, eightOf(grid), inCount))
      if (!running && !(await play(sectionId, one))) return
      const due = one + (now() - timestamp) / 1000
      deck.follow(hand, (_, ahead) => ({ score: scoreOf(section.song!, section), at: Math.max(0, due + ahead) }))
    },
    /** Writes a mark where the music is. The count it stands on; null where it cannot be written. */
    mark: (label: string, step: MarkStep, timestamp?: number): Counts | null =>
      state.sectionId === null ? null : markHere(store, state.sectionId, secondNow(timestamp), label, step),
    /** The first press says where a stretch to be kept quiet begins, the second where it ends. */
    quiet: (step: MarkStep, timestamp?: number): void => {
      const count = snapped(step, timestamp)
      const { ride, run } = store.getState()
      if (count === null || !ride || state.sectionId === null) return
      const from = state.quietFrom
      if (from !== null && count !== from)
        run(quietSong(ride, { sectionId: state.sectionId, from: Math.min(from, count), to: Math.max(from, count) }))
      set({ quietFrom: from === null ? count : null })
    },
    /** Where on the ride clock the song is; null outside the stretch that is ridden. */
    rideTimeAt: ({ ride, report }: Plan, timestamp?: number): Seconds | null => {
      const index = ride.sections.findIndex(({ id }) => id === state.sectionId)
      const placed = report.sections[index]
      if (!placed) return null
      const at = placed.one + secondNow(timestamp) - songSecondAtOne(ride.sections[index]!)
      return at >= placed.from && at <= placed.to ? at : null
    },
    /** Goes with the song and the habits of the store until told to stop, which ends the hearing. */
    attend: () => {
      const leave = store.subscribe((now, before) => {
        if (state.sectionId === null || state.phase === 'still') return
        if (now.previewing === null && now.shown !== followed) follow()
        const [habits, had] = [now.rehearsalHabits, before.rehearsalHabits]
        if (habits.click !== had.click) follow()
        if (habits.speed !== had.speed && state.sounds) deck.setRate(hand, habits.speed)
      })
      return () => {
        leave()
        if (state.phase !== 'still') stop()
      }
    },
  }
}
