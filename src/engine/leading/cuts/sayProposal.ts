import type { Cut } from '#engine/leading/leadLog.ts'
import { sectionOf } from '#engine/leading/led.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Seconds } from '#units/units.ts'

/** "Leave out “Glass Tram”, 3:14; then 31 s to spare. “Iron Lullaby” starts with one on." */
export function sayProposal(before: LedClass, after: LedClass, cuts: readonly Cut[], seconds: Seconds, spare: Seconds): string {
  const what = cuts.map((cut) => sayCut(before, cut)).join(', ')
  const capital = what.charAt(0).toUpperCase() + what.slice(1)
  const then = spare < 1 ? 'then on time' : `then ${formatDuration(spare)} to spare`
  const said = `${capital}: ${formatDuration(seconds)} less, ${then}.`
  return [said, ...newCalls(before, after)].join(' ')
}

function sayCut({ plan, led }: LedClass, cut: Cut): string {
  const index = led.sections.findIndex(({ planned }) => planned === cut.section)
  const section = led.sections[index]!
  const song = `“${nameOfSection(plan.ride, sectionOf(plan, section))}”`
  switch (cut.kind) {
    case 'song':
      return `leave out ${song}`
    case 'rounds':
      return `${cut.rounds === 1 ? 'one round' : `${cut.rounds} rounds`} fewer in ${song}`
    case 'phrase':
      return `“${nameOfItem(plan.report.blocks[cut.block]!.block)}” in ${song} ${formatEights(cut.counts, section.eight)} shorter`
    case 'outro':
      return `end ${song} ${formatEights(cut.counts, section.eight)} early`
  }
}

/** Where a song now starts with another call than it would have: the totals are the planned ones. */
function newCalls(before: LedClass, after: LedClass): string[] {
  return after.led.sections.flatMap((section, i) => {
    const first = after.report.sections[i]!.blocks.from
    const same = before.led.sections.findIndex(({ planned }) => planned === section.planned)
    const earlier = before.report.blocks[before.report.sections[same]!.blocks.from]
    const now = after.report.blocks[first]
    if (!earlier || !now || earlier.ledger.call === now.ledger.call) return []
    return [`“${nameOfSection(after.plan.ride, sectionOf(after.plan, section))}” then starts with ${now.ledger.call}.`]
  })
}
