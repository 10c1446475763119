/** Length of a mark in millimetres; crosses in the middle are as wide on each side. */
const LENGTH = 5

/** Where to cut a page in four: marks at the edges and a cross in the middle, strokes only. */
export function CutMarks({ width, height }: { width: number; height: number }) {
  const [x, y] = [width / 2, height / 2]
  const marks = [
    `M${x} 0v${LENGTH}M${x} ${height}v${-LENGTH}`,
    `M0 ${y}h${LENGTH}M${width} ${y}h${-LENGTH}`,
    `M${x - LENGTH} ${y}h${2 * LENGTH}M${x} ${y - LENGTH}v${2 * LENGTH}`,
  ]
  return (
    <svg className="sheet-cut-marks" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path d={marks.join('')} fill="none" stroke="black" strokeWidth="0.2" />
    </svg>
  )
}
