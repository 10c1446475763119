import type { Edit } from '#engine/speech/speech.ts'

/** A text with edits made; they do not overlap. */
export function edited(text: string, edits: readonly Edit[]): string {
  const fromLast = [...edits].sort((a, b) => b.from - a.from)
  return fromLast.reduce((words, { from, to, text: put }) => words.slice(0, from) + put + words.slice(to), text)
}
