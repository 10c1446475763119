import type { SectionReport } from '#engine/report.ts'
import { secondAt } from '#plan/beatGrid.ts'
import type { BeatGrid, Song } from '#plan/model.ts'
import { type TimeScale, toX } from './timeScale.ts'

/** One mark of a song's ruler: its place from the section's left edge, and the number it carries, if any. */
export interface Tick {
  x: number
  strength: 'count' | 'eight' | 'phrase'
  label?: string
}

/**
 * Marks of a section's ruler at this zoom: counts when they are wide enough to tell apart, else eights,
 * else phrases; eights are numbered from 1 where the numbers have room.
 */
export function rulerTicks(section: SectionReport, grid: BeatGrid, scale: TimeScale): Tick[] {
  const counts = section.counts
  if (!counts) return []
  const origin = secondAt(grid, counts.in)
  const x = (count: number): number => toX(scale, secondAt(grid, counts.in + count) - origin)
  const { eight, phrase } = section.unit
  const widthOfEight = x(eight)
  const widthOfPhrase = widthOfEight * (phrase / eight)
  const step = widthOfEight / eight >= 7 ? 1 : widthOfEight >= 4 ? eight : phrase
  if (widthOfPhrase < 6) return []
  const labelEvery = widthOfEight >= 26 ? eight : widthOfPhrase >= 26 ? phrase : Number.POSITIVE_INFINITY
  const ticks: Tick[] = []
  for (let count = 0; count <= counts.total; count += step) {
    const strength = count % phrase === 0 ? 'phrase' : count % eight === 0 ? 'eight' : 'count'
    const label = count % labelEvery === 0 && count < counts.total ? String(count / eight + 1) : undefined
    ticks.push({ x: x(count), strength, ...(label === undefined ? {} : { label }) })
  }
  return ticks
}

/** A section mark of the song on the ruler, and whether its name has room before the next one. */
export interface Flag {
  x: number
  label: string
  room: boolean
}

/** About what a letter of a mark's name takes, and what its number beside it. */
const LETTER = 6
const MARGIN = 8

/** The song's section marks inside its ridden stretch. */
export function markFlags(section: SectionReport, grid: BeatGrid, marks: NonNullable<Song['marks']>, scale: TimeScale): Flag[] {
  const { counts } = section
  if (!counts) return []
  const origin = secondAt(grid, counts.in)
  const inside = marks.filter(({ count }) => count >= counts.in && count < counts.in + counts.total).toSorted((a, b) => a.count - b.count)
  const places = inside.map(({ count, label }) => ({ x: toX(scale, secondAt(grid, count) - origin), label }))
  const end = toX(scale, secondAt(grid, counts.in + counts.total) - origin)
  return places.map(({ x, label }, i) => ({ x, label, room: (places[i + 1]?.x ?? end) - x >= label.length * LETTER + MARGIN }))
}
