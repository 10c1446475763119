import type { Capacity } from '#engine/riderTest/capacity.ts'
import type { Trial } from '#plan/riderModel.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'

const WIDTH = 320
const HEIGHT = 170
const LEFT = 36
const BOTTOM = 24
const TOP = 10
const RIGHT = 10
const CHORDS = 80
const MINUTE = 60

interface Props {
  capacity: Capacity
  trials: readonly Trial[]
}

/** The trials, and the watts that can be held for a time as critical power and reserve have it. */
export function PowerCurve({ capacity: { criticalPower, wPrime }, trials }: Props) {
  const longest = Math.max(15 * MINUTE, ...trials.map(({ seconds }) => seconds))
  const shortest = Math.min(2 * MINUTE, ...trials.map(({ seconds }) => seconds))
  const held = (seconds: number) => criticalPower + wPrime / seconds
  const [low, high] = [0.85 * criticalPower, Math.max(held(shortest), ...trials.map(({ watts }) => watts))]
  const x = (seconds: number) => LEFT + (seconds / longest) * (WIDTH - LEFT - RIGHT)
  const y = (watts: number) => HEIGHT - BOTTOM - ((watts - low) / (high - low || 1)) * (HEIGHT - BOTTOM - TOP)
  const line = Array.from({ length: CHORDS + 1 }, (_, i) => {
    const seconds = shortest * (longest / shortest) ** (i / CHORDS)
    return `${i === 0 ? 'M' : 'L'}${x(seconds).toFixed(1)} ${y(held(seconds)).toFixed(1)}`
  }).join('')
  const minutes = [0, 5, 10, 15, 20, 30, 45, 60].filter((minute) => minute * MINUTE <= longest)
  return (
    <figure className="setup-curve">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.riders.curve({ trials })}>
        <path d={`M${LEFT} ${y(criticalPower)}H${WIDTH - RIGHT}`} className="setup-curve-base" />
        <text x={LEFT - 6} y={y(criticalPower) + 4} textAnchor="end">
          {number(criticalPower, 0)}
        </text>
        {minutes.map((minute) => (
          <text key={minute} x={x(minute * MINUTE)} y={HEIGHT - 6} textAnchor="middle">
            {minute}
          </text>
        ))}
        <path d={line} className="setup-curve-line" />
        {trials.map(({ seconds, watts }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two trials may be alike
          <circle key={index} cx={x(seconds)} cy={y(watts)} r="3.5" />
        ))}
      </svg>
      <figcaption className="setup-quiet">{words.riders.curveCaption}</figcaption>
    </figure>
  )
}
