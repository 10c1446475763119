import type { Constants } from '#engine/constants.ts'
import type { Block } from '#plan/model.ts'
import { octaveAbout, type TempoWindow } from '#plan/songs/heardSong.ts'
import { cadenceWindow } from './cadenceWindow.ts'

/**
 * The tempi that bring the legs where blocks are usually ridden, at one strike a beat (rev/min is half the tempo,
 * as the trade counts): from the slowest of their windows to the fastest. Wide enough for any song that suits one
 * of them and narrower than an octave, so that it settles half against double: 120 to 156 for hills, 150 to 210 for
 * flats. Undefined where any cadence will do.
 */
export function tempoWindow(blocks: readonly Pick<Block, 'terrain' | 'posture'>[], rules: Constants): TempoWindow | undefined {
  const windows = blocks.flatMap((block) => cadenceWindow(block, rules) ?? [])
  if (windows.length === 0) return undefined
  const from = 2 * Math.min(...windows.map((window) => window.from))
  const to = 2 * Math.max(...windows.map((window) => window.to))
  return to < 2 * from ? { from, to } : octaveAbout(Math.sqrt(from * to))
}
