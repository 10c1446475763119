import './SmallCurve.css'

interface Props {
  /** Across, 0 to 1, and up, 0 to 10. */
  points: readonly (readonly [across: number, up: number])[]
  label: string
}

const WIDTH = 96
const HEIGHT = 24

/** A curve as small as a word, for telling one from another. */
export function SmallCurve({ points, label }: Props) {
  const line = points.map(([across, up]) => `${(across * WIDTH).toFixed(1)} ${(HEIGHT - (up / 10) * HEIGHT).toFixed(1)}`).join('L')
  return (
    <svg className="ui-small-curve" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label={label}>
      <path d={`M0 ${HEIGHT}L${line}L${WIDTH} ${HEIGHT}Z`} />
    </svg>
  )
}
