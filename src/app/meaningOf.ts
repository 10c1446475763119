/** What a key means everywhere. */
export function meaningOf({
  key,
  ctrlKey,
  metaKey,
  altKey,
  shiftKey,
}: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>): 'undo' | 'redo' | 'keys' | null {
  if (altKey) return null
  const letter = key.toLowerCase()
  if (ctrlKey || metaKey) {
    if (letter === 'z') return shiftKey ? 'redo' : 'undo'
    return letter === 'y' && ctrlKey && !shiftKey ? 'redo' : null
  }
  return key === '?' ? 'keys' : null
}
