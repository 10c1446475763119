import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { parseNumber } from '#units/parseNumber.ts'
import { parseSetting } from '#units/parseSetting.ts'
import { number, signedSetting } from '#words/forms.ts'
import type { Refusal } from '#words/said.ts'
import { words } from '#words/words.ts'
import { formatMass, massUnit, parseMass } from './mass.ts'

type NumberKey = { [Key in keyof Rider]-?: NonNullable<Rider[Key]> extends number ? Key : never }[keyof Rider]

/** One number of a modelled rider: how it is read and written. */
export interface Quantity {
  key: NumberKey
  unit: (bike: Bike) => string
  format: (value: number, bike: Bike) => string
  parse: (text: string, bike: Bike) => Parsed<number, Refusal>
}

interface Bounds {
  min: number
  max: number
  /** None unless given. */
  decimals?: number
  suffixes: readonly string[]
  /** Of the number kept in one of what is shown: joules in a kilojoule. */
  scale?: number
}

const plain = (value: number) => number(value, 1)

function quantity(key: Exclude<NumberKey, 'massKg' | 'baseOffset'>, { scale = 1, ...bounds }: Bounds): Quantity {
  return {
    key,
    unit: () => words.riders.unit({ of: key }),
    format: (value) => plain(value / scale),
    parse: (text) => {
      const read = parseNumber(text, { of: key, ...bounds })
      return read.ok ? parsed(read.value * scale) : read
    },
  }
}

const PULSE = ['beats/min', 'bpm']

/** The numbers of a rider, the ones that matter most first. Bounds are wide; a sentence says what is not. */
export const QUANTITIES: readonly Quantity[] = [
  { key: 'massKg', unit: massUnit, format: formatMass, parse: parseMass },
  quantity('age', { min: 10, max: 100, suffixes: ['years', 'jahre'] }),
  quantity('vo2max', { min: 12, max: 90, decimals: 1, suffixes: ['ml/kg/min'] }),
  // At critical power seven trained men lasted 20 to 41 minutes: Brickley G et al., Eur J Appl Physiol 2002;88:146-151.
  quantity('criticalPower', { min: 30, max: 500, decimals: 1, suffixes: ['watts', 'watt', 'w'] }),
  quantity('wPrime', { min: 1, max: 60, decimals: 1, suffixes: ['kj'], scale: 1000 }),
  quantity('restingHr', { min: 30, max: 120, suffixes: PULSE }),
  quantity('maxHr', { min: 90, max: 230, suffixes: PULSE }),
  quantity('firstThresholdHr', { min: 60, max: 230, suffixes: PULSE }),
  quantity('secondThresholdHr', { min: 60, max: 230, suffixes: PULSE }),
  {
    key: 'baseOffset',
    unit: ({ unit }) => words.measures.unitOf(unit, true),
    format: (value, bike) => {
      const steps = value * bike.stepsPerUnit
      return Number.isInteger(steps) ? signedSetting(steps, bike.stepsPerUnit) : plain(value)
    },
    parse: (text, bike) => {
      const steps = parseSetting(text, bike)
      if (!steps.ok) return steps
      const offset = steps.value / bike.stepsPerUnit
      const span = bike.max - (bike.min ?? 0)
      return Math.abs(offset) > span ? refused(words.riders.baseTooFar({ span, unit: bike.unit })) : parsed(offset)
    },
  },
]

/** The numbers a rider need not have. */
const OPTIONAL = ['maxHr', 'firstThresholdHr', 'secondThresholdHr'] as const satisfies readonly NumberKey[]
type OptionalKey = (typeof OPTIONAL)[number]
export const isOptional = (key: NumberKey): key is OptionalKey => (OPTIONAL as readonly NumberKey[]).includes(key)
