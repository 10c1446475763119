import type { Cut } from '#engine/leading/leadLog.ts'
import { sectionOf } from '#engine/leading/led.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { quotedItem, quotedSectionName } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** "Skip “Glass Tram” (−3:14): you finish 31 s early. “Iron Lullaby” then starts with “one turn on”." */
export const sayProposal = (before: LedClass, after: LedClass, cuts: readonly Cut[], seconds: Seconds, spare: Seconds): Text =>
  say('led.sentences', {
    items: [say('led.proposal', { cuts: cuts.map((cut) => sayCut(before, cut)), less: seconds, spare }), ...newCalls(before, after)],
  })

function sayCut({ plan, led }: LedClass, cut: Cut): Text {
  const index = led.sections.findIndex(({ planned }) => planned === cut.section)
  const section = led.sections[index]!
  const song = quotedSectionName(plan.ride, sectionOf(plan, section))
  switch (cut.kind) {
    case 'song':
      return say('led.cutSong', { song })
    case 'rounds':
      return say('led.cutRounds', { rounds: cut.rounds, song })
    case 'phrase': {
      const block = quotedItem(plan.report.blocks[cut.block]!.block)
      return say('led.cutPhrase', { block, song, counts: cut.counts, unit: section.eight })
    }
    case 'outro':
      return say('led.cutOutro', { song, counts: cut.counts, unit: section.eight })
  }
}

/** Where a song now starts with another call than it would have: the totals are the planned ones. */
function newCalls(before: LedClass, after: LedClass): Text[] {
  return after.led.sections.flatMap((section, i) => {
    const first = after.report.sections[i]!.blocks.from
    const same = before.led.sections.findIndex(({ planned }) => planned === section.planned)
    const earlier = before.report.blocks[before.report.sections[same]!.blocks.from]
    const now = after.report.blocks[first]
    if (!earlier || !now || earlier.ledger.call === now.ledger.call) return []
    const song = quotedSectionName(after.plan.ride, sectionOf(after.plan, section))
    return [say('led.startsWith', { song, call: now.ledger.call })]
  })
}
