import type { Scale } from '#engine/speech/speech.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { KnobSteps } from '#units/units.ts'
import { numberWords } from './numberWords.ts'

/**
 * A size on the bike's scale as it is spoken before "on" or "off": "a quarter turn", "half a
 * turn", "three quarters", "one turn", "one and a quarter", "two levels", "one point three
 * gears". A knob's turns lose the unit where the fraction says enough, as leaders do.
 */
export function sizeWords(steps: KnobSteps, { unit, stepsPerUnit }: Scale): string {
  const { whole, fraction } = split(steps, stepsPerUnit)
  const tail = unit === 'turn' ? '' : ` ${pluralUnit(unit)}`
  if (fraction === undefined) return `${decimalWords(steps / stepsPerUnit)} ${pluralUnit(unit)}`
  if (fraction === '') return `${numberWords(whole)} ${whole === 1 ? unit : pluralUnit(unit)}`
  if (whole > 0) return `${numberWords(whole)} and ${fraction}${tail}`
  if (fraction === 'a half') return `half a ${unit}`
  if (fraction === 'a quarter') return `a quarter ${unit}`
  return unit === 'turn' && !fraction.startsWith('a') ? fraction : `${fraction} of a ${unit}`
}

/** A place on the bike's scale as it is spoken after "to": "three", "one and a half", "three quarters", "a quarter". */
export function placeWords(steps: KnobSteps, { stepsPerUnit }: Scale): string {
  const { whole, fraction } = split(steps, stepsPerUnit)
  if (fraction === undefined) return decimalWords(steps / stepsPerUnit)
  if (fraction === '') return numberWords(whole)
  return whole === 0 ? fraction : `${numberWords(whole)} and ${fraction}`
}

const pluralUnit = (unit: string): string => (/[a-rt-z]$/.test(unit) ? `${unit}s` : unit)

/** Whole units and the words of the rest: empty for none, undefined where people say decimals. */
function split(steps: KnobSteps, stepsPerUnit: number): { whole: number; fraction: string | undefined } {
  const whole = Math.floor(steps / stepsPerUnit)
  const rest = steps - whole * stepsPerUnit
  if (rest === 0) return { whole, fraction: '' }
  const shared = commonDivisor(rest, stepsPerUnit)
  return { whole, fraction: FRACTION_WORDS[`${rest / shared}/${stepsPerUnit / shared}`] }
}

const FRACTION_WORDS: Record<string, string> = {
  '1/2': 'a half',
  '1/3': 'a third',
  '2/3': 'two thirds',
  '1/4': 'a quarter',
  '3/4': 'three quarters',
  '1/6': 'a sixth',
  '5/6': 'five sixths',
  '1/8': 'an eighth',
  '3/8': 'three eighths',
  '5/8': 'five eighths',
  '7/8': 'seven eighths',
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))

/** 1.3 → "one point three", 0.05 → "zero point zero five". */
function decimalWords(value: number): string {
  const [whole, places] = formatNumber(value, 3).split('.')
  const digits = [...(places ?? '')].map((digit) => numberWords(Number(digit)))
  return [numberWords(Number(whole)), ...(digits.length > 0 ? ['point', ...digits] : [])].join(' ')
}
