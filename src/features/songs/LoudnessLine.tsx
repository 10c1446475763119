import { memo } from 'react'
import './loudnessLine.css'

/** From the quietest that is drawn to the top of the line, LUFS. */
const LOWEST = -40
const HIGHEST = -5
const HEIGHT = 20

interface LoudnessLineProps {
  /** Loudness of each second, LUFS. */
  loudness: ArrayLike<number>
  /** What is drawn, for those who cannot see it. */
  label: string
  wide?: boolean
}

/** A song's loudness over its time as one small line, a point a second. */
export const LoudnessLine = memo(function LoudnessLine({ loudness, label, wide }: LoudnessLineProps) {
  const seconds = loudness.length
  if (seconds < 2) return null
  const points = Array.from(loudness, (level, second) => `${second} ${heightOf(level)}`)
  return (
    <svg
      className="song-loudness"
      data-wide={wide || undefined}
      viewBox={`0 0 ${seconds - 1} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={label}
    >
      <path d={`M0 ${HEIGHT}L${points.join('L')}L${seconds - 1} ${HEIGHT}Z`} />
      <path data-line d={`M${points.join('L')}`} vectorEffect="non-scaling-stroke" />
    </svg>
  )
})

const heightOf = (level: number): string => {
  const share = Math.min(1, Math.max(0, (level - LOWEST) / (HIGHEST - LOWEST)))
  return (HEIGHT - 1 - share * (HEIGHT - 2)).toFixed(1)
}
