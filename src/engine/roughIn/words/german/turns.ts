import { isSingle, type LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'
import { numberWords } from './numbers.ts'

/** Units of a scale in the singular and the plural; another one is said as it is written. */
const UNITS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  turn: ['Umdrehung', 'Umdrehungen'],
  level: ['Stufe', 'Stufen'],
  gear: ['Stufe', 'Stufen'],
}

/** Parts of one before a noun ("eine halbe Umdrehung") and behind a whole ("zweieinhalb"). */
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

/** "eine viertel Umdrehung", "anderthalb Umdrehungen", "zwei Stufen". */
export function sizeWords(steps: KnobSteps, { unit, stepsPerUnit }: Bike): string {
  const [one, many] = UNITS[unit.toLowerCase()] ?? [unit, unit]
  const { whole, rest, part } = split(steps, stepsPerUnit)
  if (rest === 0) return whole === 1 ? `eine ${one}` : `${numberWords(whole)} ${many}`
  if (part === undefined) return `${decimalWords(steps / stepsPerUnit)} ${many}`
  return whole === 0 ? `eine ${part[0]} ${one}` : `${mixed(whole, part[1])} ${many}`
}

/** A place to turn to: "auf anderthalb", "auf Grundwiderstand". */
export function placeWords(state: LedgerState, { stepsPerUnit }: Bike, datum: Ride['datum']): string {
  const place = (steps: KnobSteps): string => {
    if (steps === 0 && datum === 'base') return 'Grundwiderstand'
    if (steps < 0) return `${placeOf(-steps, stepsPerUnit)} unter ${datum === 'base' ? 'Grundwiderstand' : 'null'}`
    return placeOf(steps, stepsPerUnit)
  }
  return isSingle(state) || state.low === null || state.high === null
    ? `auf ${place(state.nominal)}`
    : `auf ${place(state.low)} bis ${place(state.high)}`
}

function placeOf(steps: KnobSteps, stepsPerUnit: number): string {
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
  const [whole, places] = String(Math.round(value * 1000) / 1000).split('.')
  const digits = [...(places ?? '')].map((digit) => numberWords(Number(digit)))
  return [numberWords(Number(whole)), ...(digits.length > 0 ? ['Komma', ...digits] : [])].join(' ')
}
