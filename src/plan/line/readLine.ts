import type { BlockPatch } from '#plan/commands/patchBlocks.ts'
import type { NewId } from '#plan/copies.ts'
import { startLead } from '#plan/cueStart.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { sameValue } from '#plan/edits.ts'
import type { Block, Cue, Item, Length } from '#plan/model.ts'
import { blockFromPattern } from '#plan/patterns/patterns.ts'
import { tidyBlock } from '#plan/tidyBlock.ts'
import { EIGHT } from '#units/units.ts'
import type { Lexicon } from './lexicon.ts'
import { LINE_FIELDS, type LineContext, type LineFields, type LineProblem } from './lineTypes.ts'
import { partsOf, SEPARATOR } from './parts.ts'
import { lineMoveOf, patternOf, resolved } from './resolved.ts'
import { saidIn } from './saidIn.ts'
import type { Span } from './tokens.ts'
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
  const { length } = { ...plain, ...fields }
  const cues = cuesOf(said.cues ?? [], made.cues, length, newId)
  return { block: tidyBlock({ ...plain, ...fields, cues }, context.section), problems }
}

/**
 * The cues of a new block: the first words are said before it in place of the pattern’s own, all others in it, evenly
 * from where it begins, on whole eights.
 */
function cuesOf([first, ...inside]: readonly string[], made: readonly Cue[], length: Length, newId: NewId): Cue[] {
  const announced = made.map((cue, at) => (at === 0 && first ? { ...cue, text: first } : cue))
  const leadOf = (at: number): Cue['lead'] => {
    const left = 1 - at / inside.length
    if ('seconds' in length) return at === 0 ? startLead('seconds') : { seconds: Math.round(length.seconds * left) }
    return at === 0 ? startLead('counts') : { counts: Math.round((length.counts * left) / EIGHT) * EIGHT }
  }
  return [...announced, ...inside.map((text, at): Cue => ({ id: newId(), moment: 'form', lead: leadOf(at), text }))]
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
  const label = labelAfter(block, { ...block, ...patch }, context)
  return { patch: label === undefined ? patch : { ...patch, label }, problems }
}

/** The name of the kind a block becomes, where it bore the name of the kind it was; undefined where it keeps its name. */
function labelAfter(before: Block, after: Block, { ride, section }: LineContext): string | undefined {
  const nameOf = ({ terrain, posture, move }: Block): string | undefined => {
    const own = move && lineMoveOf(move.name, ride)
    const pattern = patternOf({ terrain, posture, ...(own ? { move: own, moveCounts: move.counts } : { move: 'none' }) })
    return pattern && blockFromPattern(pattern, ride, section, () => 'line').label
  }
  const name = nameOf(after)
  return before.label !== undefined && before.label === nameOf(before) && name !== before.label ? name : undefined
}

/** Most lines read at once; a class has a few dozen. */
const MOST_LINES = 200

/** A line of several, by its number from 0. */
interface ReadLine {
  readonly line: number
  readonly text: string
  /** Blocks, and the set its rounds make. */
  readonly items: readonly Item[]
  readonly problems: readonly LineProblem[]
  /** The parts that name no kind of block, as they were typed. */
  readonly rest: string
  /** False while a set lacks a part that was typed for it: it can be shown, and is not ready to be taken. */
  readonly whole: boolean
}

/**
 * Each line of a text as new blocks for a section, empty lines left out; of lines beyond {@link MOST_LINES} nothing is read.
 * “climb 8 / rest 4” is two blocks, “3 rounds: climb 8 / rest 4” a set of them.
 *
 * `itemsOfLines(text, words.lineWords, { ride, section }, newId)`: put in the `items`, and name the lines with `problems`.
 */
export function itemsOfLines(text: string, lexicon: Lexicon, context: LineContext, newId: NewId): ReadLine[] {
  return text
    .split(/\r\n|\r|\n/, MOST_LINES)
    .flatMap((line, at) => (line.trim() === '' ? [] : [{ line: at, text: line, ...readItems(line, lexicon, context, newId) }]))
}

function readItems(line: string, lexicon: Lexicon, context: LineContext, newId: NewId): Omit<ReadLine, 'line' | 'text'> {
  const items: Item[] = []
  const problems: LineProblem[] = []
  const rest: string[] = []
  let whole = true
  for (const { rounds, parts } of partsOf(line, lexicon)) {
    const count = rounds?.count ?? 1
    if (rounds && !(count >= 1 && count <= LIMITS.rounds)) problems.push({ ...spanned(rounds, line), kind: 'roundsOutside' })
    const read = parts.map((part) => {
      const { block, problems: found } = readNewBlock(line.slice(part.from, part.to), lexicon, context, newId)
      problems.push(...found.map((one) => ({ ...one, from: one.from + part.from, to: one.to + part.from })))
      if (!block && !rounds) rest.push(line.slice(part.from, part.to).trim())
      return block
    })
    const blocks = read.filter((block) => block !== null)
    if (rounds && blocks.length > 0) {
      items.push({ id: newId(), rounds: Math.min(Math.max(count, 1), LIMITS.rounds), parts: blocks })
      whole = blocks.length === parts.length && count >= 1 && count <= LIMITS.rounds
    } else items.push(...blocks)
    if (rounds && blocks.length === 0) rest.push(line.slice(rounds.from).trim())
  }
  return { items, problems, rest: rest.join(` ${SEPARATOR} `), whole }
}

const spanned = ({ from, to }: Span, line: string) => ({ from, to, word: line.slice(from, to) })
