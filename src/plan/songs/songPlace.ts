import type { Song } from '#plan/model.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import type { Counts } from '#units/units.ts'
import { type Refusal, say } from '#words/said.ts'

/**
 * Places in a song as its ruler numbers them: the first eight is 1, "9+4" is four counts into the
 * ninth. An end is named by the eight it closes: "76" ends after the seventy-sixth.
 */

/** The eight that begins at a count: 256 → "33"; 260 → "33+4". */
export function formatStart(count: Counts, eight: Counts): string {
  const rest = count % eight
  return `${Math.floor(count / eight) + 1}${rest === 0 ? '' : `+${rest}`}`
}

/** The eight that ends at a count: 608 → "76"; 612 → "76+4", four counts after it. */
export function formatEnd(count: Counts, eight: Counts): string {
  const rest = count % eight
  return `${Math.floor(count / eight)}${rest === 0 ? '' : `+${rest}`}`
}

/** The count at which an eight begins. */
export function parseStart(text: string, eight: Counts): Parsed<Counts, Refusal> {
  const place = readPlace(text)
  if (!place || place.number < 1) return refused(say('songPlaces.start', { unit: eight }))
  return place.counts < eight ? parsed((place.number - 1) * eight + place.counts) : refused(say('songPlaces.afterPlus', { unit: eight }))
}

/** The count at which an eight ends. */
export function parseEnd(text: string, eight: Counts): Parsed<Counts, Refusal> {
  const place = readPlace(text)
  if (!place) return refused(say('songPlaces.end', { unit: eight }))
  return place.counts < eight ? parsed(place.number * eight + place.counts) : refused(say('songPlaces.afterPlus', { unit: eight }))
}

type Quiet = NonNullable<Song['quiet']>[number]

/** Quiet windows as they are typed: "33–40, 65–72", from the start of one eight to the end of another. */
export function formatQuiet(windows: readonly Quiet[], eight: Counts): string {
  return windows.map(({ from, to }) => `${formatStart(from, eight)}–${formatEnd(to, eight)}`).join(', ')
}

export function parseQuiet(text: string, eight: Counts): Parsed<Quiet[], Refusal> {
  const windows: Quiet[] = []
  for (const piece of pieces(text, /[,;\n]/)) {
    const ends = /^(.+?)\s*(?:[-–—]|\bto\b|\bbis\b)\s*(.+)$/.exec(piece) ?? [piece, piece, piece]
    const from = parseStart(ends[1]!, eight)
    const to = parseEnd(ends[2]!, eight)
    if (!from.ok || !to.ok) return refused(say('songPlaces.notStretch', { line: piece }))
    if (to.value <= from.value) return refused(say('songPlaces.endsFirst', { line: piece }))
    windows.push({ from: from.value, to: to.value })
  }
  return parsed(windows.sort((a, b) => a.from - b.from))
}

type Mark = NonNullable<Song['marks']>[number]

/** Marks as they are typed, one a line: "33 chorus". */
export function formatMarks(marks: readonly Mark[], eight: Counts): string {
  return marks.map(({ count, label }) => `${formatStart(count, eight)} ${label}`).join('\n')
}

export function parseMarks(text: string, eight: Counts): Parsed<Mark[], Refusal> {
  const marks: Mark[] = []
  for (const line of pieces(text, /\n/)) {
    const halves = /^(\d+(?:\s*\+\s*\d+)?)\s+(\S.*)$/.exec(line)
    const count = halves && parseStart(halves[1]!, eight)
    if (!halves || !count?.ok) return refused(say('songPlaces.notMark', { line }))
    marks.push({ count: count.value, label: halves[2]! })
  }
  return parsed(marks.sort((a, b) => a.count - b.count))
}

const pieces = (text: string, between: RegExp): string[] =>
  text
    .split(between)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')

function readPlace(text: string): { number: number; counts: Counts } | null {
  const match = /^(\d{1,4})(?:\s*\+\s*(\d{1,2}))?$/.exec(text.trim())
  return match ? { number: Number(match[1]), counts: Number(match[2] ?? 0) } : null
}
