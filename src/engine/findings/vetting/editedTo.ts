import { sameValue } from '#plan/edits.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'

/** What an edit sets, by place and field: "b3.length" → the new length. */
export type EditedTo = ReadonlyMap<string, unknown>

/**
 * What differs between a ride and the same after a repair. Of the knob only the first block counts: calls after it are
 * worded anew so that they land where they did.
 */
export function editedTo(before: Ride, after: Ride): EditedTo {
  const edits = new Map<string, unknown>()
  fields(edits, 'ride', before, after, ['sections'])
  const sections = new Map(before.sections.map((section) => [section.id, section]))
  const known = new Map(blocksOf(before).map((block) => [block.id, block]))
  for (const section of after.sections) {
    const was = sections.get(section.id)
    if (was && was !== section) fields(edits, section.id, was, section, ['blocks'])
  }
  let turned = false
  for (const block of blocksOf(after)) {
    const was = known.get(block.id)
    if (!was || was === block) continue
    fields(edits, block.id, was, block, turned ? ['cues', 'resistance'] : ['cues'])
    turned ||= was.resistance !== block.resistance
    const cues = new Map(was.cues.map((cue) => [cue.id, cue]))
    for (const cue of block.cues) {
      const old = cues.get(cue.id)
      if (old && old !== cue) fields(edits, cue.id, old, cue, [])
    }
  }
  return edits
}

/** Whether two edits set one thing to two values. */
export function isAgainst(one: EditedTo, other: EditedTo): boolean {
  for (const [place, value] of one) if (other.has(place) && !sameValue(other.get(place), value)) return true
  return false
}

function fields<T extends object>(edits: Map<string, unknown>, place: string, before: T, after: T, but: readonly string[]): void {
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)]) as Set<keyof T & string>) {
    if (before[key] !== after[key] && !but.includes(key)) edits.set(`${place}.${key}`, after[key])
  }
}

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
