import { cubicAt, type MonotoneCubic, monotoneCubic } from '#engine/demand/monotoneCubic.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { limitedMeanSlopes, limitedThreePointSlopes, type SlopeRule } from '#tests/support/reference/slopes.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  x: number[]
  y: number[]
  at: number[]
}

type Curve = (inputs: Inputs) => MonotoneCubic

/** The curve a bike's points are joined by. */
const ours: Curve = ({ x, y }) => monotoneCubic(x.map((value, i): [number, number] => [value, y[i]!]))

/** The same cubic with the slopes of another rule. */
const by =
  (rule: SlopeRule): Curve =>
  ({ x, y }) => {
    const widths = x.slice(1).map((right, i) => right - x[i]!)
    return {
      x,
      y,
      slope: rule(
        widths,
        widths.map((width, i) => (y[i + 1]! - y[i]!) / width),
      ),
    }
  }

const values =
  (curve: Curve) =>
  (inputs: Inputs): number[] =>
    inputs.at.map((x) => cubicAt(curve(inputs), x))

/** The published points, whichever row carries them. */
const RPN14 = rows.find(({ id }) => id === 'rpn14.pchip')!.inputs as Inputs

const fine = (curve: Curve): number[] => {
  const cubic = curve(RPN14)
  const [from, to] = [RPN14.x[0]!, RPN14.x.at(-1)!]
  return Array.from({ length: 400_001 }, (_, i) => cubicAt(cubic, from + ((to - from) * i) / 400_000))
}

const risesInside = (curve: Curve): boolean => {
  const all = fine(curve)
  // The last binary digit of a sum may fall either way.
  const digit = 1e-15
  return all.every(
    (value, i) => value >= RPN14.y[0]! - digit && value <= RPN14.y.at(-1)! + digit && (i === 0 || value >= all[i - 1]! - digit),
  )
}

const maximum = () => fine(ours).reduce((most, value) => Math.max(most, value))

checkRows(
  'monotone cubic',
  rows,
  {
    'rpn14.pchip': values(ours),
    'rpn14.monotone': () => [ours, by(limitedThreePointSlopes), by(limitedMeanSlopes)].every(risesInside),
    'rpn14.overshoot': maximum,
  },
  { 'rpn14.fc': values(by(limitedThreePointSlopes)), 'rpn14.fcmean': values(by(limitedMeanSlopes)) },
)
