import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react'
import { words } from '#words/words.ts'
import { EFFORT_LEVELS, effortPair } from './effort.ts'
import { levelForKey } from './effortKeys.ts'
import './EffortPicker.css'

interface EffortPickerProps {
  label: string
  /** 0–10, whole or half; null where there is no one value, as for several things that differ. */
  value: number | null
  onChange: (value: number) => void
  /** Called with every value passed while dragging, and with null when the drag ends or Escape drops it. What it shows may come back as `value`. */
  onPreview?: (value: number | null) => void
  hideLabel?: boolean
  /** How the value is read out: "7 of 10". */
  say?: (value: number) => string
}

/** A drag under way. `from` is the value it began at: `value` itself may follow the preview meanwhile. */
interface Drag {
  from: number | null
  to: number
}

const CELLS = Array.from({ length: EFFORT_LEVELS + 1 }, (_, level) => level)
const held = (value: number) => Math.min(EFFORT_LEVELS, Math.max(0, value))
const sayLevel = (level: number) => words.app.effortOf({ level })

/**
 * Effort as eleven cells from pale to deep. A slider to assistive technology: arrows move one
 * level (half a level with Shift), Page keys two, Home and End to the ends, a digit straight to its level.
 */
export function EffortPicker({ label, value, onChange, onPreview, hideLabel, say = sayLevel }: EffortPickerProps) {
  const id = useId()
  const cells = useRef<HTMLDivElement>(null)
  const [drag, setDrag] = useState<Drag | null>(null)
  const shown = drag?.to ?? value

  const moveTo = (from: number | null, to: number) => {
    setDrag({ from, to })
    onPreview?.(to)
  }
  const letGo = () => {
    setDrag(null)
    onPreview?.(null)
  }
  const levelAt = (event: PointerEvent) => {
    const box = cells.current!.getBoundingClientRect()
    return held(Math.floor(((event.clientX - box.left) / box.width) * CELLS.length))
  }
  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return
    cells.current!.setPointerCapture(event.pointerId)
    // A finger that slides gives no focus of itself; the keys belong to what was touched last.
    cells.current!.focus({ preventScroll: true })
    moveTo(value, levelAt(event))
  }
  const onPointerMove = (event: PointerEvent) => {
    if (drag === null) return
    const level = levelAt(event)
    if (level !== drag.to) moveTo(drag.from, level)
  }
  const onPointerUp = () => {
    if (drag === null) return
    letGo()
    if (drag.to !== drag.from) onChange(drag.to)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && drag !== null) {
      event.stopPropagation()
      letGo()
      return
    }
    const next = levelForKey(event, shown ?? 0)
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
        aria-valuenow={shown ?? 0}
        aria-valuetext={shown === null ? words.app.mixed : say(shown)}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={letGo}
        onKeyDown={onKeyDown}
      >
        {CELLS.map((level) => {
          const chosen = shown !== null && Math.round(shown) === level
          return (
            <span key={level} className="ui-effort-cell" data-chosen={chosen} style={effortPair(level)} aria-hidden="true">
              {chosen && (Number.isInteger(shown) ? level : `${Math.floor(shown) || ''}½`)}
            </span>
          )
        })}
      </div>
    </div>
  )
}
