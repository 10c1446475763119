import type { ReactNode } from 'react'
import './Disclosure.css'

interface DisclosureProps {
  summary: ReactNode
  children: ReactNode
  /** Open at first, or always as told when `onToggle` is given. */
  open?: boolean
  onToggle?: (open: boolean) => void
  className?: string
}

/** More of the same, folded away. The browser's own details element. */
export function Disclosure({ summary, children, open, onToggle, className }: DisclosureProps) {
  return (
    <details className={`ui-disclosure ${className ?? ''}`} open={open} onToggle={(event) => onToggle?.(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <div className="ui-disclosure-body">{children}</div>
    </details>
  )
}
