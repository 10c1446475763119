import type { Scale } from '#engine/speech/speech.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { KnobSteps } from '#units/units.ts'
import { numberBefore, numberWords } from './numberWords.ts'

/** Units of a scale as they are said, in the singular and the plural; another one is said as it is written. */
const UNITS: Readonly<Record<string, readonly [string, string]>> = {
  turn: ['Umdrehung', 'Umdrehungen'],
  level: ['Stufe', 'Stufen'],
  step: ['Stufe', 'Stufen'],
  gear: ['Stufe', 'Stufen'],
}

const unitWords = (unit: string): readonly [one: string, many: string] => UNITS[unit.toLowerCase()] ?? [unit, unit]

/** Parts of one as they stand before a noun ("eine halbe Umdrehung") and behind a whole ("zweieinhalb"). */
const PARTS: Readonly<Record<string, readonly [before: string, behind: string]>> = {
  '1/2': ['halbe', 'einhalb'],
  '1/4': ['viertel', 'einviertel'],
  '3/4': ['dreiviertel', 'dreiviertel'],
  '1/3': ['drittel', 'eindrittel'],
  '2/3': ['zweidrittel', 'zweidrittel'],
  '1/8': ['achtel', 'einachtel'],
  '3/8': ['dreiachtel', 'dreiachtel'],
  '5/8': ['fünfachtel', 'fünfachtel'],
  '7/8': ['siebenachtel', 'siebenachtel'],
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))

function split(steps: KnobSteps, stepsPerUnit: number) {
  const whole = Math.floor(steps / stepsPerUnit)
  const rest = steps - whole * stepsPerUnit
  const shared = commonDivisor(rest, stepsPerUnit)
  return { whole, rest, part: PARTS[`${rest / shared}/${stepsPerUnit / shared}`] }
}

/** A size as it is said before "mehr" or "weniger": "eine viertel Umdrehung", "anderthalb Umdrehungen", "zwei Stufen". */
export function sizeWords(steps: KnobSteps, { unit, stepsPerUnit }: Scale): string {
  const [one, many] = unitWords(unit)
  const { whole, rest, part } = split(steps, stepsPerUnit)
  if (rest === 0) return `${numberBefore(whole)} ${whole === 1 ? one : many}`
  if (part === undefined) return `${decimalWords(steps / stepsPerUnit)} ${many}`
  return whole === 0 ? `eine ${part[0]} ${one}` : `${mixed(whole, part[1])} ${many}`
}

/** A place as it is said after "auf": "drei", "anderthalb", "dreiviertel". */
export function placeWords(steps: KnobSteps, { stepsPerUnit }: Pick<Scale, 'stepsPerUnit'>): string {
  const { whole, rest, part } = split(steps, stepsPerUnit)
  if (rest === 0) return numberWords(whole)
  if (part === undefined) return decimalWords(steps / stepsPerUnit)
  return whole === 0 ? part[1] : mixed(whole, part[1])
}

/** "anderthalb", "zweieinhalb", "eineinviertel". */
const mixed = (whole: number, part: string): string =>
  whole === 1 && part === 'einhalb' ? 'anderthalb' : `${whole === 1 ? 'ein' : numberWords(whole)}${part}`

/** 1.3 → "eins Komma drei". */
function decimalWords(value: number): string {
  const [whole, places] = formatNumber(value, 3).split('.')
  const digits = [...(places ?? '')].map((digit) => numberWords(Number(digit)))
  return [numberWords(Number(whole)), ...(digits.length > 0 ? ['Komma', ...digits] : [])].join(' ')
}
