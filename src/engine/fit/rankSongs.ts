import { cadenceWindow, type Window } from '#engine/cadence/cadenceWindow.ts'
import { type Constants, constantsOf } from '#engine/constants.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { isSet, type Section, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { countsOf, eightOf } from '#plan/songs/beatGrid.ts'
import type { Rpm } from '#units/units.ts'
import { partsSeconds } from './sectionSeconds.ts'

/** How much each difference counts against a song (common practice; together 1). */
const WEIGHTS = { cadence: 0.4, length: 0.27, pattern: 0.18, energy: 0.1, recent: 0.05 } as const
/** Differences from which a song counts as wholly other: rev/min, eights, and steps of energy. */
const FULL = { rpm: 4, eights: 16, energy: 3 } as const

/** A song and how well it would do for a section, 0–1. */
export interface RankedSong {
  song: Song
  fit: number
  /** The strikes that bring its legs nearest. */
  strikesPerBeat: StrikesPerBeat
  /** Steps of energy above what is wanted; where both are known. */
  energyApart?: number
  /** Played lately. */
  recent: boolean
}

interface RankOptions {
  /** Leave out songs not marked as clean. */
  cleanOnly?: boolean
  /** Ids of songs played in this slot lately. */
  recent?: ReadonlySet<string>
  /** How much drive songs have, by their ids, as far as it is known. */
  energies?: ReadonlyMap<string, Energy>
  /** How much is wanted (`energyWanted`, or what the section's own song has). */
  wanted?: Energy
  /** The house rules' own cadences; the engine's unless given. */
  rules?: Constants
}

/** Songs that could stand in for a section's, the best first; songs without beats are left out. */
export function rankSongs(section: Section, songs: readonly Song[], options: RankOptions = {}): RankedSong[] {
  return songs
    .filter((song) => song.grid !== undefined && (!options.cleanOnly || song.clean === true))
    .map((song) => rank(section, song, options))
    .sort((a, b) => b.fit - a.fit)
}

function rank(section: Section, song: Song, { recent, energies, wanted, rules }: RankOptions): RankedSong {
  const { difference, strikesPerBeat } = cadenceFit(section, song, rules)
  const energy = energies?.get(song.id)
  const energyApart = energy === undefined || wanted === undefined ? undefined : energy - wanted
  const isRecent = recent?.has(song.id) ?? false
  const miss =
    WEIGHTS.cadence * Math.min(1, difference / FULL.rpm) +
    WEIGHTS.length * Math.min(1, Math.abs(eightsLonger(section, song) ?? 0) / FULL.eights) +
    WEIGHTS.pattern * patternDistance(section.song?.marks ?? [], song.marks ?? []) +
    WEIGHTS.energy * Math.min(1, Math.abs(energyApart ?? 0) / FULL.energy) +
    WEIGHTS.recent * (isRecent ? 1 : 0)
  return { song, fit: 1 - miss, strikesPerBeat, ...(energyApart !== undefined && { energyApart }), recent: isRecent }
}

const STRIKES = [0.5, 1, 2] as const

/** The strikes that bring the song nearest to the cadence the section is ridden at, and how far it stays off it. */
function cadenceFit(section: Section, song: Song, rules?: Constants): { difference: Rpm; strikesPerBeat: StrikesPerBeat } {
  const wanted = legsWanted(section, rules)
  // Off the beat any tempo will do.
  if (wanted === null) return { difference: 0, strikesPerBeat: section.song?.grid ? null : song.strikesPerBeat }
  const tempo = tempoOf(song.grid!)
  const differences = STRIKES.map((strikes) => outside((tempo * strikes) / 2, wanted))
  const best = differences.indexOf(Math.min(...differences))
  return { difference: differences[best]!, strikesPerBeat: STRIKES[best]! }
}

const outside = (rpm: Rpm, { from, to }: Window): Rpm => Math.max(0, from - rpm, rpm - to)

/** The cadence of the section's own song, else what the terrain of its blocks is usually ridden at; null off the beat, and where any will do. */
export function legsWanted({ song, blocks }: Section, rules: Constants = constantsOf({})): Window | null {
  if (song?.grid) {
    if (song.strikesPerBeat === null) return null
    const rpm = (tempoOf(song.grid) * song.strikesPerBeat) / 2
    return { from: rpm, to: rpm }
  }
  const windows = blocks.flatMap((item) => (isSet(item) ? item.parts : [item])).flatMap((block) => cadenceWindow(block, rules) ?? [])
  if (windows.length === 0) return null
  return { from: Math.min(...windows.map(({ from }) => from)), to: Math.max(...windows.map(({ to }) => to)) }
}

/** Eights by which a song is longer than a section wants: than the section's own song, else than its blocks last; null where it cannot be said. */
export function eightsLonger(section: Section, song: Song): number | null {
  if (!song.grid) return null
  const have = countsOf({ ...section, song, inCount: undefined, outCount: undefined })!
  const need = countsOf(section)
  if (need !== null) return (have - need) / eightOf(song.grid)
  const seconds = partsSeconds(section).reduce((sum, part) => sum + part.seconds, 0)
  return seconds === 0 ? null : (song.lengthSeconds - seconds) / ((60 / tempoOf(song.grid)) * eightOf(song.grid))
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
