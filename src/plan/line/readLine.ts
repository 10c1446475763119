import type { BlockPatch } from '#plan/commands/patchBlocks.ts'
import type { NewId } from '#plan/copies.ts'
import { sameValue } from '#plan/edits.ts'
import type { Block } from '#plan/model.ts'
import { blockFromPattern } from '#plan/patterns/patterns.ts'
import { tidyBlock } from '#plan/tidyBlock.ts'
import type { Lexicon } from './lexicon.ts'
import { LINE_FIELDS, type LineContext, type LineFields, type LineProblem } from './lineTypes.ts'
import { patternOf, resolved } from './resolved.ts'
import { saidIn } from './saidIn.ts'
import { writeLine } from './writeLine.ts'

/** A block typed as a line: null while nothing in it names a kind of block. */
interface ReadBlock {
  readonly block: Block | null
  readonly problems: readonly LineProblem[]
}

/**
 * A new block of one line: the pattern its words name, as the tray makes it, with all that the line says otherwise.
 * What is not understood is in `problems`, with its place in the text; the rest is taken.
 */
function readNewBlock(line: string, lexicon: Lexicon, context: LineContext, newId: NewId): ReadBlock {
  const { said, problems } = saidIn(line, lexicon, context)
  const pattern = patternOf(said)
  const fields = resolved(said, context)
  if (!pattern || !fields) return { block: null, problems: [...problems, { kind: 'noKind', from: 0, to: line.length, word: line.trim() }] }
  const made = blockFromPattern(pattern, context.ride, context.section, newId)
  const { cadence: _cadence, move: _move, ...plain } = made
  const cues = said.cue === undefined ? made.cues : made.cues.map((cue, at) => (at === 0 ? { ...cue, text: said.cue! } : cue))
  return { block: tidyBlock({ ...plain, ...fields, cues }, context.section), problems }
}

/** Not left out of a block by being left out of its line. */
const ALWAYS: ReadonlySet<keyof LineFields> = new Set(['terrain', 'posture', 'hands', 'length', 'resistance', 'effort'])

/**
 * What a changed line changes of its block: the fields that the line says otherwise than the one the block is written
 * as. The line as it is written changes nothing, and what no line says is never touched.
 */
export function readEditedBlock(
  line: string,
  block: Block,
  lexicon: Lexicon,
  context: LineContext,
): { patch: BlockPatch; problems: readonly LineProblem[] } {
  const before = resolved(saidIn(writeLine(block, lexicon, context).text, lexicon, context).said, context)
  const { said, problems } = saidIn(line, lexicon, context)
  const after = resolved(said, context)
  if (!before || !after) return { patch: {}, problems: [...problems, { kind: 'noKind', from: 0, to: line.length, word: line.trim() }] }
  const changed = LINE_FIELDS.filter(
    (field) => !sameValue(before[field], after[field]) && (after[field] !== undefined || !ALWAYS.has(field)),
  )
  const patch = Object.fromEntries(changed.map((field) => [field, after[field]])) as BlockPatch
  return { patch, problems }
}

/** Most lines read at once; a class has a few dozen. */
const MOST_LINES = 200

/** A line of several, by its number from 0. */
interface ReadLine extends ReadBlock {
  readonly line: number
  readonly text: string
}

/**
 * Each line of a text as a new block for a section, empty lines left out; of lines beyond {@link MOST_LINES} nothing is read.
 *
 * `blocksOfLines(text, words.lineWords, { ride, section }, newId)`: put in those with a `block`, and name the lines with `problems`.
 */
export function blocksOfLines(text: string, lexicon: Lexicon, context: LineContext, newId: NewId): ReadLine[] {
  return text
    .split(/\r\n|\r|\n/, MOST_LINES)
    .flatMap((line, at) => (line.trim() === '' ? [] : [{ line: at, text: line, ...readNewBlock(line, lexicon, context, newId) }]))
}
