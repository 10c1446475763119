import { startsBar } from '#engine/timeline/startsBar.ts'
import type { BeatGrid, Song } from '#plan/model.ts'
import { beatOf, countAt, countOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'
import { words } from '#words/words.ts'
import { type TimeScale, toSeconds, toX } from './timeScale.ts'

/** A song's ridden stretch, on the song's own counts: eights and phrases are numbered in the song, wherever a section begins in it. */
export interface RuledSong {
  grid: BeatGrid
  /** Count of the song at the section's left edge. */
  inCount: Counts
  /** Counts that are ridden. */
  total: Counts
  eight: Counts
  phrase: Counts
}

/** A part of a section, in pixels from its left edge. */
export interface Cut {
  from: number
  to: number
}

/** One mark of a song's ruler: its place from the section's left edge. */
export interface Tick {
  x: number
  strength: 'count' | 'bar' | 'eight' | 'phrase'
}

/** Pixels from which counts, eights and phrases can be told apart. */
const ROOM = { count: 7, eight: 4, phrase: 6 } as const

/**
 * Marks of a section's ruler at this zoom, as far as a cut of it goes: counts with the ones of bars among them when they
 * are wide enough to tell apart, else eights, else phrases.
 */
export function rulerTicks(song: RuledSong, scale: TimeScale, cut: Cut): Tick[] {
  const { eight, phrase, grid } = song
  const step = stepOf(song, scale)
  if (step === null) return []
  const x = placeOf(song, scale)
  const strengthOf = (count: Counts): Tick['strength'] =>
    count % phrase === 0 ? 'phrase' : count % eight === 0 ? 'eight' : isBar(grid, count) ? 'bar' : 'count'
  const counts = step === 1 && grid.odd ? heardIn(song, scale, cut) : countsIn(song, scale, cut, step)
  return [...counts].map((count) => ({ x: x(count), strength: strengthOf(count) }))
}

const isBar = (grid: BeatGrid, count: Counts): boolean =>
  startsBar(count, Number.isInteger(count) ? 0 : beatOf(grid, count) - beatOf(grid, Math.floor(count)), grid.beatsPerBar)

/** Whether single counts are told apart on the ruler. */
export const showsCounts = (song: RuledSong, scale: TimeScale): boolean => stepOf(song, scale) === 1

function stepOf(song: RuledSong, scale: TimeScale): Counts | null {
  const { inCount, eight, phrase } = song
  const widthOfEight = placeOf(song, scale)(inCount + eight)
  if (widthOfEight * (phrase / eight) < ROOM.phrase) return null
  return widthOfEight / eight >= ROOM.count ? 1 : widthOfEight >= ROOM.eight ? eight : phrase
}

/** A word or number on the ruler. */
interface RulerLabel {
  x: number
  text: string
  kind: 'eight' | 'phrase'
  /** An eight that begins a phrase. */
  isFirst?: boolean
}

/** About what a letter takes, and what is left free between two labels, in pixels. */
const LETTER = 6
const GAP = 8
const widthOf = (text: string): number => text.length * LETTER + GAP

/**
 * Numbers of the eights, of the song's first as 1: of each, or of every second, fourth, … phrase's first, as many as have
 * room. Phrases are numbered above them where the word fits and no section mark stands.
 */
export function rulerLabels(song: RuledSong, scale: TimeScale, cut: Cut, flags: readonly Flag[] = []): RulerLabel[] {
  const { eight, phrase } = song
  if (stepOf(song, scale) === null) return []
  const x = placeOf(song, scale)
  const last = String(Math.ceil(endOf(song) / eight))
  const eights = thinned(song, scale, cut, [eight, phrase], widthOf(last)).map((count): RulerLabel => {
    const text = String(count / eight + 1)
    return { x: x(count), text, kind: 'eight', ...(count % phrase === 0 && { isFirst: true }) }
  })
  const end = x(endOf(song))
  // At the end of a song a number would be cut off by the next one's.
  const isWhole = (label: RulerLabel) => label.x + widthOf(label.text) - GAP / 2 <= end
  // The staff of a flag would strike a number out that it does not stand before.
  const isStruck = (label: RulerLabel) => flags.some((flag) => flag.x > label.x + 1 && flag.x < label.x + widthOf(label.text) - GAP / 2)
  return [...eights.filter((label) => isWhole(label) && !isStruck(label)), ...phraseLabels(song, scale, cut, flags)]
}

/** Every phrase or none is numbered: a few of them between the eights' numbers would not be told apart from those. */
function phraseLabels(song: RuledSong, scale: TimeScale, cut: Cut, flags: readonly Flag[]): RulerLabel[] {
  const { inCount, phrase } = song
  const x = placeOf(song, scale)
  const word = (count: Counts) => words.drafting.phrase({ number: count / phrase + 1 })
  if (x(inCount + phrase) < widthOf(word(endOf(song)))) return []
  const hasRoom = (count: Counts): boolean => {
    const from = x(count)
    const to = from + widthOf(word(count))
    const isFree = flags.every((flag) => flag.x >= to || flag.x + (flag.room ? widthOf(flag.label) : GAP) <= from)
    return isFree && to <= x(Math.min(endOf(song), count + phrase))
  }
  return [...countsIn(song, scale, cut, phrase)].filter(hasRoom).map((count) => ({ x: x(count), text: word(count), kind: 'phrase' }))
}

/** The counts among multiples of the first of these steps, or the next, or the last doubled again and again, that stand this far apart. */
function thinned(song: RuledSong, scale: TimeScale, cut: Cut, steps: readonly Counts[], apart: number): Counts[] {
  const x = placeOf(song, scale)
  const width = (step: Counts) => x(song.inCount + step)
  let step = steps.find((candidate) => width(candidate) >= apart) ?? steps.at(-1)! * 2
  while (width(step) < apart) step *= 2
  const kept: Counts[] = []
  // A song that hurries has counts closer together than at its start.
  for (const count of countsIn(song, scale, cut, step)) {
    const before = kept.at(-1)
    if (count < endOf(song) && (before === undefined || x(count) - x(before) >= apart)) kept.push(count)
  }
  return kept
}

const endOf = ({ inCount, total }: RuledSong): Counts => inCount + total

/** Pixels from the section's left edge at which a count of the song falls. */
function placeOf({ grid, inCount }: RuledSong, scale: TimeScale): (count: Counts) => number {
  const origin = secondAt(grid, inCount)
  return (count) => toX(scale, secondAt(grid, count) - origin)
}

/** The multiples of a step in a cut of the ridden stretch, its last count with them. */
function* countsIn(song: RuledSong, scale: TimeScale, cut: Cut, step: Counts): Generator<Counts> {
  const { grid, inCount } = song
  const origin = secondAt(grid, inCount)
  const at = (x: number) => countAt(grid, origin + toSeconds(scale, x))
  // The last count stands at the very edge, up to rounding.
  const end = Math.min(endOf(song), at(cut.to) + 1e-6)
  const first = Math.max(Math.ceil(inCount / step), Math.floor(at(cut.from) / step))
  for (let count = first * step; count <= end; count += step) yield count
}

/** The counts of the beats in a cut of the ridden stretch: those over have a fraction of one, and counts whose beats are missing have none. */
function* heardIn(song: RuledSong, scale: TimeScale, cut: Cut): Generator<Counts> {
  const { grid, inCount } = song
  const origin = secondAt(grid, inCount)
  const at = (x: number) => beatOf(grid, countAt(grid, origin + toSeconds(scale, x)))
  const end = Math.min(beatOf(grid, endOf(song)), at(cut.to) + 1e-6)
  const first = Math.max(beatOf(grid, inCount), Math.floor(at(cut.from)))
  for (let beat = Math.ceil(first - 1e-6); beat <= end; beat++) yield countOf(grid, beat)
}

/** A section mark of the song on the ruler, and whether its name has room before the next one. */
interface Flag {
  x: number
  label: string
  room: boolean
}

/** The song's section marks inside its ridden stretch. */
export function markFlags(song: RuledSong, marks: NonNullable<Song['marks']>, scale: TimeScale): Flag[] {
  const x = placeOf(song, scale)
  const inside = marks.filter(({ count }) => count >= song.inCount && count < endOf(song)).toSorted((a, b) => a.count - b.count)
  const places = inside.map(({ count, label }) => ({ x: x(count), label }))
  const end = x(endOf(song))
  return places.map(({ x, label }, i) => ({ x, label, room: (places[i + 1]?.x ?? end) - x >= widthOf(label) }))
}
