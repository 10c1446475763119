/** Whether a key pressed there goes into a text. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false
  if (target.isContentEditable || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true
  return target instanceof HTMLInputElement && !['radio', 'checkbox', 'button', 'range', 'file', 'submit'].includes(target.type)
}
