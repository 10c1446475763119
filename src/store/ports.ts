import type { RideReport } from '#engine/report.ts'
import type { Profile } from '#plan/kept/profile.ts'
import type { LoadedRide, SavedRide } from '#plan/kept/savedRide.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import type { NewVersion, Version, VersionHead } from '#plan/kept/version.ts'
import type { Ride } from '#plan/model.ts'
import type { BeatHints, Hearing } from '#plan/songs/heardSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import type { Score } from '#plan/sound/score.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import type { Voice } from '#plan/sound/voice.ts'
import type { Seconds } from '#units/units.ts'

/** What the store needs of the world; the app supplies it, tests supply their own. */
export interface Ports {
  /** Plans a whole ride, once for every new ride object; the engine's own unless given. */
  compute?: (ride: Ride) => RideReport
  newId: () => string
  /** Milliseconds since 1970, for when a change was made; without it changes have no times. */
  now?: () => number
  /** Where rides are kept; null while nothing can be kept. */
  shelf: RideShelf | null
  /** The demo ride with an id; null where there is none or it cannot be fetched. Absent where there are none. */
  demoRide?: (id: string) => Promise<Ride | null>
  /** Where bikes, riders and house rules are kept; absent or null while nothing can be kept. */
  profiles?: ProfileShelf | null
  /** Where the log of classes taught is kept; absent or null while nothing can be kept. */
  taught?: TaughtShelf | null
  /** Where songs are kept apart from rides; absent or null while nothing can be kept. */
  songs?: SongShelf | null
  /** Where versions of rides are kept; absent or null while nothing can be kept. */
  versions?: VersionShelf | null
  /** Where the looks of sounds and, if asked, their files are kept; absent or null while nothing can be kept. */
  sounds?: SoundShelf | null
  /** Finds the beat in files of music; absent or null where there is no sound. */
  hearSong?: HearSong | null
  /** Opens what plays songs and clicks, when somebody first wants to hear something; absent or null where there is no sound. */
  openPlayer?: ((fileOf: FileOf, events: PlayerEvents) => Promise<SongPlayer>) | null
  /** Speaks aloud; absent or null where nothing can. */
  voice?: Voice | null
}

/** A song's file by its fingerprint; null where it is not at hand. */
type FileOf = (fingerprint: string) => Promise<Blob | null>

/** What a player tells. */
export interface PlayerEvents {
  /** Often while it plays, with the place in the score that is heard. */
  onTick: (at: Seconds) => void
  /** The score is over. */
  onEnd: () => void
  /** The file of a song is gone or cannot be read. */
  onFailed: (fingerprint: string) => void
}

/** Plays scores on the clock of the sound card, one at a time. */
export interface SongPlayer {
  /** From a second of the score; false where something else was asked for before the music was ready. */
  play: (score: Score, from: Seconds) => Promise<boolean>
  /**
   * Goes on in another score without a break of the song; told where the one so far is, and how far that
   * is ahead of what is being heard, `change` says which and where in it.
   */
  follow: (change: (at: Seconds, ahead: Seconds) => { score: Score; at: Seconds }) => void
  /** Stops, and says which second was being heard; null where nothing played. */
  stop: () => Seconds | null
  /** 0.5 to 1.5. */
  setRate: (rate: number) => void
  /** 0 to 1 each. */
  setVolumes: (volumes: { song: number; click: number }) => void
  /** The second that is heard at a timestamp of the page, or now; null where nothing plays. */
  heardAt: (timestamp?: number) => Seconds | null
  close: () => void
}

/** Hears one file of music after another, and says of each where it stands, until it is heard, known, failed or aborted. */
export type HearSong = (file: File, hints: BeatHints, onChange: (hearing: Hearing) => void, options?: HearOptions) => HearingOf

interface HearOptions {
  /** Whether all that hearing the file would give is there already, by its fingerprint; such a file is not listened to. */
  isKnown?: (fingerprint: string) => Promise<boolean>
  /** Goes before the files that wait: somebody is looking at it. */
  ahead?: boolean
}

export interface HearingOf {
  abort: () => void
}

/** Saved rides, as far as the store is concerned. */
export interface RideShelf {
  list: () => Promise<SavedRide[]>
  load: (id: string) => Promise<LoadedRide>
  save: (ride: Ride) => Promise<unknown>
  remove: (id: string) => Promise<void>
}

/** Kept bikes, riders and house rules, as far as the store is concerned. */
export interface ProfileShelf {
  list: () => Promise<Profile[]>
  save: (profile: Profile) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** The kept log, as far as the store is concerned. */
export interface TaughtShelf {
  list: () => Promise<TaughtClass[]>
  save: (entry: TaughtClass) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** Kept songs, as far as the store is concerned. */
export interface SongShelf {
  list: () => Promise<ShelfSong[]>
  save: (song: ShelfSong) => Promise<void>
  remove: (id: string) => Promise<void>
}

/** Kept sounds, as far as the store is concerned; all by the song's fingerprint. */
export interface SoundShelf {
  load: (id: string) => Promise<SongSound | null>
  save: (sound: SongSound) => Promise<void>
  /** Fingerprints of the songs whose file is kept. */
  listFiles: () => Promise<string[]>
  loadFile: (id: string) => Promise<Blob | null>
  saveFile: (id: string, file: Blob) => Promise<void>
  removeFile: (id: string) => Promise<void>
}

/** Kept versions of rides, as far as the store is concerned. */
export interface VersionShelf {
  heads: () => Promise<VersionHead[]>
  load: (id: string) => Promise<Version | null>
  save: (version: NewVersion & { at?: number }) => Promise<void>
  remove: (id: string) => Promise<void>
}
