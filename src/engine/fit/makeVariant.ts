import { constantsOf } from '#engine/constants.ts'
import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { formatTotal } from '#engine/ledger/sayCall.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { copySection } from '#plan/copies.ts'
import { editBlocksOf, patched } from '#plan/edits.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import { statedAs } from '#plan/ledger/statedAs.ts'
import type { Block, Ride, Section } from '#plan/model.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { revisionOf } from '#plan/revisionOf.ts'
import { withoutGoneMarks } from '#plan/shaky.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { pickSections } from './pickSections.ts'
import { fitRide, type RideTrim } from './rideFit.ts'
import { isLocked, rolesOf, sectionShapes } from './shapeOf.ts'
import { variantTitle } from './variantTitle.ts'

/** One thing a variant has otherwise than its parent, in one sentence. */
interface VariantChange {
  kind: 'slot' | 'dropped' | 'repeated' | 'trimmed' | 'total'
  sectionId?: string
  text: string
}

export type Variant =
  | { ok: true; ride: Ride; changes: VariantChange[] }
  | { ok: false; reason: string; ride?: Ride; changes?: VariantChange[] }

/** Lengths a class is usually booked for, minutes. */
export const VARIANT_MINUTES: readonly number[] = [20, 30, 45, 60]

/** Selections looked at before the nearest is taken. */
const TRIES = 8

/**
 * The class in another length: whole songs go or come again, the rest ends at other phrases,
 * so that warm-up, cool-down, finish and shape stay. It is linked to its parent and says what
 * changed. Totals stay what they were: a section that told its first change from a song that is
 * gone states its total instead. Where nothing ends inside the slot, the nearest with the reason.
 *
 * @param id the id of the new ride
 * @param minutes its slot, 5 to 180
 */
export function makeVariant(ride: Ride, minutes: number, id: string): Variant {
  if (ride.sections.length === 0) return { ok: false, reason: 'There is nothing planned yet to make a variant of.' }
  const rules = constantsOf(ride)
  const slot = minutes * 60 - ride.briefingSeconds - ride.clearUpSeconds
  const shapes = sectionShapes(ride)
  const roles = rolesOf(shapes, rules.warmUpEffort, rules.coolDownEffort)
  // How a class opens and how it ends are promises too.
  const last = ride.sections.length - 1
  const stays = (section: Section, i: number) => i === 0 || i === last || roles[i] === 'finish' || isLocked(section)
  const kept = new Set(ride.sections.flatMap((section, i) => (stays(section, i) ? [i] : [])))
  const selections = pickSections({ shapes, roles, kept, slot, rules }, TRIES)
  let nearest: { ride: Ride; trim: RideTrim; sections: number[] } | null = null
  for (const { sections } of selections) {
    const drafted = selected(ride, sections, minutes, id)
    const fit = fitRide(drafted)
    if (fit.ok) return { ok: true, ...finished(ride, sections, drafted, fit) }
    for (const trim of fit.nearest) {
      if (nearest === null || Math.abs(trim.slack) < Math.abs(nearest.trim.slack)) nearest = { ride: drafted, trim, sections }
    }
  }
  if (nearest === null)
    return { ok: false, reason: `No choice of these songs makes a class of ${minutes} minutes with its warm-up and cool-down.` }
  const { slack } = nearest.trim
  const off = `${formatDuration(Math.abs(slack))} ${slack < 0 ? 'over' : 'under'}`
  return {
    ok: false,
    reason: `The nearest this comes to ${minutes} minutes is ${off}.`,
    ...finished(ride, nearest.sections, nearest.ride, nearest.trim),
  }
}

function finished(parent: Ride, sections: readonly number[], drafted: Ride, trim: RideTrim): { ride: Ride; changes: VariantChange[] } {
  return { ride: withoutGoneMarks(trim.command.apply(drafted)), changes: changesOf(parent, sections, drafted, trim) }
}

/** The chosen sections as a ride of their own, totals kept, repeats with ids of their own. */
function selected(ride: Ride, sections: readonly number[], minutes: number, id: string): Ride {
  const held = statedTotals(ride)
  const chosen = sections.map((index, place) => {
    const follows = index === (place === 0 ? 0 : sections[place - 1]! + 1)
    const section = follows ? ride.sections[index]! : (held.get(index) ?? ride.sections[index]!)
    const time = sections.slice(0, place).filter((other) => other === index).length
    return time === 0 ? section : again(section, time + 1)
  })
  const parent = { rideId: ride.id, revision: revisionOf(ride) }
  // It does not hold all its parent's versions hold, so it is no descendant that changes could be taken from.
  const { ancestors: _ancestors, ...rest } = ride
  return { ...rest, id, title: variantTitle(ride.title, minutes), slotMinutes: minutes, sections: chosen, parent }
}

/** A section played once more, its ids marked by the time it is. */
function again(section: Section, time: number): Section {
  let made = 0
  const copy = copySection(section, () => `${section.id.slice(0, 40)}.${time}.${made++}`)
  return { ...copy, leadInSeconds: section.leadInSeconds }
}

/** Sections whose first call tells a change, with their totals stated from there on. */
function statedTotals(ride: Ride): Map<number, Section> {
  const timeline = layTimeline(ride)
  const ledger = keepLedger(ride, timeline.blocks)
  const stated = new Map<number, Section>()
  for (const [index, section] of ride.sections.entries()) {
    const first = timeline.sections[index]!.firstBlock
    const played = timeline.blocks[first]
    const kind = played?.block.resistance.kind
    if (played === undefined || first === timeline.sections[index]!.endBlock || (kind !== 'keep' && kind !== 'change')) continue
    const { id } = played.block
    const checkpoint = checkpointOf(played.block.resistance)
    const total = { ...statedAs(ledger.lines[first]!.entry.after), ...(checkpoint && { checkpoint }) }
    // In a set the same call comes every round; only a first block of its own can state a total safely.
    if (!played.set)
      stated.set(
        index,
        editBlocksOf(section, (block: Block) => (block.id === id ? patched(block, { resistance: total }) : block)),
      )
  }
  return stated
}

function changesOf(parent: Ride, sections: readonly number[], drafted: Ride, { trims }: RideTrim): VariantChange[] {
  const timeline = layTimeline(parent)
  const changes: VariantChange[] = []
  if (parent.slotMinutes !== drafted.slotMinutes)
    changes.push({ kind: 'slot', text: `${drafted.slotMinutes} minutes instead of ${parent.slotMinutes}.` })
  for (const [index, section] of parent.sections.entries()) {
    const times = sections.filter((other) => other === index).length
    const { from, to } = timeline.sections[index]!
    const name = nameOfSection(parent, section)
    if (times === 0) changes.push({ kind: 'dropped', sectionId: section.id, text: `“${name}” is left out (${formatDuration(to - from)}).` })
    if (times > 1) {
      changes.push({
        kind: 'repeated',
        sectionId: section.id,
        text: `“${name}” comes ${times === 2 ? 'twice' : `${times} times`}; give it another song of the same length.`,
      })
    }
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
        text: `“${nameOfItem(block)}” states its total, ${total}, because what came before it is gone.`,
      },
    ]
  })
}
