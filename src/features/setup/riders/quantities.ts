import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSignedSetting } from '#units/formatSetting.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import { parseSetting } from '#units/parseSetting.ts'

type NumberKey = { [Key in keyof Rider]-?: NonNullable<Rider[Key]> extends number ? Key : never }[keyof Rider]

/** One number of a modelled rider: what it is called, what it means, how it is read and written. */
export interface Quantity {
  key: NumberKey
  label: string
  unit: (bike: Bike) => string
  means: string
  format: (value: number, bike: Bike) => string
  parse: (text: string, bike: Bike) => Parsed<number>
}

const plain = (value: number) => formatNumber(value, 1)

function quantity(key: Quantity['key'], label: string, unit: string, means: string, rules: Omit<NumberRules, 'unit'>, scale = 1): Quantity {
  const read = (text: string): Parsed<number> => {
    const number = parseNumber(text, { ...rules, unit, suffixes: [unit.toLowerCase()] })
    return number.ok ? parsed(number.value * scale) : number
  }
  return { key, label, unit: () => unit, means, format: (value) => plain(value / scale), parse: read }
}

const WATTS = { min: 30, max: 500, decimals: 1, example: '165' }

/** The numbers of a rider, the ones that matter most first. Bounds are wide; a sentence says what is not. */
export const QUANTITIES: readonly Quantity[] = [
  quantity('massKg', 'body mass', 'kg', 'The same watts cost a heavier body less of its reserve per kilogram.', {
    subject: 'Body mass',
    min: 30,
    max: 200,
    decimals: 1,
    example: '70',
  }),
  quantity('age', 'age', 'years', 'Gives the highest heart rate where none is known.', {
    subject: 'Age',
    min: 10,
    max: 100,
    example: '37',
  }),
  quantity(
    'vo2max',
    'highest oxygen uptake',
    'mL/kg/min',
    'The size of the engine: demand and heart are shares of it. Many adults lie from 25 to 50.',
    {
      subject: 'Highest oxygen uptake',
      min: 12,
      max: 90,
      decimals: 1,
      example: '40',
    },
  ),
  // At critical power seven trained men lasted 20 to 41 minutes: Brickley G et al., Eur J Appl Physiol 2002;88:146-151.
  quantity(
    'criticalPower',
    'critical power',
    'watts',
    'What the rider can hold without running down the reserve: about the best for half an hour, not for an hour.',
    { subject: 'Critical power', ...WATTS },
  ),
  quantity(
    'wPrime',
    'reserve',
    'kJ',
    'Work left above critical power. It drains above, and fills again below. Commonly 8 to 25.',
    { subject: 'The reserve', min: 1, max: 60, decimals: 1, example: '14' },
    1000,
  ),
  quantity('restingHr', 'resting heart', 'beats/min', 'Where the predicted heart rate starts.', {
    subject: 'Resting heart rate',
    min: 30,
    max: 120,
    example: '62',
  }),
  quantity('maxHr', 'highest heart', 'beats/min', 'Leave it empty to take 208 − 0.7 × age, which may be off by ten either way.', {
    subject: 'Highest heart rate',
    min: 90,
    max: 230,
    example: '182',
  }),
  quantity('firstThresholdHr', 'first threshold', 'beats/min', 'If a step test found it: under it a rider talks in whole sentences.', {
    subject: 'The first threshold',
    min: 60,
    max: 230,
    example: '132',
  }),
  quantity('secondThresholdHr', 'second threshold', 'beats/min', 'If a step test found it: over it no pace lasts.', {
    subject: 'The second threshold',
    min: 60,
    max: 230,
    example: '163',
  }),
  {
    key: 'baseOffset',
    label: 'own base',
    unit: ({ unit }) => `${unit}s`,
    means: 'How far this rider’s base lies from the bike’s; totals count from there.',
    format: (value, bike) => {
      const steps = value * bike.stepsPerUnit
      return Number.isInteger(steps) ? formatSignedSetting(steps, bike.stepsPerUnit) : plain(value)
    },
    parse: (text, bike) => {
      const steps = parseSetting(text, bike)
      if (!steps.ok) return steps
      const offset = steps.value / bike.stepsPerUnit
      const span = bike.max - (bike.min ?? 0)
      return Math.abs(offset) > span
        ? refused(`A base lies within the bike’s range, ${plain(span)} ${bike.unit}s at most away.`)
        : parsed(offset)
    },
  },
]

/** The numbers a rider need not have. */
const OPTIONAL = ['maxHr', 'firstThresholdHr', 'secondThresholdHr'] as const satisfies readonly NumberKey[]
type OptionalKey = (typeof OPTIONAL)[number]
export const isOptional = (key: NumberKey): key is OptionalKey => (OPTIONAL as readonly NumberKey[]).includes(key)
