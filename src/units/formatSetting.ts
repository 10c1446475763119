import type { KnobSteps, StepRange } from '#units/units.ts'
import { formatNumber } from './formatNumber.ts'

/** Fractions that exist as one character and read well small. */
const FRACTIONS: Record<string, string> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/6': '⅙',
  '5/6': '⅚',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b))

/**
 * Whole knob steps in the bike's own unit: 6 steps of a knob with four a turn → "1½",
 * −3 → "−¾", 13 steps of a tenth → "1.3". Fractions that have no single character are
 * decimals. The minus is a true one; zero is "0".
 */
export function formatSetting(steps: KnobSteps, stepsPerUnit: number): string {
  const size = Math.abs(steps)
  const sign = steps < 0 ? '−' : ''
  const units = Math.floor(size / stepsPerUnit)
  const rest = size - units * stepsPerUnit
  if (rest === 0) return `${sign}${units}`
  const shared = gcd(rest, stepsPerUnit)
  const fraction = FRACTIONS[`${rest / shared}/${stepsPerUnit / shared}`]
  if (fraction === undefined) return formatNumber(steps / stepsPerUnit, 3)
  return `${sign}${units === 0 ? '' : units}${fraction}`
}

/** As {@link formatSetting} with the sign always written: "+¾", "−1¼", "0" for none. */
export function formatSignedSetting(steps: KnobSteps, stepsPerUnit: number): string {
  return `${steps > 0 ? '+' : ''}${formatSetting(steps, stepsPerUnit)}`
}

/** A range of settings: "1½–2"; "−½ to ½" where a minus would meet the dash; one value where both are equal. */
export function formatSettingRange({ from, to }: Pick<StepRange, 'from' | 'to'>, stepsPerUnit: number): string {
  if (from === to) return formatSetting(from, stepsPerUnit)
  const joint = from < 0 || to < 0 ? ' to ' : '–'
  return `${formatSetting(from, stepsPerUnit)}${joint}${formatSetting(to, stepsPerUnit)}`
}
