import { memo } from 'react'
import type { Block } from '#plan/model.ts'
import { EffortPicker } from '#ui/EffortPicker.tsx'
import { effortWords } from '#units/effortWords.ts'
import { formatEffort } from '#units/formatEffort.ts'
import './effort.css'

interface EffortFieldsProps {
  /** Absent where several blocks do not share it. */
  effort: Block['effort'] | null
  onChange: (effort: Block['effort']) => void
  /** Shows a value while it is dragged over; null when the drag is dropped. */
  onPreview: (effort: Block['effort'] | null) => void
}

const sayEffort = (effort: number) => `${formatEffort(effort)} of 10, ${effortWords(effort)}`

/** The intended effort: one level, or a straight ramp from one to another. */
export const EffortFields = memo(function EffortFields({ effort, onChange, onPreview }: EffortFieldsProps) {
  if (effort === null || effort.from === effort.to) {
    const level = effort?.from
    return (
      <div className="panel-effort">
        <EffortPicker
          label="effort"
          value={level ?? 0}
          say={level === undefined ? () => 'mixed' : sayEffort}
          onChange={(to) => onChange({ from: to, to })}
          onPreview={(to) => onPreview(to === null ? null : { from: to, to })}
        />
        <p className="panel-effort-words">
          <span>{level === undefined ? 'mixed' : sayEffort(level)}</span>
          {level !== undefined && (
            <button
              type="button"
              className="panel-link"
              aria-label="make it a ramp"
              onClick={() => onChange({ from: level, to: rampEnd(level) })}
            >
              ramp
            </button>
          )}
        </p>
      </div>
    )
  }
  const { from, to } = effort
  return (
    <div className="panel-effort">
      <EffortPicker
        label="effort, start"
        value={from}
        say={sayEffort}
        onChange={(next) => onChange({ from: next, to })}
        onPreview={(next) => onPreview(next === null ? null : { from: next, to })}
      />
      <EffortPicker
        label="effort, end"
        value={to}
        say={sayEffort}
        onChange={(next) => onChange({ from, to: next })}
        onPreview={(next) => onPreview(next === null ? null : { from, to: next })}
      />
      <p className="panel-effort-words">
        <span>
          {formatEffort(from)} to {formatEffort(to)}, {effortWords(from)} to {effortWords(to)}
        </span>
        <button type="button" className="panel-link" aria-label="make it level" onClick={() => onChange({ from: to, to })}>
          level
        </button>
      </p>
    </div>
  )
})

/** A new ramp goes one level up, or down from the top. */
const rampEnd = (level: number) => (level < 10 ? Math.min(10, level + 1) : level - 1)
