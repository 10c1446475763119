import { useId, useState } from 'react'
import { words } from '#words/words.ts'
import './Source.css'

interface SourceProps {
  /** Where it comes from: a publication, or that it is common practice. */
  text: string
}

/** Where a figure or a rule comes from, one press away: it opens in the line the mark stands in. Escape closes it. */
export function Source({ text }: SourceProps) {
  const [open, setOpen] = useState(false)
  const id = useId()
  return (
    <span className="ui-source">
      <button
        type="button"
        className="ui-source-mark"
        aria-label={words.checkList.source}
        aria-expanded={open}
        aria-controls={id}
        title={text}
        onClick={() => setOpen(!open)}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || !open) return
          event.stopPropagation()
          setOpen(false)
        }}
      >
        <span aria-hidden="true">i</span>
      </button>
      <span id={id} className="ui-source-text" hidden={!open}>
        {text}
      </span>
    </span>
  )
}
