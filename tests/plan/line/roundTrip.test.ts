import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BlockPatch } from '#plan/commands/patchBlocks.ts'
import { isInside } from '#plan/cueStart.ts'
import { patched } from '#plan/edits.ts'
import type { Lexicon } from '#plan/line/lexicon.ts'
import { itemsOfLines, readEditedBlock } from '#plan/line/readLine.ts'
import { writeItem } from '#plan/line/writeItems.ts'
import { writeLine } from '#plan/line/writeLine.ts'
import { type Block, isSet, type Ride, type Section } from '#plan/model.ts'
import { tidyBlock } from '#plan/tidyBlock.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'

const LEXICONS: Readonly<Record<string, Lexicon>> = { en: en.lineWords, de: de.lineWords }
const newId = () => 'new'

interface Placed {
  block: Block
  section: Section
  ride: Ride
}

const placed = fc
  .tuple(arbitraryRide({ sections: 2, items: 3 }), fc.constantFrom('en' as const, 'de' as const), fc.nat())
  .map(([ride, language, at]): Placed | null => {
    const spoken: Ride = { ...ride, language }
    const all = spoken.sections.flatMap((section) =>
      section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]).map((block) => ({ block, section, ride: spoken }))),
    )
    return all[at % all.length] ?? null
  })
  .filter((found) => found !== null)

/** The block with an edit of its line made to it, as the command makes it. */
const withEdit = (block: Block, patch: BlockPatch, { section }: Pick<Placed, 'section'>): Block => tidyBlock(patched(block, patch), section)

/** A flag that is off is as one that is not there. */
const plainField = (block: Block, field: keyof Block) => (block[field] === false ? undefined : block[field])

/** Fields that stay out of a line only where no line has words for their value. */
const OFTEN_SAID = ['terrain', 'posture', 'hands', 'length', 'resistance', 'lead', 'strikesPerBeat', 'allOut', 'water', 'walk'] as const

describe.each(Object.entries(LEXICONS))('lines of blocks in %s', (_, lexicon) => {
  it('are understood whole, and give the block again but for what they say they leave', () => {
    fc.assert(
      fc.property(placed, (context) => {
        const { text, left } = writeLine(context.block, lexicon, context)
        const { items, problems } = itemsOfLines(text, lexicon, context, newId)[0]!
        const block = items[0] as Block
        expect(problems).toEqual([])
        for (const field of [...OFTEN_SAID, 'effort', 'cadence', 'move'] as const) {
          if (!left.includes(field)) {
            // What is read is brought into range as every edit is.
            const tidied = withEdit(context.block, {}, context)
            expect(plainField(block, field)).toEqual(plainField(tidied, field))
          }
        }
      }),
    )
  })

  it('say sets by their rounds, and what is said first of a block', () => {
    fc.assert(
      fc.property(placed, fc.integer({ min: 1, max: 100 }), (context, rounds) => {
        const set = { id: 'set', rounds, parts: [context.block, context.block] }
        const { items, problems, whole } = itemsOfLines(writeItem(set, lexicon, context), lexicon, context, newId)[0]!
        expect(problems).toEqual([])
        expect(whole).toBe(true)
        const [alone] = itemsOfLines(writeItem(context.block, lexicon, context), lexicon, context, newId)[0]!.items
        expect(items).toEqual([{ id: 'new', rounds, parts: [alone, alone] }])
        const isPlain = (words: string) => words.trim() !== '' && !/["“”„«»\r\n]/.test(words)
        const before = context.block.cues.find((cue) => !isInside(cue))?.text ?? ''
        const inside = context.block.cues.filter((cue) => isInside(cue)).map(({ text }) => text)
        if (isPlain(before))
          expect((alone as Block).cues.map(({ text }) => text)).toEqual([before, ...inside.filter(isPlain)].map((words) => words.trim()))
      }),
    )
  })

  it('leave out what they have words for only where it has a value no line can hold', () => {
    fc.assert(
      fc.property(placed, (context) => {
        const { left } = writeLine(context.block, lexicon, context)
        const { length } = context.block
        const odd = 'seconds' in length && Number(length.seconds.toFixed(3)) !== length.seconds
        const rest = left.filter((field) => (OFTEN_SAID as readonly string[]).includes(field) && !(odd && field === 'length'))
        expect(rest).toEqual([])
      }),
    )
  })

  it('change nothing in their block as they are', () => {
    fc.assert(
      fc.property(placed, (context) => {
        const { text } = writeLine(context.block, lexicon, context)
        expect(readEditedBlock(text, context.block, lexicon, context)).toEqual({ patch: {}, problems: [] })
      }),
    )
  })

  it('change a block to another by its line, and nothing that no line says', () => {
    fc.assert(
      fc.property(placed, placed, (context, other) => {
        const target: Block = { ...other.block, length: context.block.length }
        const { text, left } = writeLine(target, lexicon, context)
        const { patch } = readEditedBlock(text, context.block, lexicon, context)
        const changed = withEdit(context.block, patch, context)
        for (const field of ['label', 'cues', 'feel', 'easier', 'notes', 'ownTotal', 'minEights'] as const)
          expect(changed[field]).toEqual(context.block[field])
        const tidied = withEdit(target, {}, context)
        const known = writeLine(context.block, lexicon, context).left
        for (const field of ['terrain', 'posture', 'hands', 'resistance', 'lead', 'water'] as const)
          if (!left.includes(field) && !known.includes(field)) expect(plainField(changed, field)).toEqual(plainField(tidied, field))
      }),
    )
  })

  it('are read in bounded time whatever they hold', () => {
    fc.assert(
      fc.property(placed, fc.string({ unit: 'binary', maxLength: 3_000 }), (context, text) => {
        const problems = itemsOfLines(text, lexicon, context, newId).flatMap((line) => line.problems)
        for (const { from, to } of problems) expect(from >= 0 && to <= text.length && from <= to).toBe(true)
      }),
    )
  })
})
