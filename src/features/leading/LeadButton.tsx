import type { MouseEvent, PointerEvent, ReactNode } from 'react'
import type { Awake } from '#ui/useWakeLock.ts'
import { useFullScreen } from './useFullScreen.ts'

interface LeadButtonProps {
  children: ReactNode
  /** Drawn small: the key that does the same. */
  keys?: string
  tone?: 'main' | 'plain'
  pressed?: boolean
  armed?: boolean
  disabled?: boolean
  /** For what is measured: called as the finger comes down, with the press's own timestamp. */
  onDown?: (timeStamp: number) => void
  /** For all else: called when the finger is lifted on the button. */
  onPress?: (timeStamp: number) => void
}

/** A large target. It keeps no focus after a finger or a mouse, so that space stays the one on the music. */
export function LeadButton({ children, keys, tone = 'plain', pressed, armed, disabled, onDown, onPress }: LeadButtonProps) {
  const down = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button === 0) onDown?.(event.timeStamp)
  }
  const click = (event: MouseEvent<HTMLButtonElement>) => {
    onPress?.(event.timeStamp)
    // A click of no pointer: the keyboard's on a button it has reached, or a screen reader's.
    if (event.detail === 0) onDown?.(event.timeStamp)
  }
  return (
    <button
      type="button"
      className="lead-button"
      data-tone={tone}
      data-armed={armed}
      aria-pressed={pressed}
      disabled={disabled}
      onPointerDown={onDown && down}
      onPointerUp={({ currentTarget }) => currentTarget.blur()}
      onClick={click}
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
