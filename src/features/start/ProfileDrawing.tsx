import type { PlayedBlock } from '#engine/report.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** What a profile needs of a played block. */
export interface ProfileStep {
  from: Seconds
  to: Seconds
  effort: { from: Effort; to: Effort }
}

/** The steps of a profile, from the blocks as they are played. */
export const profileOf = (blocks: readonly PlayedBlock[]): ProfileStep[] =>
  blocks.map(({ from, to, block }) => ({ from, to, effort: block.effort }))

interface Props {
  steps: readonly ProfileStep[]
  total: Seconds
}

/** A whole ride small: one area a block, as high as its effort and as deep in colour. Decorative; the words beside it say what it is. */
export function ProfileDrawing({ steps, total }: Props) {
  if (steps.length === 0 || total <= 0) return <svg className="start-profile" viewBox="0 0 1 10" aria-hidden="true" />
  return (
    <svg className="start-profile" viewBox={`0 0 ${total} 10`} preserveAspectRatio="none" aria-hidden="true">
      {steps.map((step) => (
        <polygon
          key={step.from}
          points={`${step.from},10 ${step.from},${top(step.effort.from)} ${step.to},${top(step.effort.to)} ${step.to},10`}
          fill={`var(--effort-${Math.round(Math.max(step.effort.from, step.effort.to))})`}
        />
      ))}
    </svg>
  )
}

/** Effort 0 keeps a sliver of height, so that a rest is seen to be there. */
const top = (effort: Effort): number => 10 - Math.max(effort, 0.4)
