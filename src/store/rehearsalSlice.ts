import type { PlayerEvents, Ports, SongPlayer } from './ports.ts'
import type { GetState, SetState } from './state.ts'

/** How a leader likes to rehearse, on this machine. */
export interface RehearsalHabits {
  /** Clicks over the songs that play; where no file plays, beats click anyway. */
  click: boolean
  /** A tick each second where there are no beats. */
  ticks: boolean
  /** 0 to 1. */
  songVolume: number
  clickVolume: number
  /** 0.5 to 1.5. */
  speed: number
  /** Stops before each section until the leader goes on. */
  waits: boolean
  /** Cues are spoken. */
  speaks: boolean
  /** A voice's id; empty for the browser's own choice. */
  voice: string
  /** The words about volume and the bike have been read. */
  cautioned: boolean
}

export const NEW_TO_REHEARSING: RehearsalHabits = {
  click: true,
  ticks: false,
  songVolume: 0.8,
  clickVolume: 0.5,
  speed: 1,
  waits: false,
  speaks: false,
  voice: '',
  cautioned: false,
}

/** What rehearsing needs of the world, and how it is liked. Where a rehearsal stands is known where it is shown. */
export interface RehearsalSlice {
  rehearsalHabits: RehearsalHabits
  setRehearsalHabits: (habits: Partial<RehearsalHabits>) => void
  /** Opens what plays songs and clicks; null where there is no sound. */
  openPlayer: ((events: PlayerEvents) => Promise<SongPlayer>) | null
  /** Speaks cues aloud; null where nothing can. */
  voice: Ports['voice'] | null
}

export function createRehearsalSlice(
  set: SetState,
  get: GetState,
  { openPlayer, voice }: Pick<Ports, 'openPlayer' | 'voice'>,
): RehearsalSlice {
  return {
    rehearsalHabits: NEW_TO_REHEARSING,
    setRehearsalHabits: (habits) => set(({ rehearsalHabits }) => ({ rehearsalHabits: { ...rehearsalHabits, ...habits } })),
    openPlayer: openPlayer ? (events) => openPlayer((song) => get().soundFile(song), events) : null,
    voice: voice ?? null,
  }
}
