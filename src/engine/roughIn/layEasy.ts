import type { Effort, Seconds } from '#units/units.ts'
import type { Chunk } from './chunks.ts'
import { PHRASE_EIGHTS } from './phrases.ts'
import { standingOf } from './standingOf.ts'

/** About how long a warm-up block lasts (common practice). */
const WARM_UP_BLOCK: Seconds = 45

/** Effort at the start of the ride and at the end of the warm-up (common practice). */
const WARM_UP = { from: 3, to: 5.5 } as const

/** Trained riders come out of the saddle for a phrase at the end of a warm-up block from this far into it on, at no less effort than standing asks for (common practice). */
const STANDS_FROM = 0.25
const STANDING: Readonly<{ effort: Effort; least: Seconds; sits: Seconds }> = { effort: 4.5, least: 12, sits: 20 }

/**
 * A warm-up song: a step harder about every three quarters of a minute, by how far the warm-up has come.
 *
 * @param at seconds since the class began at the song's first count
 * @param warmUp how long the warm-up lasts
 * @param stands whether riders come out of the saddle in it
 */
export function layWarmUp(pattern: string, eights: number, eightSeconds: Seconds, at: Seconds, warmUp: Seconds, stands = false): Chunk[] {
  const up = Math.ceil(STANDING.least / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS
  const block = Math.max(1, Math.round(WARM_UP_BLOCK / eightSeconds / PHRASE_EIGHTS)) * PHRASE_EIGHTS
  return pieces(eights, block).flatMap(({ from, size }): Chunk[] => {
    const progress = Math.min(1, (at + from * eightSeconds) / Math.max(1, warmUp))
    const effort = Math.round((WARM_UP.from + (WARM_UP.to - WARM_UP.from) * progress) * 2) / 2
    if (!stands || progress < STANDS_FROM || (size - up) * eightSeconds < STANDING.sits) return [{ pattern, eights: size, effort }]
    return [
      { pattern, eights: size - up, effort },
      { pattern: standingOf(pattern), eights: up, effort: Math.max(STANDING.effort, effort) },
    ]
  })
}

/** A recovery song: ease, a little pace so that it does not go cold, out of the saddle at its end for riders who stand in it, ease again. */
export function layRecovery(eights: number, stands = false): Chunk[] {
  const third = Math.max(PHRASE_EIGHTS, Math.floor(eights / 3 / PHRASE_EIGHTS) * PHRASE_EIGHTS)
  const up = stands && third >= 3 * PHRASE_EIGHTS ? PHRASE_EIGHTS : 0
  const ease = { pattern: 'recover', effort: 3 }
  if (eights < 3 * PHRASE_EIGHTS) return [{ ...ease, eights, water: true }]
  return [
    { ...ease, eights: third, water: true },
    { pattern: 'flat', eights: third - up, effort: 4, label: 'easy flat' },
    ...(up > 0 ? [{ pattern: 'standing-flat', eights: up, effort: STANDING.effort }] : []),
    { ...ease, eights: eights - 2 * third },
  ]
}

/** Least and most stretching at the end (common practice). */
const STRETCH: Readonly<{ least: Seconds; most: Seconds }> = { least: 60, most: 180 }

/** A cool-down song: the legs roll, and at the end of the last one the wheel stops and riders stretch. */
export function layCoolDown(eights: number, eightSeconds: Seconds, last: boolean): Chunk[] {
  const wanted = last ? Math.min(STRETCH.most, (eights * eightSeconds) / 2) : 0
  const stretch = wanted < STRETCH.least ? 0 : Math.floor(wanted / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS
  const flush = eights - stretch
  const first = Math.max(PHRASE_EIGHTS, Math.floor(flush / 2 / PHRASE_EIGHTS) * PHRASE_EIGHTS)
  const chunks: Chunk[] = [
    { pattern: 'flush', eights: Math.min(first, flush), effort: 3, water: true },
    { pattern: 'flush', eights: Math.max(0, flush - first), effort: 2 },
    { pattern: 'stretch', eights: stretch, effort: 1 },
  ]
  return chunks.filter((chunk) => chunk.eights > 0)
}

function pieces(eights: number, size: number): { from: number; size: number }[] {
  const count = Math.max(1, Math.floor(eights / size))
  return Array.from({ length: count }, (_, i) => ({ from: i * size, size: i === count - 1 ? eights - i * size : size }))
}
