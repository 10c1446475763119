import { type PointerEvent, useRef } from 'react'
import { useAction } from '#actions/useAction.ts'
import type { Awake } from '#ui/useWakeLock.ts'
import { words } from '#words/words.ts'
import type { LeadAction, ScreenGround } from './actions/leadGround.ts'

/** A finger that moves further is wiping, not pressing. */
const WIPE_PX = 16

/**
 * A large target. A press counts where the finger is lifted near where it came down, so that a wipe
 * over the glass presses nothing; the browser's own click would be lost for a moment after a wipe.
 * It keeps no focus after a finger or a mouse, so that space stays the one on the music.
 */
export function LeadButton<On extends ScreenGround>({ action, on }: { action: LeadAction<On>; on: On }) {
  const { words: label, key, drawn, pressed, props } = useAction(action, on)
  const down = useRef<{ pointer: number; x: number; y: number; timeStamp: number } | null>(null)
  const press = ({ button, pointerId, clientX, clientY, timeStamp }: PointerEvent) => {
    down.current = button === 0 ? { pointer: pointerId, x: clientX, y: clientY, timeStamp } : null
  }
  const lift = ({ currentTarget, pointerId, clientX, clientY }: PointerEvent<HTMLButtonElement>) => {
    const began = down.current
    down.current = null
    currentTarget.blur()
    if (began?.pointer === pointerId && Math.hypot(clientX - began.x, clientY - began.y) < WIPE_PX) props.onClick(began)
  }
  if (!drawn || action.stands?.(on) === false) return null
  return (
    <button
      type="button"
      className="lead-button"
      data-action={props['data-action']}
      data-tone={action.isMain ? 'main' : 'plain'}
      data-armed={action.armed?.(on)}
      aria-pressed={pressed}
      aria-keyshortcuts={props['aria-keyshortcuts']}
      onPointerDown={press}
      onPointerUp={lift}
      onPointerCancel={() => {
        down.current = null
      }}
      // A click of no pointer: the keyboard's on a button it has reached, or a screen reader's.
      onClick={(event) => event.detail === 0 && props.onClick(event)}
    >
      <span>{label}</span>
      {key && (
        <span className="lead-key" aria-hidden="true">
          {key}
        </span>
      )}
    </button>
  )
}

/** Said only where the leader has to do something about it. */
export function AwakeNote({ awake }: { awake: Awake }) {
  if (awake !== 'off') return null
  return <p className="lead-quiet lead-awake">{words.leading.keepsAwakeNot}</p>
}
