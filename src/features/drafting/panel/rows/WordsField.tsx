import type { KeyboardEvent } from 'react'
import { Field, type FieldProps } from '#ui/Field.tsx'

/** Words that may run over several lines and are taken on Enter like any other field; Shift+Enter makes a new line. */
export function WordsField(props: Omit<FieldProps, 'rows' | 'onKeyDown'>) {
  return <Field {...props} rows={1} onKeyDown={commitOnEnter} />
}

function commitOnEnter(event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) {
  if (event.key !== 'Enter' || event.shiftKey || event.nativeEvent.isComposing) return
  event.preventDefault()
  // Leaving the field is what commits it; the focus comes straight back.
  event.currentTarget.blur()
  event.currentTarget.focus()
}
