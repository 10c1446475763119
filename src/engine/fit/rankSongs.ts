import { countsOf } from '#plan/beatGrid.ts'
import { type Section, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { assignment } from './assignment.ts'

/** How much each difference counts against a song (common practice; together 1). */
export const WEIGHTS = { cadence: 0.45, length: 0.3, pattern: 0.2, recent: 0.05 } as const
/** Differences from which a song counts as wholly other: rev/min, and eights. */
const FULL = { rpm: 4, eights: 16 } as const

/** A song and how well it would do for a section, 0–1. */
export interface RankedSong {
  song: Song
  fit: number
  /** The strikes that bring its legs nearest. */
  strikesPerBeat: StrikesPerBeat
}

export interface RankOptions {
  /** Leave out songs not marked as clean. */
  cleanOnly?: boolean
  /** Ids of songs played in this slot lately. */
  recent?: ReadonlySet<string>
}

/** Songs that could stand in for a section's, the best first; songs without beats are left out. */
export function rankSongs(section: Section, songs: readonly Song[], options: RankOptions = {}): RankedSong[] {
  return songs
    .filter((song) => song.grid !== undefined && (!options.cleanOnly || song.clean === true))
    .map((song) => rank(section, song, options))
    .sort((a, b) => b.fit - a.fit)
}

/** One song for every section so that the fits add up to the most; null where songs run out. Cost: cubic in the larger number. */
export function assignSongs(sections: readonly Section[], songs: readonly Song[], options: RankOptions = {}): (RankedSong | null)[] {
  const usable = songs.filter((song) => song.grid !== undefined && (!options.cleanOnly || song.clean === true))
  if (usable.length === 0) return sections.map(() => null)
  const ranks = sections.map((section) => usable.map((song) => rank(section, song, options)))
  return assignment(ranks.map((row) => row.map(({ fit }) => 1 - fit))).map((column, i) => (column === null ? null : ranks[i]![column]!))
}

function rank(section: Section, song: Song, { recent }: RankOptions): RankedSong {
  const { difference, strikesPerBeat } = cadenceFit(section, song)
  const miss =
    WEIGHTS.cadence * Math.min(1, difference / FULL.rpm) +
    WEIGHTS.length * Math.min(1, eightsApart(section, song) / FULL.eights) +
    WEIGHTS.pattern * patternDistance(section.song?.marks ?? [], song.marks ?? []) +
    WEIGHTS.recent * (recent?.has(song.id) ? 1 : 0)
  return { song, fit: 1 - miss, strikesPerBeat }
}

const STRIKES = [0.5, 1, 2] as const

/** The strikes that bring the song nearest to the cadence the section is ridden at. */
function cadenceFit(section: Section, song: Song): { difference: number; strikesPerBeat: StrikesPerBeat } {
  const wanted =
    section.song?.grid && section.song.strikesPerBeat !== null ? (tempoOf(section.song.grid) * section.song.strikesPerBeat) / 2 : null
  // Off the beat any tempo will do.
  if (wanted === null) return { difference: 0, strikesPerBeat: null }
  const tempo = tempoOf(song.grid!)
  const differences = STRIKES.map((strikes) => Math.abs((tempo * strikes) / 2 - wanted))
  const best = differences.indexOf(Math.min(...differences))
  return { difference: differences[best]!, strikesPerBeat: STRIKES[best]! }
}

function eightsApart(section: Section, song: Song): number {
  const have = countsOf({ ...section, song, inCount: undefined, outCount: undefined })
  const need = countsOf(section)
  return have === null || need === null ? 0 : Math.abs(have - need) / 8
}

type Marks = NonNullable<Song['marks']>

/** Edit distance of the two songs' parts (verse, chorus …) as a share of the longer; 0 where either has none marked. */
function patternDistance(a: Marks, b: Marks): number {
  if (a.length === 0 || b.length === 0) return 0
  const [left, right] = [labelsOf(a), labelsOf(b)]
  let row = Array.from({ length: right.length + 1 }, (_, j) => j)
  for (const [i, label] of left.entries()) {
    const next = [i + 1]
    for (const [j, other] of right.entries()) next.push(Math.min(row[j + 1]! + 1, next[j]! + 1, row[j]! + (label === other ? 0 : 1)))
    row = next
  }
  return row.at(-1)! / Math.max(left.length, right.length)
}

const labelsOf = (marks: Marks): string[] => [...marks].sort((a, b) => a.count - b.count).map(({ label }) => label.trim().toLowerCase())
