import { type PointerEvent, type ReactNode, useRef } from 'react'
import type { Awake } from '#ui/useWakeLock.ts'
import { useFullScreen } from './useFullScreen.ts'

interface LeadButtonProps {
  children: ReactNode
  /** Drawn small: the key that does the same. */
  keys?: string
  tone?: 'main' | 'plain'
  pressed?: boolean
  armed?: boolean
  /** Gets the timestamp at which the finger came down: when it was meant, not when it was lifted. */
  onPress: (timeStamp: number) => void
}

/** A finger that moves further is wiping, not pressing. */
const WIPE_PX = 16

/**
 * A large target. A press counts where the finger is lifted near where it came down, so that a wipe
 * over the glass presses nothing; the browser's own click would be lost for a moment after a wipe.
 * It keeps no focus after a finger or a mouse, so that space stays the one on the music.
 */
export function LeadButton({ children, keys, tone = 'plain', pressed, armed, onPress }: LeadButtonProps) {
  const down = useRef<{ pointer: number; x: number; y: number; timeStamp: number } | null>(null)
  const press = ({ button, pointerId, clientX, clientY, timeStamp }: PointerEvent) => {
    down.current = button === 0 ? { pointer: pointerId, x: clientX, y: clientY, timeStamp } : null
  }
  const lift = ({ currentTarget, pointerId, clientX, clientY }: PointerEvent<HTMLButtonElement>) => {
    const began = down.current
    down.current = null
    currentTarget.blur()
    if (began?.pointer === pointerId && Math.hypot(clientX - began.x, clientY - began.y) < WIPE_PX) onPress(began.timeStamp)
  }
  return (
    <button
      type="button"
      className="lead-button"
      data-tone={tone}
      data-armed={armed}
      aria-pressed={pressed}
      onPointerDown={press}
      onPointerUp={lift}
      onPointerCancel={() => {
        down.current = null
      }}
      // A click of no pointer: the keyboard's on a button it has reached, or a screen reader's.
      onClick={({ detail, timeStamp }) => detail === 0 && onPress(timeStamp)}
    >
      <span>{children}</span>
      {keys && (
        <span className="lead-key" aria-hidden="true">
          {keys}
        </span>
      )}
    </button>
  )
}

export function FullScreenButton() {
  const { full, toggle } = useFullScreen()
  if (!toggle) return null
  return (
    <LeadButton keys="F" onPress={toggle}>
      {full ? 'leave full screen' : 'full screen'}
    </LeadButton>
  )
}

export function LeaveButton({ armed, onPress }: { armed: boolean; onPress: () => void }) {
  return (
    <LeadButton keys="Esc" armed={armed} onPress={onPress}>
      {armed ? 'press again to leave' : 'leave'}
    </LeadButton>
  )
}

/** Said only where the leader has to do something about it. */
export function AwakeNote({ awake }: { awake: Awake }) {
  if (awake !== 'off') return null
  return <p className="lead-quiet lead-awake">This browser does not keep the screen on: switch off sleep in the system’s settings.</p>
}
