import { type Block, type Item, isSet } from '#plan/model.ts'
import type { Lexicon } from './lexicon.ts'
import type { LineContext } from './lineTypes.ts'
import { SEPARATOR } from './parts.ts'
import { writeLine } from './writeLine.ts'

/** A block or set as the line that makes one like it, with what is said first; a set is written as its rounds. */
export function writeItem(item: Item, lexicon: Lexicon, context: LineContext): string {
  if (!isSet(item)) return withCue(item, lexicon, context)
  const parts = item.parts.map((part) => withCue(part, lexicon, context))
  return `${item.rounds} ${lexicon.marks.rounds[0]}: ${parts.join(` ${SEPARATOR} `)}`
}

function withCue(block: Block, lexicon: Lexicon, context: LineContext): string {
  const { text } = writeLine(block, lexicon, context)
  const said = block.cues[0]?.text.trim() ?? ''
  const [open, close] = lexicon.quotes
  // A line has no way to say a quote inside a quote, nor a line break.
  return said === '' || /["“”„«»\r\n]/.test(said) || said.length > 600 ? text : `${text} ${open}${said}${close}`
}
