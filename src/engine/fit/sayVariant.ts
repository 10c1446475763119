import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { formatTotal } from '#engine/ledger/sayCall.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import type { Block, Ride } from '#plan/model.ts'
import { quotedItem, quotedSectionName } from '#plan/names.ts'
import { say, type Text } from '#words/said.ts'
import type { RideTrim } from './rideFit.ts'

/** One thing a variant has otherwise than its parent, in one sentence. */
export interface VariantChange {
  kind: 'slot' | 'dropped' | 'repeated' | 'trimmed' | 'total'
  sectionId?: string
  text: Text
}

/** What a variant has otherwise than its parent, each in one sentence. */
export function sayVariant(
  parent: Ride,
  { start, end }: { start?: number; end?: number },
  sections: readonly number[],
  drafted: Ride,
  { trims }: RideTrim,
): VariantChange[] {
  const timeline = layTimeline(parent)
  const changes: VariantChange[] = []
  if (parent.slotMinutes !== drafted.slotMinutes)
    changes.push({ kind: 'slot', text: say('fit.otherMinutes', { minutes: drafted.slotMinutes, was: parent.slotMinutes }) })
  for (const [index, section] of parent.sections.entries()) {
    const times = sections.filter((other) => other === index).length
    const { from, to } = timeline.sections[index]!
    const song = quotedSectionName(parent, section)
    if (times === 0) changes.push({ kind: 'dropped', sectionId: section.id, text: say('fit.leftOut', { song, seconds: to - from }) })
    if (times > 1) {
      changes.push({ kind: 'repeated', sectionId: section.id, text: say('fit.repeated', { song, times }) })
    }
  }
  for (const [piece, of, name] of [
    [start, parent.sections[0]!, 'start'],
    [end, parent.sections.at(-1)!, 'end'],
  ] as const) {
    const times = sections.filter((other) => other === piece).length
    if (piece === undefined || times === 0) continue
    const text = say('fit.repeatedEnd', { end: name, song: quotedSectionName(parent, of), times })
    changes.push({ kind: 'repeated', sectionId: of.id, text })
  }
  for (const { sectionId, text } of trims) changes.push({ kind: 'trimmed', sectionId, text })
  return [...changes, ...totalsStated(parent, drafted)]
}

function totalsStated(parent: Ride, drafted: Ride): VariantChange[] {
  const before = new Map<string, Block>()
  for (const { block } of layTimeline(parent).blocks) before.set(block.id, block)
  const { blocks } = layTimeline(drafted)
  const ledger = keepLedger(drafted, blocks)
  return blocks.flatMap(({ block, index, section }) => {
    const old = before.get(block.id)
    if (old === undefined || old.resistance === block.resistance) return []
    const total = formatTotal(ledger.lines[index]!.entry.after, drafted.bike)
    return [
      {
        kind: 'total' as const,
        sectionId: drafted.sections[section]!.id,
        text: say('fit.statesTotal', { block: quotedItem(block), total }),
      },
    ]
  })
}
