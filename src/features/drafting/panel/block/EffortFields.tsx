import { type FocusEvent, memo, useState } from 'react'
import type { Block } from '#plan/model.ts'
import { EffortPicker } from '#ui/EffortPicker.tsx'
import { words } from '#words/words.ts'
import './effort.css'

interface EffortFieldsProps {
  /** Null where several blocks do not share it. */
  effort: Block['effort'] | null
  onChange: (effort: Block['effort']) => void
  /** Shows a value while it is dragged over; null when the drag is dropped. */
  onPreview: (effort: Block['effort'] | null) => void
}

const sayEffort = (level: number) => words.panelsBlock.effortSays({ level })

/**
 * The intended effort: one level, or a straight ramp from one to another. A ramp in the hand stays one while its ends
 * pass each other, so that neither strip goes from under the pointer or the focus.
 */
export const EffortFields = memo(function EffortFields({ effort, onChange, onPreview }: EffortFieldsProps) {
  const [inHand, setInHand] = useState(false)
  const isRamp = effort !== null && (inHand || effort.from !== effort.to)
  const leave = ({ currentTarget, relatedTarget }: FocusEvent) => {
    if (!currentTarget.contains(relatedTarget)) setInHand(false)
  }
  const show = (shown: Block['effort'] | null) => {
    if (isRamp) setInHand(true)
    onPreview(shown)
  }
  const level = (to: number) => ({ from: to, to })
  const withStart = (from: number) => (isRamp ? { from, to: effort.to } : level(from))
  const withEnd = (to: number) => ({ from: effort!.from, to })
  const toggleRamp = () => {
    setInHand(!isRamp)
    onChange(isRamp ? level(effort.to) : { from: effort!.from, to: rampEnd(effort!.from) })
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only watches where the focus goes
    <div className="panel-effort" onFocus={() => setInHand(isRamp)} onBlur={leave}>
      <EffortPicker
        label={isRamp ? words.panelsBlock.effortStart : words.panelsBlock.effort}
        value={effort?.from ?? null}
        say={sayEffort}
        onChange={(from) => onChange(withStart(from))}
        onPreview={(from) => show(from === null ? null : withStart(from))}
      />
      {isRamp && (
        <EffortPicker
          label={words.panelsBlock.effortEnd}
          value={effort.to}
          say={sayEffort}
          onChange={(to) => onChange(withEnd(to))}
          onPreview={(to) => show(to === null ? null : withEnd(to))}
        />
      )}
      <p className="panel-effort-words">
        <span>{wordsOf(effort, isRamp)}</span>
        {effort !== null && (
          <button
            type="button"
            className="panel-link"
            aria-label={isRamp ? words.panelsBlock.makeLevel : words.panelsBlock.makeRamp}
            onClick={toggleRamp}
          >
            {isRamp ? words.panelsBlock.level : words.panelsBlock.ramp}
          </button>
        )}
      </p>
    </div>
  )
})

function wordsOf(effort: Block['effort'] | null, isRamp: boolean): string {
  if (effort === null) return words.panels.mixed
  return isRamp ? words.panelsBlock.rampSays(effort) : sayEffort(effort.from)
}

/** A new ramp goes one level up, or down from the top. */
const rampEnd = (level: number) => (level < 10 ? Math.min(10, level + 1) : level - 1)
