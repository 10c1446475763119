import type { Constants } from '#engine/constants.ts'
import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { copySection } from '#plan/copies.ts'
import { editBlocksOf, patched } from '#plan/edits.ts'
import { statedAs } from '#plan/ledger/statedAs.ts'
import { type Block, type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import type { Counts, Effort } from '#units/units.ts'

/** The easy start of the first section and the easy end of the last as sections of their own, which a longer class can play once more. */
interface EasyEnds {
  start: Section | null
  end: Section | null
}

/** An end that is a whole section is none of these: it comes again as it is. */
export function easyEnds(ride: Ride, { warmUpEffort, coolDownEffort }: Pick<Constants, 'warmUpEffort' | 'coolDownEffort'>): EasyEnds {
  const [first, last] = [ride.sections[0], ride.sections.at(-1)]
  if (first === undefined || last === undefined) return { start: null, end: null }
  const firstWork = first.blocks.findIndex((item) => peakOf(item) >= warmUpEffort)
  const lastWork = last.blocks.findLastIndex((item) => peakOf(item) > coolDownEffort)
  return {
    start: firstWork > 0 ? startOf(first, firstWork) : null,
    end: lastWork >= 0 && lastWork < last.blocks.length - 1 ? endOf(ride, last, lastWork + 1) : null,
  }
}

const blocksIn = (item: Item): readonly Block[] => (isSet(item) ? item.parts : [item])

const peakOf = (item: Item): Effort => Math.max(...blocksIn(item).map(({ effort }) => Math.max(effort.from, effort.to)))

function startOf(section: Section, until: number): Section | null {
  const piece = { ...section, blocks: section.blocks.slice(0, until) }
  if (!section.song?.grid) return named(piece, 'start')
  const counts = countsIn(piece.blocks)
  return counts === null ? null : named({ ...piece, outCount: (section.inCount ?? 0) + counts }, 'start')
}

/** Its first block states the total riders have there, since something else may come before it now. */
function endOf(ride: Ride, section: Section, from: number): Section | null {
  const { lead: _lead, ...rest } = section
  const first = section.blocks[from]!
  if (isSet(first)) return null
  const { blocks } = layTimeline(ride)
  const played = blocks.find(({ block }) => block.id === first.id)
  if (played === undefined) return null
  const total = statedAs(keepLedger(ride, blocks).lines[played.index]!.entry.after)
  const piece = editBlocksOf({ ...rest, blocks: section.blocks.slice(from) }, (block) =>
    block.id === first.id && block.resistance.kind !== 'total' ? patched(block, { resistance: total }) : block,
  )
  if (!section.song?.grid) return named(piece, 'end')
  const before = countsIn(section.blocks.slice(0, from))
  return before === null ? null : named({ ...piece, inCount: (section.inCount ?? 0) + before }, 'end')
}

function named(section: Section, end: 'start' | 'end'): Section {
  let made = 0
  return { ...copySection(section, () => `${section.id.slice(0, 40)}.${end}.${made++}`), leadInSeconds: section.leadInSeconds }
}

/** Counts of blocks one after the other; null where one is measured by the clock. */
function countsIn(items: readonly Item[]): Counts | null {
  let sum = 0
  for (const item of items) {
    for (const { length } of blocksIn(item)) {
      if (!('counts' in length)) return null
      sum += length.counts * (isSet(item) ? item.rounds : 1)
    }
  }
  return sum
}
