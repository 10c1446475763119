import { type ReactNode, useEffect, useId, useRef } from 'react'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'
import './proposals.css'

interface ProposalProps {
  title: string
  /** One line under the title. */
  where: ReactNode
  children: ReactNode
  /** What can be done about it, before "cancel". */
  actions?: ReactNode
  onClose: () => void
}

/**
 * Something offered for the whole ride, beside the stage that shows it: it takes the place of the
 * details until it is taken or left. Escape leaves it.
 */
export function Proposal({ title, where, children, actions, onClose }: ProposalProps) {
  const id = useId()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  return (
    <section
      role="dialog"
      className="proposal panel"
      aria-labelledby={id}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || event.defaultPrevented) return
        event.stopPropagation()
        onClose()
      }}
    >
      <header className="panel-header">
        <h2 id={id} ref={heading} tabIndex={-1}>
          {title}
        </h2>
        <p className="panel-where">{where}</p>
      </header>
      <div className="proposal-body">{children}</div>
      <div className="proposal-actions">
        {actions}
        <Button onClick={onClose}>{actions ? words.fit.cancel : words.fit.close}</Button>
      </div>
    </section>
  )
}
