import { isInside } from '#plan/cueStart.ts'
import { type Block, type Item, isSet } from '#plan/model.ts'
import type { Lexicon } from './lexicon.ts'
import type { LineContext } from './lineTypes.ts'
import { SEPARATOR } from './parts.ts'
import { writeLine } from './writeLine.ts'

/** A block or set as the line that makes one like it, with what is said before and in it; a set is written as its rounds. */
export function writeItem(item: Item, lexicon: Lexicon, context: LineContext): string {
  if (!isSet(item)) return withCues(item, lexicon, context)
  const parts = item.parts.map((part) => withCues(part, lexicon, context))
  return `${item.rounds} ${lexicon.marks.rounds[0]}: ${parts.join(` ${SEPARATOR} `)}`
}

function withCues(block: Block, lexicon: Lexicon, context: LineContext): string {
  const { text } = writeLine(block, lexicon, context)
  const [open, close] = lexicon.quotes
  const before = block.cues.find((cue) => !isInside(cue))?.text ?? ''
  const inside = block.cues.filter((cue) => isInside(cue)).map((cue) => cue.text)
  // What is said first in a line is said before its block, so words in the block go out only behind some.
  const quoted = (isQuotable(before) ? [before, ...inside.filter(isQuotable)] : []).map((words) => ` ${open}${words.trim()}${close}`)
  return `${text}${quoted.join('')}`
}

/** A line has no way to say a quote inside a quote, nor a line break. */
const isQuotable = (words: string): boolean => words.trim() !== '' && words.length <= 600 && !/["“”„«»\r\n]/.test(words)
