import type { KeyboardEvent } from 'react'
import { useAfterDrawing } from '#ui/useAfterDrawing.ts'

/** @returns for Enter in a list of fields: once a field has taken its text, the focus goes to the next empty one; a field that refused keeps it */
export function useFocusNextOnEnter(): (event: KeyboardEvent<HTMLElement>) => void {
  const afterDrawing = useAfterDrawing()
  return ({ key, target, currentTarget }) => {
    if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return
    afterDrawing(() => {
      if (target.getAttribute('aria-invalid') !== 'true') nextEmpty(currentTarget, target)?.focus()
    })
  }
}

/** The first empty field of a list after one; null where there is none. */
export function nextEmpty(list: HTMLElement, after: HTMLInputElement | null): HTMLInputElement | null {
  const fields = [...list.querySelectorAll<HTMLInputElement>('input[data-reading], [data-reading] input')]
  const start = after ? fields.indexOf(after) + 1 : 0
  return fields.slice(start).find((field) => field.value === '') ?? null
}
