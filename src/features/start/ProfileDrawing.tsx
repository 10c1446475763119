import { useId } from 'react'
import type { CurvePoint } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'

interface Props {
  /** Intended effort, 0–10, in runs without a gap. */
  curve: readonly (readonly CurvePoint[])[]
  total: Seconds
}

/** Units of the drawing across; it is stretched to the width it is given. */
const WIDTH = 1000
const HEIGHT = 64
/** Keeps half the edge's stroke inside. */
const MARGIN = 2
const LEVELS = Array.from({ length: 11 }, (_, level) => level)

/** A whole ride small: the curve of its effort, deeper the higher it stands. Decorative; the words beside it say what it is. */
export function ProfileDrawing({ curve, total }: Props) {
  const depth = useId()
  const y = (effort: number) => HEIGHT - MARGIN - (effort / 10) * (HEIGHT - 2 * MARGIN)
  const edges = curve.map((run) => run.map(({ at, value }) => `${((at / total) * WIDTH).toFixed(1)} ${y(value).toFixed(1)}`).join('L'))
  const areas = curve.flatMap((run, index) => {
    const [first, last] = [run[0], run.at(-1)]
    if (!first || !last) return []
    return `M${(first.at / total) * WIDTH} ${y(0)}L${edges[index]}L${(last.at / total) * WIDTH} ${y(0)}Z`
  })
  return (
    <svg className="start-profile" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
      <defs>
        <linearGradient id={depth} gradientUnits="userSpaceOnUse" x1="0" x2="0" y1={y(0)} y2={y(10)}>
          {LEVELS.map((level) => (
            <stop key={level} offset={level / 10} style={{ stopColor: `var(--effort-${level})` }} />
          ))}
        </linearGradient>
      </defs>
      <path d={areas.join('')} fill={`url(#${depth})`} />
      <path d={edges.map((edge) => `M${edge}`).join('')} className="start-profile-edge" vectorEffect="non-scaling-stroke" />
      <line x1="0" x2={WIDTH} y1={y(0)} y2={y(0)} className="start-profile-ground" vectorEffect="non-scaling-stroke" />
    </svg>
  )
}
