import type { Constants } from '#engine/constants.ts'
import type { Block, Terrain } from '#plan/model.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Rpm } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'

export interface Window {
  from: Rpm
  to: Rpm
}

/** The cadence each terrain is usually ridden at, in rpm (common practice); hills are slower out of the saddle. */
const USUAL: Partial<Record<Terrain, Window>> = {
  flat: { from: 75, to: 105 },
  tempo: { from: 80, to: 105 },
  hill: { from: 60, to: 78 },
  run: { from: 70, to: 85 },
  jumps: { from: 65, to: 85 },
  surge: { from: 85, to: 110 },
  push: { from: 85, to: 110 },
  recover: { from: 70, to: 90 },
}

/**
 * The cadence a block is usually ridden at: its terrain's window inside the bounds of its posture.
 * Undefined where any cadence will do (flush, stretch, off the bike).
 */
export function cadenceWindow({ terrain, posture }: Pick<Block, 'terrain' | 'posture'>, rules: Constants): Window | undefined {
  if (posture === 'offBike' || terrain === 'flush' || terrain === 'stretch') return undefined
  const bounds = isOutOfSaddle({ posture })
    ? { from: rules.standingMinRpm, to: rules.standingMaxRpm }
    : { from: rules.seatedMinRpm, to: rules.seatedMaxRpm }
  const usual = USUAL[terrain] ?? bounds
  const window = { from: Math.max(bounds.from, usual.from), to: Math.min(bounds.to, usual.to) }
  return window.from <= window.to ? window : bounds
}

/** How a cadence suits blocks: "fits all 10 blocks", "fits 6 of 10 blocks", "too slow", "too fast"; null where nothing can be said. */
export function sayFit(rpm: Rpm, blocks: readonly Block[], rules: Constants): Said | null {
  const windows = blocks.flatMap((block) => (block.cadence === undefined ? (cadenceWindow(block, rules) ?? []) : []))
  if (windows.length === 0) return null
  const fits = windows.filter(({ from, to }) => rpm >= from && rpm <= to).length
  if (fits === windows.length) return say('heard.fitsAll', { count: fits })
  if (fits > 0) return say('heard.fitsSome', { count: fits, of: windows.length })
  if (windows.every(({ from }) => rpm < from)) return say('heard.tooSlow')
  return say(windows.every(({ to }) => rpm > to) ? 'heard.tooFast' : 'heard.fitsNone')
}
