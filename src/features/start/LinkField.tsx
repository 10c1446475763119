import { type KeyboardEvent, useId, useMemo, useRef, useState } from 'react'
import { rideInText } from '#plan/link/rideInText.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'
import { foundWords, refusedWords } from './linkWords.ts'
import './LinkField.css'

interface Props {
  /** Opens the first whole link in a text. */
  onOpenLink: (text: string) => void
  onOpenFile: (file: File) => void
}

/** The way in for a link where there is no address bar: the link, the message it came in, or the text of a ride's file. */
export function LinkField({ onOpenLink, onOpenFile }: Props) {
  const [text, setText] = useState('')
  const [isMissed, setIsMissed] = useState(false)
  const field = useRef<HTMLTextAreaElement>(null)
  const id = useId()
  const isEmpty = text.trim() === ''
  const isFile = /^\s*\{/.test(text)
  const read = useMemo(() => (isEmpty || isFile ? null : rideInText(text)), [text, isEmpty, isFile])
  const isWrong = read !== null && !read.ok

  const open = () => {
    if (read?.ok) onOpenLink(text)
    else if (isFile) onOpenFile(new File([text], words.start.pastedText))
    else {
      setIsMissed(isEmpty)
      field.current?.focus()
    }
  }
  const openOnEnter = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return
    event.preventDefault()
    open()
  }

  return (
    <div className="start-link">
      <div className="ui-field">
        <label className="ui-field-label" htmlFor={id}>
          {words.start.linkOrMessage}
        </label>
        <textarea
          ref={field}
          id={id}
          rows={2}
          value={text}
          aria-describedby={`${id}-under`}
          aria-invalid={isWrong || isMissed}
          spellCheck={false}
          autoComplete="off"
          onChange={(event) => {
            setText(event.currentTarget.value)
            setIsMissed(false)
          }}
          onKeyDown={openOnEnter}
        />
        <p id={`${id}-under`} className="ui-field-under" data-problem={isWrong || isMissed} role="status">
          {read?.ok && `${foundWords(read)}.`}
          {read?.ok === false && refusedWords(read)}
          {isFile && words.start.fileText}
          {isEmpty && isMissed && words.start.nothingToOpen}
          {isEmpty && !isMissed && words.start.pasteHere}
        </p>
      </div>
      <Button onClick={open} tone={read?.ok || isFile ? 'solid' : 'plain'}>
        {words.start.open}
      </Button>
    </div>
  )
}
