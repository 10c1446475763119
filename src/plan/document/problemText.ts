import { Said, say, type Text } from '#words/said.ts'
import type { Wrong } from './wrong.ts'

/** "Song 3, block 2: the effort must be between 0 and 10; it is 14." */
export function problemText(at: Text, { problem, ...values }: Wrong, found?: unknown): Text {
  return new Said(`problems.${problem}`, { ...values, at, ...(found !== undefined && { found: foundText(found) }) })
}

/** Letters of a text found that are said. */
const MOST_LETTERS = 40

/** A value found, short enough for a sentence. */
function foundText(value: unknown): Text {
  if (typeof value === 'string') return say('documents.foundText', { text: shortened(value) })
  if (typeof value === 'number' && Number.isNaN(value)) return say('documents.foundNaN')
  if (typeof value === 'number') return Number.isFinite(value) ? say('documents.foundNumber', { value }) : say('documents.foundEndless')
  if (typeof value === 'boolean') return String(value)
  return value === null ? say('documents.foundEmpty') : say('documents.foundOther')
}

const shortened = (text: string): string => (text.length > MOST_LETTERS ? `${[...text].slice(0, MOST_LETTERS).join('')}…` : text)
