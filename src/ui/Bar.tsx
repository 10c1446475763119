import type { ReactNode } from 'react'
import './Bar.css'

interface Props {
  /** What it is about, for those who hear the page. */
  label: string
  /** Whole sentences. */
  children: ReactNode
  /** The ways on from here. */
  actions: ReactNode
  /** States how things are read; nothing is waited for. */
  quiet?: boolean
}

/** A bar across the page that says under which condition it is shown; it stands as long as that holds. */
export function Bar({ label, children, actions, quiet = false }: Props) {
  return (
    <section className="ui-bar ui-no-print" aria-label={label} data-quiet={quiet}>
      <p>{children}</p>
      <div className="ui-bar-actions">{actions}</div>
    </section>
  )
}
