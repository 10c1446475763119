import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react'
import { EFFORT_LEVELS, effortPair } from './effort.ts'
import './EffortPicker.css'

interface EffortPickerProps {
  label: string
  /** 0–10, whole or half. */
  value: number
  onChange: (value: number) => void
  /** Called with every value passed while dragging, and with null when the drag ends or Escape drops it. */
  onPreview?: (value: number | null) => void
  hideLabel?: boolean
  /** How the value is read out: "7 of 10". */
  say?: (value: number) => string
}

const CELLS = Array.from({ length: EFFORT_LEVELS + 1 }, (_, level) => level)
const held = (value: number) => Math.min(EFFORT_LEVELS, Math.max(0, value))
const sayLevel = (value: number) => `${Number.isInteger(value) ? value : `${Math.floor(value) || ''}½`} of ${EFFORT_LEVELS}`

/**
 * Effort as eleven cells from pale to deep. A slider to assistive technology: arrows move one
 * level (half a level with Shift), Page keys two, Home and End to the ends, a digit straight to its level.
 */
export function EffortPicker({ label, value, onChange, onPreview, hideLabel, say = sayLevel }: EffortPickerProps) {
  const id = useId()
  const cells = useRef<HTMLDivElement>(null)
  const [dragged, setDragged] = useState<number | null>(null)
  const shown = dragged ?? value

  const drag = (level: number | null) => {
    setDragged(level)
    onPreview?.(level)
  }
  const levelAt = (event: PointerEvent) => {
    const box = cells.current!.getBoundingClientRect()
    return held(Math.floor(((event.clientX - box.left) / box.width) * CELLS.length))
  }
  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return
    cells.current!.setPointerCapture(event.pointerId)
    drag(levelAt(event))
  }
  const onPointerMove = (event: PointerEvent) => {
    if (dragged === null) return
    const level = levelAt(event)
    if (level !== dragged) drag(level)
  }
  const onPointerUp = () => {
    if (dragged === null) return
    drag(null)
    if (dragged !== value) onChange(dragged)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && dragged !== null) {
      event.stopPropagation()
      drag(null)
      return
    }
    const next = levelForKey(event, value)
    if (next === null) return
    event.preventDefault()
    if (held(next) !== value) onChange(held(next))
  }

  return (
    <div className="ui-effort">
      <span id={id} className={hideLabel ? 'ui-hidden' : 'ui-effort-label'}>
        {label}
      </span>
      <div
        ref={cells}
        className="ui-effort-cells"
        role="slider"
        tabIndex={0}
        aria-labelledby={id}
        aria-valuemin={0}
        aria-valuemax={EFFORT_LEVELS}
        aria-valuenow={shown}
        aria-valuetext={say(shown)}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={() => drag(null)}
        onKeyDown={onKeyDown}
      >
        {CELLS.map((level) => (
          <span
            key={level}
            className="ui-effort-cell"
            data-chosen={Math.round(shown) === level}
            style={effortPair(level)}
            aria-hidden="true"
          >
            {Math.round(shown) === level ? (Number.isInteger(shown) ? level : `${Math.floor(shown) || ''}½`) : ''}
          </span>
        ))}
      </div>
    </div>
  )
}

function levelForKey(event: KeyboardEvent, value: number): number | null {
  if (event.altKey || event.ctrlKey || event.metaKey) return null
  const small = event.shiftKey ? 0.5 : 1
  const steps: Record<string, number> = {
    ArrowUp: value + small,
    ArrowRight: value + small,
    ArrowDown: value - small,
    ArrowLeft: value - small,
    PageUp: value + 2,
    PageDown: value - 2,
    Home: 0,
    End: EFFORT_LEVELS,
  }
  if (event.key in steps) return steps[event.key]!
  return /^\d$/.test(event.key) ? Number(event.key) : null
}
