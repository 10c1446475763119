import type { Score } from '#plan/sound/score.ts'
import type { PlayerEvents, SongPlayer } from '#store/ports.ts'
import type { AppStore } from '#store/state.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'

/** Whoever plays something on the deck. */
export interface Hand {
  /** Often while it plays, with the second of the score that is heard. */
  onTick?: (at: Seconds) => void
  onEnd: () => void
  /** Another hand has begun to play; with the second that was heard last. */
  onTaken: (at: Seconds) => void
  /** Which files can be played has changed. */
  onFiles: () => void
}

/** The one player of the page: what one hand starts ends what another played. */
export interface Deck {
  /** False where the page has no sound, or something else was asked for meanwhile. */
  play: (hand: Hand, score: Score, from: Seconds, rate: number) => Promise<boolean>
  /** Stops what this hand plays; the second that was heard, or null. */
  stop: (hand: Hand) => Seconds | null
  follow: (hand: Hand, change: Parameters<SongPlayer['follow']>[0]) => void
  setRate: (hand: Hand, rate: number) => void
  heardAt: (hand: Hand, timestamp?: number) => Seconds | null
  /** Whether a song's file is at hand and could be read so far. */
  isThere: (fingerprint: string) => boolean
  /** Listens to the store until told to stop, which ends everything that plays. */
  attend: () => () => void
}

export function createDeck(store: AppStore): Deck {
  let player: SongPlayer | null = null
  let opening: Promise<SongPlayer | null> | null = null
  let playing: Hand | null = null
  /** Files that could not be read, until others are given. */
  let unread = new Set<string>()

  const events: PlayerEvents = {
    onTick: (at) => playing?.onTick?.(at),
    onEnd: () => {
      const hand = playing
      playing = null
      hand?.onEnd()
    },
    onFailed: (song) => {
      unread = new Set(unread).add(song)
      store.getState().notify({ kind: 'warning', sentence: words.rehearsing.notPlayed({ name: nameOf(store, song) }) })
      playing?.onFiles()
    },
  }

  async function open(): Promise<SongPlayer | null> {
    try {
      player = (await store.getState().openPlayer?.(events)) ?? null
    } catch (error) {
      const details = [error instanceof Error ? error.message : String(error)]
      store.getState().notify({ kind: 'problem', sentence: words.rehearsing.noSound, details })
      opening = null
    }
    if (player) hearVolumes(player)
    return player
  }

  const hearVolumes = (one: SongPlayer) => {
    const { songVolume, clickVolume } = store.getState().rehearsalHabits
    one.setVolumes({ song: songVolume, click: clickVolume })
  }

  return {
    play: async (hand, score, from, rate) => {
      if (playing && playing !== hand) {
        const other = playing
        other.onTaken(player?.stop() ?? 0)
      }
      playing = hand
      opening ??= open()
      const one = await opening
      if (!one || playing !== hand) return false
      one.setRate(rate)
      return one.play(score, from)
    },
    stop: (hand) => {
      if (playing !== hand) return null
      playing = null
      return player?.stop() ?? null
    },
    follow: (hand, change) => {
      if (playing === hand) player?.follow(change)
    },
    setRate: (hand, rate) => {
      if (playing === hand) player?.setRate(rate)
    },
    heardAt: (hand, timestamp) => (playing === hand ? (player?.heardAt(timestamp) ?? null) : null),
    isThere: (song) => {
      const { soundFiles, keptSoundFiles, openPlayer } = store.getState()
      return openPlayer !== null && !unread.has(song) && (soundFiles.has(song) || keptSoundFiles.has(song))
    },
    attend: () => {
      const leave = store.subscribe((state, before) => {
        if (player && state.rehearsalHabits !== before.rehearsalHabits) hearVolumes(player)
        if (state.soundFiles === before.soundFiles && state.keptSoundFiles === before.keptSoundFiles) return
        unread = new Set()
        playing?.onFiles()
      })
      return () => {
        leave()
        playing = null
        player?.close()
        player = null
        opening = null
      }
    },
  }
}

/** "“Low Tide”", or that it is a song where the ride has it no longer. */
function nameOf(store: AppStore, fingerprint: string): string {
  const song = store.getState().shown?.sections.find(({ song: one }) => one?.fingerprint === fingerprint)?.song
  return song ? words.names.quoted({ name: song.title }) : words.rehearsing.aSong
}
