import type { ReactNode } from 'react'
import { words } from '#words/words.ts'
import { Button } from './Button.tsx'
import './Notice.css'

interface NoticeProps {
  /** Whole sentences: what happened, and what can be done. */
  children: ReactNode
  /** Interrupts a screen reader; for what went wrong. */
  urgent?: boolean
  /** Buttons that act on it. */
  actions?: ReactNode
  onDismiss?: () => void
}

/** A bar of one message and its actions. It stays until it is dismissed: nothing that must be read vanishes by itself. */
export function Notice({ children, urgent, actions, onDismiss }: NoticeProps) {
  return (
    <div className="ui-notice ui-no-print" role={urgent ? 'alert' : 'status'} data-urgent={urgent}>
      <p>{children}</p>
      {actions}
      {onDismiss && (
        <Button tone="quiet" onClick={onDismiss}>
          {words.app.dismiss}
        </Button>
      )}
    </div>
  )
}
