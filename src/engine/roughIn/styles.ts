import { cadenceWindow } from '#engine/cadence/cadenceWindow.ts'
import type { Constants } from '#engine/constants.ts'
import { type Level, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'

/** What a song is ridden as: work, by the recipes it may be put together by, and what comes before, between and after it. */
export type Style = 'climb' | 'jumps' | 'run' | 'tempo' | 'surge' | 'push' | EasyStyle
export type EasyStyle = 'warmUp' | 'lowHill' | 'recover' | 'coolDown'

/** What the warm-up is ridden on. */
export const WARM_UPS: Readonly<Record<'warmUp' | 'lowHill', string>> = { warmUp: 'flat', lowHill: 'seated-hill' }

interface Window {
  from: Rpm
  to: Rpm
}

/** The cadence an easy song is ridden at on the beat (common practice); outside it is ridden off the beat. */
function windowOf(style: EasyStyle, rules: Constants): Window {
  switch (style) {
    // Cold legs stay out of fast cadences: mid-seventies to mid-nineties, what a flat is ridden at at most.
    case 'warmUp':
      return { from: 70, to: 105 }
    case 'lowHill':
      return cadenceWindow({ terrain: 'hill', posture: 'seated' }, rules)!
    // Light legs find the beat of most songs, slow ones on a little more.
    case 'recover':
      return { from: 60, to: 95 }
    // Rolling out is wanted no faster than the legs recover.
    case 'coolDown':
      return { from: 60, to: 90 }
  }
}

/** Strikes per beat that bring a song's legs into an easy style's window, its own first; undefined where none does. A song without beats states its cadence, so it suits every style. */
export const strikesFor = (song: Song, style: EasyStyle, rules: Constants): StrikesPerBeat | undefined =>
  strikesWithin(song, windowOf(style, rules))

/** Faster than this, turning the legs alone is work: in an easy song, and for newcomers in any (estimate; see demand/oxygenCost.ts). */
const EASY_LEGS: Rpm = 105

/** Strikes per beat that keep a song's seated legs inside the house rules' bounds and what the level takes, its own first; undefined where none do. */
export function strikesInBounds(song: Song, rules: Constants, level: Level, easy = level === 'beginner'): StrikesPerBeat | undefined {
  const to = easy ? Math.min(EASY_LEGS, rules.seatedMaxRpm) : rules.seatedMaxRpm
  return strikesWithin(song, { from: rules.seatedMinRpm, to })
}

const STRIKES = [1, 2, 0.5] as const

function strikesWithin({ grid, strikesPerBeat }: Song, { from, to }: Window): StrikesPerBeat | undefined {
  if (!grid) return null
  const tempo = tempoOf(grid)
  const own = strikesPerBeat === null ? [] : [strikesPerBeat]
  return [...own, ...STRIKES].find((strikes) => (tempo * strikes) / 2 >= from - 1e-6 && (tempo * strikes) / 2 <= to + 1e-6)
}
