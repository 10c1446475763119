import { editBlocksOf } from '#plan/edits.ts'
import { type Section, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'

interface FittedStrokes {
  section: Section
  /** The song with the strokes it is ridden by. */
  song: Song
  /** The legs on the beat as they were planned and as they come out; absent off the beat and without one. */
  legs?: { was: Rpm; is: Rpm }
}

const STRIKES = [1, 0.5, 2] as const

/**
 * Blocks planned to one song with the strokes that bring the legs nearest to what they were, to another: half time, on the beat
 * or double time. What is ridden off the beat stays so. Nothing changes where one of the songs has no beat.
 */
export function fitStrokes(section: Section, planned: Song, song: Song): FittedStrokes {
  if (!planned.grid || !song.grid) return { section, song }
  const [was, is] = [tempoOf(planned.grid), tempoOf(song.grid)]
  const nearest = (strikes: StrikesPerBeat): StrikesPerBeat => {
    if (strikes === null) return null
    const off = (one: number) => Math.abs(Math.log((is * one) / (was * strikes)))
    return STRIKES.reduce((best, one) => (off(one) < off(best) - 1e-9 ? one : best))
  }
  const strikes = nearest(planned.strikesPerBeat)
  return {
    section: editBlocksOf(section, (block) => {
      if (block.strikesPerBeat === undefined) return block
      const next = nearest(block.strikesPerBeat)
      return next === block.strikesPerBeat ? block : { ...block, strikesPerBeat: next }
    }),
    song: strikes === song.strikesPerBeat ? song : { ...song, strikesPerBeat: strikes },
    ...(strikes !== null &&
      planned.strikesPerBeat !== null && { legs: { was: (was * planned.strikesPerBeat) / 2, is: (is * strikes) / 2 } }),
  }
}
