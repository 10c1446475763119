import type { Span } from '#engine/played.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { type Laid, type LaidSection, laySection } from './laySection.ts'

/** A played block on the ride clock. */
export interface Placed extends Laid {
  index: number
  section: number
  /** Ride clock; `from` and `to` stay on the section's clock. A crossfade may cut the end, down to no time at all. */
  rideFrom: Seconds
  rideTo: Seconds
}

export interface PlacedSection extends LaidSection {
  from: Seconds
  one: Seconds
  to: Seconds
  firstBlock: number
  endBlock: number
  /** Seconds that the next section's crossfade takes off the end. */
  cut: Seconds
}

export interface Timeline {
  spans: Span[]
  blocks: Placed[]
  sections: PlacedSection[]
  total: Seconds
}

/**
 * The ride on one clock: briefing, then lead-in, blocks and open tail of each section, then
 * clear-up. A negative lead-in overlaps the section before, whose spans end where the new
 * count one begins; it reaches back to that section's own count one at most.
 */
export function layTimeline(ride: Ride): Timeline {
  const sections = placeSections(ride)
  const blocks: Placed[] = []
  const spans: Span[] = []
  const start = ride.briefingSeconds
  if (start > 0) spans.push({ kind: 'briefing', from: 0, to: start })
  for (const [index, section] of sections.entries()) {
    const sectionId = ride.sections[index]!.id
    if (section.one > section.from) spans.push({ kind: 'leadIn', from: section.from, to: section.one, sectionId })
    let clock = section.one
    section.firstBlock = blocks.length
    for (const laid of section.blocks) {
      const rideTo = Math.min(section.to, section.one + laid.to)
      const block = blocks.length
      blocks.push(placed(laid, block, index, clock, rideTo))
      if (rideTo > clock) spans.push({ kind: 'block', from: clock, to: rideTo, sectionId, block })
      clock = rideTo
    }
    section.endBlock = blocks.length
    if (section.to > clock) spans.push({ kind: 'openTail', from: clock, to: section.to, sectionId })
  }
  const end = sections.at(-1)?.to ?? start
  const total = end + ride.clearUpSeconds
  if (total > end) spans.push({ kind: 'clearUp', from: end, to: total })
  return { spans, blocks, sections, total }
}

/** Field by field, as every played block goes through here on each frame of a drag. */
function placed(
  { block, set, from, to, countFrom, countTo, beyond }: Laid,
  index: number,
  section: number,
  rideFrom: Seconds,
  rideTo: Seconds,
): Placed {
  return { block, set, from, to, countFrom, countTo, beyond, index, section, rideFrom, rideTo }
}

function placeSections(ride: Ride): PlacedSection[] {
  const placed: PlacedSection[] = []
  let end = ride.briefingSeconds
  let earliest = end
  for (const section of ride.sections) {
    const laid = laySection(section)
    const one = Math.max(earliest, end + section.leadInSeconds)
    const before = placed.at(-1)
    if (before && one < end) {
      before.cut = end - one
      before.to = one
    }
    const to = one + laid.seconds
    placed.push({ ...laid, from: Math.min(end, one), one, to, firstBlock: 0, endBlock: 0, cut: 0 })
    earliest = one
    end = to
  }
  return placed
}
