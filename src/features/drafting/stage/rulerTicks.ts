import { countAt, secondAt } from '#plan/beatGrid.ts'
import type { BeatGrid, Song } from '#plan/model.ts'
import type { Counts } from '#units/units.ts'
import { type TimeScale, toSeconds, toX } from './timeScale.ts'

/** A song's ridden stretch, as its ruler counts it: from the in-point, in eights and phrases. */
export interface RuledSong {
  grid: BeatGrid
  /** Count of the song at the section's left edge. */
  inCount: Counts
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
 * are wide enough to tell apart, else eights, else phrases. Bars are the song's own, eights and phrases start at the in-point.
 */
export function rulerTicks(song: RuledSong, scale: TimeScale, cut: Cut): Tick[] {
  const { eight, phrase, inCount, grid } = song
  const step = stepOf(song, scale)
  if (step === null) return []
  const x = placeOf(song, scale)
  const ticks: Tick[] = []
  for (const count of countsIn(song, scale, cut, step)) {
    const strength =
      count % phrase === 0 ? 'phrase' : count % eight === 0 ? 'eight' : (inCount + count) % grid.beatsPerBar === 0 ? 'bar' : 'count'
    ticks.push({ x: x(count), strength })
  }
  return ticks
}

/** Whether single counts are told apart on the ruler. */
export const showsCounts = (song: RuledSong, scale: TimeScale): boolean => stepOf(song, scale) === 1

function stepOf(song: RuledSong, scale: TimeScale): Counts | null {
  const widthOfEight = placeOf(song, scale)(song.eight)
  if (widthOfEight * (song.phrase / song.eight) < ROOM.phrase) return null
  return widthOfEight / song.eight >= ROOM.count ? 1 : widthOfEight >= ROOM.eight ? song.eight : song.phrase
}

/** A word or number on the ruler. */
export interface RulerLabel {
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
 * Numbers of the eights, from 1 at the in-point: of each, or of every second, fourth, … phrase's first, as many as have
 * room. Phrases are numbered above them where the word fits and no section mark stands.
 */
export function rulerLabels(song: RuledSong, scale: TimeScale, cut: Cut, flags: readonly Flag[] = []): RulerLabel[] {
  const { eight, phrase } = song
  if (stepOf(song, scale) === null) return []
  const x = placeOf(song, scale)
  const last = String(Math.ceil(song.total / eight))
  const eights = thinned(song, scale, cut, [eight, phrase], widthOf(last)).map((count): RulerLabel => {
    const text = String(count / eight + 1)
    return { x: x(count), text, kind: 'eight', ...(count % phrase === 0 && { isFirst: true }) }
  })
  const phrases = phraseLabels(song, scale, cut, flags)
  return [...eights, ...phrases]
}

/** Every phrase or none is numbered: a few of them between the eights' numbers would not be told apart from those. */
function phraseLabels(song: RuledSong, scale: TimeScale, cut: Cut, flags: readonly Flag[]): RulerLabel[] {
  const { phrase, total } = song
  const x = placeOf(song, scale)
  const word = (count: Counts) => `phrase ${count / phrase + 1}`
  if (x(phrase) < widthOf(word(total))) return []
  const hasRoom = (count: Counts): boolean => {
    const from = x(count)
    const to = from + widthOf(word(count))
    const isFree = flags.every((flag) => flag.x >= to || flag.x + (flag.room ? widthOf(flag.label) : GAP) <= from)
    return isFree && to <= x(Math.min(total, count + phrase))
  }
  return [...countsIn(song, scale, cut, phrase)].filter(hasRoom).map((count) => ({ x: x(count), text: word(count), kind: 'phrase' }))
}

/** The counts among multiples of the first of these steps, or the next, or the last doubled again and again, that stand this far apart. */
function thinned(song: RuledSong, scale: TimeScale, cut: Cut, steps: readonly Counts[], apart: number): Counts[] {
  const x = placeOf(song, scale)
  let step = steps.find((candidate) => x(candidate) >= apart) ?? steps.at(-1)! * 2
  while (x(step) < apart) step *= 2
  const kept: Counts[] = []
  // A song that hurries has counts closer together than at its start.
  for (const count of countsIn(song, scale, cut, step)) {
    const before = kept.at(-1)
    if (count < song.total && (before === undefined || x(count) - x(before) >= apart)) kept.push(count)
  }
  return kept
}

/** Pixels from the section's left edge at which a count since the in-point falls. */
function placeOf({ grid, inCount }: RuledSong, scale: TimeScale): (count: Counts) => number {
  const origin = secondAt(grid, inCount)
  return (count) => toX(scale, secondAt(grid, inCount + count) - origin)
}

/** The multiples of a step in a cut of the section, its last count with them. */
function* countsIn({ grid, inCount, total }: RuledSong, scale: TimeScale, cut: Cut, step: Counts): Generator<Counts> {
  const origin = secondAt(grid, inCount)
  const at = (x: number) => countAt(grid, origin + toSeconds(scale, x)) - inCount
  // The last count stands at the very edge, up to rounding.
  const end = Math.min(total, at(cut.to) + 1e-6)
  for (let count = Math.max(0, Math.floor(at(cut.from) / step) * step); count <= end; count += step) yield count
}

/** A section mark of the song on the ruler, and whether its name has room before the next one. */
export interface Flag {
  x: number
  label: string
  room: boolean
}

/** The song's section marks inside its ridden stretch. */
export function markFlags(song: RuledSong, marks: NonNullable<Song['marks']>, scale: TimeScale): Flag[] {
  const { inCount, total } = song
  const x = placeOf(song, scale)
  const inside = marks.filter(({ count }) => count >= inCount && count < inCount + total).toSorted((a, b) => a.count - b.count)
  const places = inside.map(({ count, label }) => ({ x: x(count - inCount), label }))
  const end = x(total)
  return places.map(({ x, label }, i) => ({ x, label, room: (places[i + 1]?.x ?? end) - x >= widthOf(label) }))
}
