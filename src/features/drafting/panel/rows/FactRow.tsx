import type { ReactNode } from 'react'

interface FactRowProps {
  label: string
  children: ReactNode
}

/** Something derived, which is read and not typed. */
export function FactRow({ label, children }: FactRowProps) {
  return (
    <div className="panel-row">
      <span className="panel-label">{label}</span>
      <div className="panel-fact">{children}</div>
    </div>
  )
}
