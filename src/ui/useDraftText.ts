import { type FocusEvent, type KeyboardEvent, useContext, useEffect, useRef, useState } from 'react'
import type { Refusal } from '#words/said.ts'
import { DraftKeeping, DraftScope } from './draftKeeping.ts'
import { DROPS_TEXT, TAKES_TEXT } from './fieldKeys.ts'

type Editable = HTMLInputElement | HTMLTextAreaElement

/** What a commit gives back: null when the text was taken, else why not. */
export type Taken = Refusal | null

/**
 * Text being typed over a committed value. Nothing leaves the field before Enter or blur; text
 * that is refused stays where it is with its problem, so nothing typed is lost; Escape brings the
 * committed value back. When the committed value changes from outside, the draft gives way to it,
 * unless somebody is typing. What stands in the field comes back to it after the page has ended.
 *
 * @param name of the field among those that are about the same thing
 * @param value the committed text
 * @param commit takes the text or returns why not; called only when the text differs from the value
 * @param multiline Enter makes a new line instead of committing
 */
export function useDraftText(name: string, value: string, commit: (text: string) => Taken, multiline = false) {
  const keeper = useContext(DraftKeeping)
  const field = `${useContext(DraftScope)} ${name}`
  const [draft, setDraft] = useState<string | null>(() => keeper?.left(field, value) ?? null)
  const [isBack, setIsBack] = useState(draft !== null)
  const [problem, setProblem] = useState<Taken>(null)
  const [seen, setSeen] = useState(value)
  // Escape blurs nothing, but a field that is closed by Escape must not commit on its way out.
  const escaped = useRef(false)
  const [hasFocus, setHasFocus] = useState(false)

  const noted = useRef<string | null>(null)

  useEffect(() => {
    if (draft === null) {
      if (noted.current !== null) keeper?.drop(noted.current)
      noted.current = null
      return
    }
    keeper?.note(field, value, draft)
    noted.current = field
    return () => keeper?.leave(field)
  }, [keeper, field, value, draft])

  const restore = () => {
    setDraft(null)
    setProblem(null)
    setIsBack(false)
  }
  if (seen !== value) {
    setSeen(value)
    // Another window can change what is being typed over here; the words under the hand stay.
    if (!hasFocus) restore()
  }

  const tryCommit = () => {
    if (draft === null) return
    const refused = draft === value ? null : commit(draft)
    setProblem(refused)
    setIsBack(false)
    if (refused !== null) return
    setDraft(null)
    // At once: where the page is ending, nothing is drawn any more.
    keeper?.drop(field)
  }

  return {
    text: draft ?? value,
    problem,
    /** The text stood in the field when the page ended, and nobody has touched it since. */
    isBack: isBack && draft !== null,
    restore,
    /** Text comes into the field as if it had been typed. */
    write: (typed: string) => {
      escaped.current = false
      setDraft(typed)
    },
    inputProps: {
      value: draft ?? value,
      onChange: (event: { currentTarget: Editable }) => {
        escaped.current = false
        setDraft(event.currentTarget.value)
      },
      onFocus: (_: FocusEvent<Editable>) => setHasFocus(true),
      onBlur: (_: FocusEvent<Editable>) => {
        setHasFocus(false)
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
          // At once: its owner may put the field away with it.
          keeper?.drop(field)
        }
      },
    },
  }
}
