import type { KnobSteps } from '#units/units.ts'
import { parseDecimal } from './parseDecimal.ts'
import { type Parsed, parsed, refused } from './parsed.ts'

/** The part of a bike that turns written settings into steps. */
export interface KnobScale {
  unit: string
  stepsPerUnit: number
}

const GLYPHS: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** Common units as they are typed in German, longest first. */
const GERMAN: Record<string, readonly string[]> = {
  turn: ['umdrehungen', 'umdrehung'],
  level: ['stufen', 'stufe'],
  gear: ['gänge', 'gang'],
}

/**
 * A setting in the bike's own unit as whole knob steps: "1½", "1 1/2", "1-1/2", "1.5", "1,5",
 * "3/4", "+¾", "−1¼", with the unit after it or without. A value between two steps is refused
 * with the two nearest: a knob that moves in quarters has no 1.3.
 */
export function parseSetting(text: string, scale: KnobScale): Parsed<KnobSteps> {
  const value = readSetting(text, scale.unit)
  if (value === null)
    return refused({ kind: 'notSetting', unit: scale.unit, example: Math.ceil(1.5 * scale.stepsPerUnit), stepsPerUnit: scale.stepsPerUnit })
  const steps = value * scale.stepsPerUnit
  const nearest = Math.round(steps)
  if (Math.abs(steps - nearest) < 1e-9 || isRoundedFrom(value, nearest / scale.stepsPerUnit)) return parsed(nearest === 0 ? 0 : nearest)
  return refused({ kind: 'noSuchStep', low: Math.floor(steps), high: Math.ceil(steps), stepsPerUnit: scale.stepsPerUnit })
}

/** A third written 0.33 or an eighth written 0.13 means its step; one decimal place is too coarse to mean any. */
function isRoundedFrom(written: number, step: number): boolean {
  const decimals = [2, 3].find((places) => Number(written.toFixed(places)) === written)
  return decimals !== undefined && Number(written.toFixed(1)) !== written && Number(step.toFixed(decimals)) === written
}

/** The written number, in units, or null. */
export function readSetting(text: string, unit: string): number | null {
  const plain = withoutUnit(text.trim().toLowerCase(), unit)
  const spelled = plain.replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (glyph) => ` ${GLYPHS[glyph]}`).replace(/⁄/g, '/')
  const match = /^([+\-−–]?)\s*(?:(?!0+\s*-)(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)$/.exec(spelled.replace(/\s+/g, ' ').trim())
  if (!match) return parseDecimal(spelled)
  const [, sign, whole, over, under] = match
  if (Number(under) === 0 || (whole !== undefined && Number(over) >= Number(under))) return null
  const size = Number(whole ?? 0) + Number(over) / Number(under)
  return sign === '' || sign === '+' ? size : -size
}

function withoutUnit(text: string, unit: string): string {
  const name = unit.toLowerCase()
  const ending = [`${name}s`, name, ...(GERMAN[name] ?? [])].find((candidate) => candidate !== '' && text.endsWith(candidate))
  return ending === undefined ? text : text.slice(0, -ending.length).trim()
}
