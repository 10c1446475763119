import { calibrationOf, referenceWatts } from '#engine/demand/calibration.ts'
import type { Bike } from '#plan/model.ts'
import { words } from '#words/words.ts'
import { sayAt } from './fields.ts'

const WIDTH = 320
const HEIGHT = 200
const LEFT = 36
const BOTTOM = 26
const TOP = 12
const RIGHT = 10
/** Chords a curve is drawn with. */
const CHORDS = 120

interface Props {
  bike: Bike
  /** Another calibration of the same scale, drawn thin under it. */
  before?: Bike
}

/** Power over setting at the reference cadence, as the engine joins the points; what lies beyond them is not drawn. */
export function BikeCurve({ bike, before }: Props) {
  const bikes = before ? [before, bike] : [bike]
  const ends = bikes.flatMap(({ points }) => [points[0]![0], points.at(-1)![0]])
  const [low, high] = [Math.min(...ends), Math.max(...ends)]
  const top = Math.max(20, ...bikes.map(({ points }) => points.at(-1)![1]))
  const x = (setting: number) => LEFT + ((setting - low) / (high - low || 1)) * (WIDTH - LEFT - RIGHT)
  const y = (watts: number) => HEIGHT - BOTTOM - (watts / top) * (HEIGHT - BOTTOM - TOP)
  const step = niceStep((high - low) / 6)
  const settings = Array.from({ length: Math.floor((high - low) / step + 1e-9) + 1 }, (_, i) => low + i * step)
  const wattStep = niceStep(top / 4)
  const watts = Array.from({ length: Math.floor(top / wattStep) + 1 }, (_, i) => i * wattStep)
  return (
    <figure className="setup-curve">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={sayCurve(bike)}>
        {watts.map((value) => (
          <g key={value}>
            <path d={`M${LEFT} ${y(value)}H${WIDTH - RIGHT}`} className="setup-curve-rule" />
            <text x={LEFT - 6} y={y(value) + 4} textAnchor="end">
              {value}
            </text>
          </g>
        ))}
        {settings.map((setting) => (
          <text key={setting} x={x(setting)} y={HEIGHT - 8} textAnchor="middle">
            {sayAt(setting, bike)}
          </text>
        ))}
        {bike.base >= low && bike.base <= high && <path d={`M${x(bike.base)} ${y(0)}V${TOP}`} className="setup-curve-base" />}
        {before && <path d={curve(before, x, y)} className="setup-curve-before" />}
        <path d={curve(bike, x, y)} className="setup-curve-line" />
        {bike.points.map(([setting, power]) => (
          <circle key={setting} cx={x(setting)} cy={y(power)} r="3" />
        ))}
      </svg>
      <figcaption className="setup-quiet">
        {words.setup.curveCaption({ rpm: bike.referenceRpm, unit: bike.unit, before: before !== undefined })}
      </figcaption>
    </figure>
  )
}

function curve(bike: Bike, x: (setting: number) => number, y: (watts: number) => number): string {
  const calibration = calibrationOf(bike)
  const { lowest, highest } = calibration
  return Array.from({ length: CHORDS + 1 }, (_, i) => {
    const setting = lowest + ((highest - lowest) * i) / CHORDS
    return `${i === 0 ? 'M' : 'L'}${x(setting).toFixed(2)} ${y(referenceWatts(calibration, setting)).toFixed(2)}`
  }).join('')
}

const sayCurve = (bike: Bike): string =>
  words.setup.curve({ rpm: bike.referenceRpm, points: bike.points.map(([setting, watts]) => ({ watts, at: sayAt(setting, bike) })) })

/** A step between marks of an axis that reads well: 1, 2 or 5 times a power of ten, at least the given size. */
function niceStep(least: number): number {
  if (!(least > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(least))
  return ([1, 2, 5, 10].find((factor) => factor * power >= least * (1 - 1e-9)) ?? 10) * power
}
