import { type FocusEvent, type KeyboardEvent, useRef, useState } from 'react'
import { DROPS_TEXT, TAKES_TEXT } from './fieldKeys.ts'

type Editable = HTMLInputElement | HTMLTextAreaElement

/** What a commit gives back: null when the text was taken, else one sentence that says what is wrong with it. */
export type Problem = string | null

/**
 * Text being typed over a committed value. Nothing leaves the field before Enter or blur; text
 * that is refused stays where it is with its problem, so nothing typed is lost; Escape brings the
 * committed value back. When the committed value changes from outside, the draft gives way to it.
 *
 * @param value the committed text
 * @param commit takes the text or returns why not; called only when the text differs from the value
 * @param multiline Enter makes a new line instead of committing
 */
export function useDraftText(value: string, commit: (text: string) => Problem, multiline = false) {
  const [draft, setDraft] = useState<string | null>(null)
  const [problem, setProblem] = useState<Problem>(null)
  const [seen, setSeen] = useState(value)
  // Escape blurs nothing, but a field that is closed by Escape must not commit on its way out.
  const escaped = useRef(false)

  const restore = () => {
    setDraft(null)
    setProblem(null)
  }
  if (seen !== value) {
    setSeen(value)
    restore()
  }

  const tryCommit = () => {
    if (draft === null) return
    const refused = draft === value ? null : commit(draft)
    setProblem(refused)
    if (refused === null) setDraft(null)
  }

  return {
    text: draft ?? value,
    problem,
    restore,
    inputProps: {
      value: draft ?? value,
      onChange: (event: { currentTarget: Editable }) => {
        escaped.current = false
        setDraft(event.currentTarget.value)
      },
      onBlur: (_: FocusEvent<Editable>) => {
        if (!escaped.current) tryCommit()
        escaped.current = false
      },
      onKeyDown: (event: KeyboardEvent<Editable>) => {
        if (event.nativeEvent.isComposing) return
        if (event.key === TAKES_TEXT && !multiline) {
          event.preventDefault()
          tryCommit()
        }
        if (event.key === DROPS_TEXT && draft !== null) {
          // The field's own Escape; it must not also close the panel around it.
          event.stopPropagation()
          escaped.current = true
          restore()
        }
      },
    },
  }
}
