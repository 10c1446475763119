import type { Foot, Hands, Posture } from '#plan/model.ts'
import type { Effort } from '#units/units.ts'

/** All that stands on a sheet, in words and numbers, before it has any size or place. */
export interface SheetContents {
  title: string
  aim?: string
  /** Level, slot, total, slack, bike: one short phrase each. */
  facts: string[]
  /** Who leads: "Odalys Thornquill and Remy Castellane-Voss"; absent while nobody has a name. */
  leaders?: string
  /** When it was printed and which version of the ride it shows. */
  stamp: string
  /** Heads of the columns. */
  heads: { ride: string; song: string; length: string; total: string }
  bands: Band[]
  legend: LegendEntry[]
  safety: string
}

/** One song, or one stretch without. */
export interface Band {
  id: string
  /** From 1, as the songs are played. */
  number: number
  /** The section's own title. */
  title?: string
  song?: string
  artist?: string
  /** Start on the ride clock, length, tempo, cadence, resistance at both ends: one short phrase each. */
  facts: string[]
  lead?: Foot
  /** Who takes over with it, or who has it, on a sheet of two leaders. */
  handOver?: string
  /** What comes before its song: the welcome, at the head of the first band. */
  before?: Aside
  rows: Row[]
  /** What comes after its last change: the wipe-down, at the end of the last band. */
  after?: Aside
}

/** Time of the class that belongs to no song. */
export interface Aside {
  /** Time since the class began. */
  rideClock: string
  /** "welcome and bike setup, 3:00" */
  words: string
}

/** One change: everything the leader needs at the moment it comes. */
export interface Row {
  id: string
  /** Time since the class began. */
  rideClock: string
  /** Time on the song's own clock. */
  songClock: string
  /** Length: "8", "8+4", or a time where no beat counts it. */
  length: string
  posture: Posture
  hands: Hands
  /** Resistance after the change: the most prominent of all. */
  total: string
  /** The derived call, written small; empty where it is too long for its column and stands before the words. */
  call: string
  /** False for a block of the other leader on a sheet made for one of them. */
  mine: boolean
  /** Where the lead or the microphone changes hands as the block begins, within the section. */
  handOver?: string
  /** Present where the leader has to say it; the band's head says the first. */
  foot?: Foot
  effort: { from: Effort; to: Effort }
  /** The same to read: "7", "4–9". */
  level: string
  /** What the block is called. */
  name: string
  /** Moves, cadence, rounds and the like, one short phrase each. */
  notes: string[]
  /** What is said, in the order it is said; the derived call in words where nothing is written. */
  words: string
  /** The same without what the call says already; may be empty. */
  shortWords: string
  feel?: string
  easier?: string
  water: boolean
}

/** A mark used on this sheet and what it means. */
export interface LegendEntry {
  mark: LegendMark
  text: string
}

export type LegendMark =
  | { kind: 'posture'; posture: Posture }
  | { kind: 'hands'; hands: Hands }
  | { kind: 'foot'; foot: Foot }
  | { kind: 'water' }
  | { kind: 'effort' }
  | { kind: 'word'; word: string }

/** Which clock of the song is printed: what the player shows while counting down, or since the song's beat 1. */
export type SongClock = 'left' | 'elapsed'
