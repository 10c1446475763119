import { type PointerEvent, useEffect, useRef } from 'react'
import type { Command } from '#plan/commands/command.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button, type ButtonProps } from '#ui/Button.tsx'

interface PreviewButtonProps extends Pick<ButtonProps, 'tone' | 'children' | 'className' | 'disabled' | 'aria-label'> {
  command: Command
  /** Called after the change was made. */
  onDone?: () => void
}

/**
 * A button that makes a change, as one undo step. The stage shows what it would do while the
 * button is pointed at or has the focus.
 */
export function PreviewButton({ command, onDone, tone = 'action', ...button }: PreviewButtonProps) {
  const store = useAppStore()
  const showing = useRef(false)
  const pointer = useRef({ x: Number.NaN, y: Number.NaN })
  const show = () => {
    showing.current = true
    store.getState().preview(command)
  }
  const point = ({ clientX, clientY }: PointerEvent) => {
    pointer.current = { x: clientX, y: clientY }
  }
  // A preview that moves the button from under a pointer at rest stays until the pointer moves: it would flicker otherwise.
  const leave = ({ clientX, clientY }: PointerEvent) => {
    if (clientX === pointer.current.x && clientY === pointer.current.y) window.addEventListener('pointermove', hide, { once: true })
    else hide()
  }
  const hide = () => {
    if (showing.current) store.getState().dropPreview()
    showing.current = false
  }
  const make = () => {
    hide()
    if (store.getState().run(command)) onDone?.()
  }
  // A button that goes away under the pointer hears no leaving.
  useEffect(
    () => () => {
      if (showing.current) store.getState().dropPreview()
    },
    [store],
  )
  return (
    <Button
      {...button}
      tone={tone}
      onPointerEnter={(event) => {
        point(event)
        show()
      }}
      onPointerMove={point}
      onPointerLeave={leave}
      onFocus={({ target }) => {
        // Focus that follows a press of the pointer, as when the button before it went away, points at nothing yet.
        if (target.matches(':focus-visible')) show()
      }}
      onBlur={hide}
      onClick={make}
    />
  )
}
