import { type ReactNode, useState } from 'react'
import { Disclosure } from '#ui/Disclosure.tsx'

interface FoldProps {
  title: string
  /** What the fold holds, in words; absent while it holds nothing. Stands in the summary, so that folding hides no value. */
  holds?: string
  /** Stays folded at first although it holds something, which the summary then says in full. */
  closed?: boolean
  children: ReactNode
}

/** Rows that are rarely used. Open from the start where they hold something. */
export function Fold({ title, holds, closed, children }: FoldProps) {
  const [open, setOpen] = useState(holds !== undefined && !closed)
  const summary = (
    <>
      {title}
      {holds !== undefined && !open && <b className="panel-fold-holds"> {holds}</b>}
    </>
  )
  return (
    <Disclosure className="panel-fold" summary={summary} open={open} onToggle={setOpen}>
      {children}
    </Disclosure>
  )
}
