import { bendsOf } from '#plan/songs/bendsOf.ts'
import type { Migration } from './migration.ts'

/**
 * Version 1 had no odd places: beats a song has over or misses were held as a bend of its tempo. A bend that can only
 * be one becomes an odd place; its anchors, and so every second of the class, stay.
 */
export const from1: Migration = {
  from: 1,
  apply: (document) => ({ ...document, ...(Array.isArray(document.sections) && { sections: document.sections.map(ofSection) }) }),
}

function ofSection(section: unknown): unknown {
  if (!isGroup(section) || !isGroup(section.song) || !isGroup(section.song.grid)) return section
  const { song } = section
  return { ...section, song: { ...song, grid: withOddOfBends(song.grid as Group) } }
}

type Group = Record<string, unknown>
const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)

/** A grid of version 1, checked or not, with its bends as odd places; the same one where it has none. */
export function withOddOfBends<Grid extends { anchors?: unknown }>(grid: Grid): Grid {
  const { anchors } = grid
  if (!Array.isArray(anchors) || !anchors.every(isAnchor)) return grid
  const odd = bendsOf(anchors)
  return odd.length === 0 ? grid : { ...grid, odd }
}

const isAnchor = (value: unknown): value is [number, number] => Array.isArray(value) && value.length === 2 && value.every(Number.isFinite)
