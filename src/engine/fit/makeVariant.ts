import { constantsOf } from '#engine/constants.ts'
import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { copySection } from '#plan/copies.ts'
import { revisionOf } from '#plan/document/revisionOf.ts'
import { withoutGoneMarks } from '#plan/document/shaky.ts'
import { editBlocksOf, patched } from '#plan/edits.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import { statedAs } from '#plan/ledger/statedAs.ts'
import type { Block, Ride, Section } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { easyEnds } from './easyEnds.ts'
import { judgeOf } from './judgeVariant.ts'
import { pickSections } from './pickSections.ts'
import { fitRide, type RideTrim } from './rideFit.ts'
import { sayVariant, type VariantChange } from './sayVariant.ts'
import { isLocked, type Role, rolesOf, type SectionShape, sectionShapes } from './shapeOf.ts'
import { variantTitle } from './variantTitle.ts'

export type Variant =
  | { ok: true; ride: Ride; changes: VariantChange[] }
  | { ok: false; reason: Text; ride?: Ride; changes?: VariantChange[] }

/** Lengths a class is booked for, minutes. */
export const VARIANT_MINUTES: readonly number[] = [20, 25, 30, 40, 45, 50, 60]

/** Selections looked at before the nearest is taken. */
const TRIES = 16

/**
 * The class in another length: whole songs go or come again, the rest ends at other phrases,
 * so that warm-up, cool-down, finish and shape stay. Easy ends count wherever they lie, also
 * inside a song that works, and a longer class plays them once more. It is linked to its parent
 * and says what changed. Totals stay what they were: a section that told its first change from a
 * song that is gone states its total instead. Where nothing ends inside the slot, or only with
 * ends too short or a problem its parent has not, the nearest with the reason.
 *
 * @param id the id of the new ride
 * @param minutes its slot, 5 to 180
 */
export function makeVariant(ride: Ride, minutes: number, id: string): Variant {
  if (ride.sections.length === 0) return { ok: false, reason: say('fit.nothingPlanned') }
  const source = sourceOf(ride)
  const slot = minutes * 60 - ride.briefingSeconds - ride.clearUpSeconds
  const judge = judgeOf(ride, minutes)
  const selections = pickSections({ ...source, slot, least: judge.least, fitUnder: constantsOf(ride).fitUnder }, TRIES)
  let nearest: { made: Made; reason: Text; off: Seconds } | null = null
  const keepNearest = (made: Made, reason: Text, off: Seconds): void => {
    if (nearest === null || off < nearest.off) nearest = { made, reason, off }
  }
  for (const { sections } of selections) {
    const drafted = selected(ride, source, sections, minutes, id)
    // Where the rest can give enough, both ends keep their length.
    const whole = fitRide(drafted, endsIn(drafted))
    const fit = whole.ok ? whole : fitRide(drafted)
    for (const trim of fit.ok ? [fit] : fit.nearest) {
      const made = finished(ride, source, sections, drafted, trim)
      const against = fit.ok ? judge.against(made.ride) : say('fit.variantOff', { minutes, slack: trim.slack })
      if (against === null) return { ok: true, ...made }
      // One that ends in time but has something against it is nearer than one that does not.
      keepNearest(made, against, fit.ok ? 0 : Math.abs(trim.slack))
    }
  }
  const found = nearest as { made: Made; reason: Text } | null
  if (found === null) return { ok: false, reason: say('fit.noVariant', { minutes }) }
  return { ok: false, reason: found.reason, ...found.made }
}

/** The sections a class opens and ends with. */
const endsIn = ({ sections }: Ride): ReadonlySet<string> => new Set([sections[0]!.id, sections.at(-1)!.id])

interface Made {
  ride: Ride
  changes: VariantChange[]
}

/** What a variant is put together from. */
interface Source {
  /** The parent's sections, and behind them its easy start and end as sections of their own, where it has them. */
  sections: readonly Section[]
  shapes: readonly SectionShape[]
  roles: readonly Role[]
  start?: number
  end?: number
  kept: ReadonlySet<number>
}

function sourceOf(ride: Ride): Source {
  const rules = constantsOf(ride)
  const roles = rolesOf(sectionShapes(ride), rules.warmUpEffort, rules.coolDownEffort)
  const last = ride.sections.length - 1
  // How a class opens and how it ends are promises too.
  const stays = (section: Section, i: number): boolean => i === 0 || i === last || roles[i] === 'finish' || isLocked(section)
  const kept = new Set(ride.sections.flatMap((section, i) => (stays(section, i) ? [i] : [])))
  const { start, end } = easyEnds(ride, rules)
  const sections = [...ride.sections, ...(start ? [start] : []), ...(end ? [end] : [])]
  const shapes = sectionShapes({ ...ride, sections })
  return {
    sections,
    shapes,
    roles,
    kept,
    ...(start && { start: ride.sections.length }),
    ...(end && { end: sections.length - 1 }),
  }
}

function finished(parent: Ride, source: Source, chosen: readonly number[], drafted: Ride, trim: RideTrim): Made {
  return { ride: withoutGoneMarks(trim.command.apply(drafted)), changes: sayVariant(parent, source, chosen, drafted, trim) }
}

/** The chosen sections as a ride of their own, totals kept, repeats with ids of their own. */
function selected(ride: Ride, source: Source, sections: readonly number[], minutes: number, id: string): Ride {
  const held = statedTotals(ride)
  const chosen = sections.map((index, place) => {
    const follows = index === (place === 0 ? 0 : sections[place - 1]! + 1)
    const section = follows ? source.sections[index]! : (held.get(index) ?? source.sections[index]!)
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
