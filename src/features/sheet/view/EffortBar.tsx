import type { Row } from '#features/sheet/contents/contents.ts'

/** Drawing units in an em, and the size of the hatched field: as wide as the bar, higher than any row. */
const EM = 10
const WIDTH = 1.2 * EM
const HEIGHT = 14 * EM
const STROKE = 0.9
/** Share of ink at effort 10. */
const DARKEST = 0.75

/**
 * Effort of one change, lying on the sheet's edge as time runs down: the longer and the denser the harder.
 * Strokes only, since browsers print no backgrounds.
 */
export function EffortBar({ effort: { from, to } }: Pick<Row, 'effort'>) {
  const [top, bottom] = [`${from * 10}%`, `${to * 10}%`]
  return (
    <span className="sheet-bar">
      <span className="sheet-bar-fill" style={{ clipPath: `polygon(0 0, ${top} 0, ${bottom} 100%, 0 100%)` }}>
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} strokeWidth={STROKE} aria-hidden="true">
          <path d={hatch((from + to) / 2)} />
        </svg>
      </span>
      <svg className="sheet-bar-edge" aria-hidden="true">
        <line x1={top} y1="0" x2={bottom} y2="100%" />
      </svg>
    </span>
  )
}

/** Lines at 45°, their ink in proportion to the effort; none at rest. */
function hatch(effort: number): string {
  if (effort <= 0) return ''
  const apart = (STROKE * Math.SQRT2) / ((DARKEST * effort) / 10)
  const count = Math.floor((HEIGHT + WIDTH) / apart)
  return Array.from({ length: count }, (_, line) => `M0 ${((line + 1) * apart).toFixed(2)}l${WIDTH}-${WIDTH}`).join('')
}
