import { cadenceWindow } from '#engine/cadence/cadenceWindow.ts'
import { plainMove } from '#engine/cadence/moves.ts'
import type { Constants } from '#engine/constants.ts'
import { type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns.ts'
import type { Rpm } from '#units/units.ts'

/** What a song is ridden as. */
export type Style = 'climb' | 'jumps' | 'run' | 'tempo' | 'surge' | 'push' | 'warmUp' | 'lowHill' | 'recover' | 'coolDown'

/** The patterns a style's quieter and louder stretches are made from. */
export const PARTS: Record<Style, { down: string; up: string }> = {
  climb: { down: 'seated-hill', up: 'standing-hill' },
  jumps: { down: 'seated-hill', up: 'jumps-8' },
  run: { down: 'flat', up: 'run' },
  tempo: { down: 'tempo', up: 'tempo' },
  surge: { down: 'tempo', up: 'surge' },
  push: { down: 'flat', up: 'push' },
  warmUp: { down: 'flat', up: 'flat' },
  lowHill: { down: 'seated-hill', up: 'seated-hill' },
  recover: { down: 'recover', up: 'flat' },
  coolDown: { down: 'flush', up: 'flush' },
}

/** Styles for the work of a class, and those for before, between and after it. */
const WORK_STYLES = ['climb', 'jumps', 'run', 'tempo', 'surge', 'push'] as const satisfies readonly Style[]
export const WARM_UP_STYLES = ['warmUp', 'lowHill'] as const satisfies readonly Style[]

/** Rolling out is wanted slower than the legs worked (common practice). */
const COOL_DOWN: Window = { from: 60, to: 80 }
/** Riders choose on the easy songs; a cadence outside is ridden off the beat. */
const RECOVERY: Window = { from: 70, to: 90 }
/** Cold legs stay out of fast cadences (common practice: mid-seventies to mid-nineties). */
const WARM_UP: Window = { from: 70, to: 97 }

interface Window {
  from: Rpm
  to: Rpm
}

/** The cadence in which everything of a style is usually ridden. */
function windowOf(style: Style, rules: Constants): Window {
  if (style === 'coolDown') return COOL_DOWN
  if (style === 'recover') return RECOVERY
  if (style === 'warmUp') return WARM_UP
  const windows = [PARTS[style].down, PARTS[style].up].map((id) => {
    const { terrain, posture } = PATTERNS.find((pattern) => pattern.id === id)!
    return cadenceWindow({ terrain, posture }, rules) ?? { from: 0, to: Number.POSITIVE_INFINITY }
  })
  return { from: Math.max(...windows.map(({ from }) => from)), to: Math.min(...windows.map(({ to }) => to)) }
}

const STRIKES = [1, 2, 0.5] as const

/**
 * Strikes per beat that bring a song's legs into a style's window, its own first; undefined where
 * none does. A song without beats states its cadence, so it suits every style.
 */
export function strikesFor(song: Song, style: Style, rules: Constants): StrikesPerBeat | undefined {
  if (!song.grid) return null
  const { from, to } = windowOf(style, rules)
  const tempo = tempoOf(song.grid)
  const own = song.strikesPerBeat === null ? [] : [song.strikesPerBeat]
  return [...own, ...STRIKES].find((strikes) => (tempo * strikes) / 2 >= from - 1e-6 && (tempo * strikes) / 2 <= to + 1e-6)
}

/** Styles a room does: without those whose moves it avoids. */
export function allowedStyles(avoidMoves: readonly string[] = []): readonly (typeof WORK_STYLES)[number][] {
  const avoided = new Set(avoidMoves.map(plainMove))
  return WORK_STYLES.filter((style) => style !== 'jumps' || !avoided.has('jump'))
}

/** Whether a room does side leans. */
export const doesLeans = (avoidMoves: readonly string[] = []): boolean =>
  !avoidMoves.map(plainMove).some((move) => move === 'side lean' || move === 'lean')
