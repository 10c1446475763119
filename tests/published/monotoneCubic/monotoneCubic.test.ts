import { cubicAt, monotoneCubic } from '#engine/demand/monotoneCubic.ts'
import { harmonicSlopes, limitedMeanSlopes, limitedThreePointSlopes, type SlopeRule } from '#engine/demand/slopes.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  x: number[]
  y: number[]
  at: number[]
}

const pointsOf = ({ x, y }: Inputs) => x.map((value, i): [number, number] => [value, y[i]!])

const by =
  (rule: SlopeRule) =>
  (inputs: Inputs): number[] => {
    const curve = monotoneCubic(pointsOf(inputs), rule)
    return inputs.at.map((x) => cubicAt(curve, x))
  }

/** The published points, whichever row carries them. */
const RPN14 = rows.find(({ id }) => id === 'rpn14.pchip')!.inputs as Inputs

const fine = (rule: SlopeRule): number[] => {
  const curve = monotoneCubic(pointsOf(RPN14), rule)
  const [from, to] = [RPN14.x[0]!, RPN14.x.at(-1)!]
  return Array.from({ length: 400_001 }, (_, i) => cubicAt(curve, from + ((to - from) * i) / 400_000))
}

const risesInside = (rule: SlopeRule): boolean => {
  const values = fine(rule)
  // The last binary digit of a sum may fall either way.
  const digit = 1e-15
  return values.every(
    (value, i) => value >= RPN14.y[0]! - digit && value <= RPN14.y.at(-1)! + digit && (i === 0 || value >= values[i - 1]! - digit),
  )
}

const maximum = () => fine(harmonicSlopes).reduce((most, value) => Math.max(most, value))

checkRows('monotone cubic', rows, {
  'rpn14.pchip': by(harmonicSlopes),
  'rpn14.fc': by(limitedThreePointSlopes),
  'rpn14.fcmean': by(limitedMeanSlopes),
  'rpn14.monotone': () => [harmonicSlopes, limitedThreePointSlopes, limitedMeanSlopes].every(risesInside),
  'rpn14.overshoot': maximum,
})
