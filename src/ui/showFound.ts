/** Brings what was looked for into the middle of the window, with the focus on it; nothing where it is not there. */
export function showFound(element: Element | null | undefined): void {
  if (!(element instanceof HTMLElement)) return
  element.focus({ preventScroll: true })
  element.scrollIntoView({ block: 'center' })
}
