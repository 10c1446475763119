import type { KeyboardEvent } from 'react'

/** On Enter, once the field has taken its text, the focus goes to the next empty field of the list; a field that refused keeps it. */
export function focusNextOnEnter({ key, target, currentTarget }: KeyboardEvent<HTMLElement>): void {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return
  requestAnimationFrame(() => {
    if (target.getAttribute('aria-invalid') !== 'true') nextEmpty(currentTarget, target)?.focus()
  })
}

/** The first empty field of a list after one; null where there is none. */
export function nextEmpty(list: HTMLElement, after: HTMLInputElement | null): HTMLInputElement | null {
  const fields = [...list.querySelectorAll<HTMLInputElement>('input[data-reading], [data-reading] input')]
  const start = after ? fields.indexOf(after) + 1 : 0
  return fields.slice(start).find((field) => field.value === '') ?? null
}
