import type { RideReport } from '#engine/report.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import { type Laid, laySection } from '#engine/timeline/laySection.ts'
import type { Ride, Section } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'

/** The ride as it was planned, with its report. */
export interface Plan {
  ride: Ride
  report: RideReport
}

/** A length or a place within a section: counts where the section is counted, else seconds. */
export type Measure = number

/** A block as it comes, which may be more than once, shorter or longer than planned. */
export interface LedItem {
  /** Index in the plan's report of the block it is. */
  planned: number
  length: Measure
  /** Items of one pass through a set share it. */
  pass?: { setId: string; number: number }
}

/** A section as it comes. */
export interface LedSection {
  /** Index in the plan. */
  planned: number
  counted: boolean
  /** Music plays on by itself: blocks that are held or repeated push others off its end, where they wait. Without it the section grows. */
  music: boolean
  /** An eight (or six) in the section's measure; what is worked on without beats, 5 s. */
  eight: Measure
  /** In their order, also those past the end. */
  items: readonly LedItem[]
  /** Where the section ends, from its count one. */
  end: Measure
  leadIn: Seconds
  /** Class time of count one as heard; follows from the section before where it is not set. */
  one?: Seconds
  /** Where each tap puts count one, oldest first. */
  taps: readonly Seconds[]
  /** Start of the block that a press of "next" has called for and that has not come yet. */
  called?: Measure
  /** True where the items are not as planned. */
  changed: boolean
}

/** The whole class as far as it is known. */
export interface Led {
  sections: readonly LedSection[]
  clearUp: Seconds
  hold?: Held
}

/** Something held: since when, where in the class that was, and the start of the eight that comes again and again; without beats the clock stands still. */
interface Held {
  at: Seconds
  moment: Moment
  eight?: Measure
}

/** A place in the class. Sections and items by index in what is led. */
export type Moment =
  | { kind: 'leadIn'; section: number }
  | { kind: 'item'; section: number; item: number; from: Measure; place: Measure }
  | { kind: 'tail'; section: number; place: Measure }
  | { kind: 'after' }

/** Seconds that stand for an eight where there are no beats. */
const WITHOUT_BEATS: Seconds = 5

/** The class as planned, before anything has happened. */
export function ledAsPlanned({ ride, report }: Plan): Led {
  const sections = ride.sections.map((section, planned): LedSection => {
    const { blocks, seconds, counts } = laySection(section)
    const first = report.sections[planned]!.blocks.from
    const items = blocks.map((laid, i) => itemOf(laid, first + i))
    const covered = items.reduce((sum, { length }) => sum + length, 0)
    return {
      planned,
      counted: counts !== undefined,
      music: Boolean(section.song),
      eight: counts ? countingUnit(section).eight : WITHOUT_BEATS,
      items,
      end: counts ? Math.max(covered, counts.total) : seconds,
      leadIn: section.leadInSeconds,
      taps: [],
      changed: false,
    }
  })
  return { sections, clearUp: ride.clearUpSeconds }
}

function itemOf({ set, from, to, countFrom, countTo }: Laid, planned: number): LedItem {
  const length = countFrom !== undefined && countTo !== undefined ? countTo - countFrom : to - from
  return { planned, length, ...(set && { pass: { setId: set.set.id, number: set.round } }) }
}

/** The led section's section in the ride. */
export const sectionOf = ({ ride }: Plan, { planned }: LedSection): Section => ride.sections[planned]!

/** The class with one section changed. */
export const withSection = (led: Led, index: number, change: Partial<LedSection>): Led => ({
  ...led,
  sections: led.sections.map((section, i) => (i === index ? { ...section, ...change } : section)),
})
