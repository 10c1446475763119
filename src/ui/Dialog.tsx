import { type MouseEvent, type ReactNode, useEffect, useId, useRef } from 'react'
import { words } from '#words/words.ts'
import { Button } from './Button.tsx'
import './Dialog.css'

interface DialogProps {
  open: boolean
  title: string
  /** Asked to close: Escape, the close button, or a press outside. */
  onClose: () => void
  children: ReactNode
  /** Buttons of the last row, beside "close". */
  actions?: ReactNode
  /** Words of the closing button; "close" unless given. */
  closeLabel?: string
  /** As wide as the window allows; for tables. */
  wide?: boolean
}

/** The browser's own modal dialog: it holds the focus, gives it back, and closes on Escape. */
export function Dialog({ open, title, onClose, children, actions, closeLabel, wide }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const id = useId()

  useEffect(() => {
    const element = dialog.current
    if (!element) return
    if (open && !element.open) element.showModal()
    if (!open && element.open) element.close()
  }, [open])

  // The backdrop belongs to the dialog element; its content sits in an inner box.
  const closeFromOutside = (event: MouseEvent) => {
    if (event.target === dialog.current) onClose()
  }

  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape is the keyboard's way out and comes as `cancel`
    <dialog
      ref={dialog}
      className="ui-dialog"
      data-wide={wide}
      aria-labelledby={id}
      onClick={closeFromOutside}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      {open && (
        <div className="ui-dialog-box">
          <h2 id={id}>{title}</h2>
          {/* A long body is scrolled by the arrow keys, so it takes the focus. */}
          <div className="ui-dialog-body" tabIndex={wide ? 0 : undefined}>
            {children}
          </div>
          <div className="ui-dialog-actions">
            {actions}
            <Button onClick={onClose}>{closeLabel ?? words.app.close}</Button>
          </div>
        </div>
      )}
    </dialog>
  )
}
