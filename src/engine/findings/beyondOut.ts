import type { SectionReport } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editSection, editSet, withItems } from '#plan/edits.ts'
import { isSet, type Section } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { amountOf } from '#plan/remeasure.ts'
import { lastCountOf } from '#plan/songs/beatGrid.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, fix, measured, type Noticed, quotedSection } from './finding.ts'
import { lengthFix } from './fixes/lengthFix.ts'

/** By the clock, what ends within a second of its song ends with it. */
const SHORTEST_OVERHANG_SECONDS = 1

/** Blocks that go on after the song's out-point. They are played; nothing is cut silently. */
export function beyondOut(facts: Facts): Finding[] {
  return facts.sections.flatMap((report, index) => {
    const { beyond, unit, counts, blocks } = report
    if (counts ? !(beyond > 0) : beyond < SHORTEST_OVERHANG_SECONDS) return []
    const section = facts.ride.sections[index]!
    const first = facts.blocks.slice(blocks.from, blocks.to).find((played) => played.beyond > 0)
    const noticed: Noticed = {
      rule: 'beyondOut',
      severity: 'problem',
      text: say(counts ? 'checksRide.beyondOut' : 'checksRide.beyondEnd', {
        song: quotedSection(facts, index),
        by: measured(section, beyond, unit.eight),
      }),
      why: ARITHMETIC,
      amount: beyond,
      fixes: () => [moveOut(section, report), shorten(section, beyond, unit.eight)],
    }
    return [atSection(facts, index, noticed, first?.from, first)]
  })
}

/** The song itself may go on past the out-point far enough. */
function moveOut(section: Section, { counts, beyond }: SectionReport): Fix | undefined {
  const song = section.song
  if (!counts || !song?.grid) return undefined
  const outCount = Math.max(counts.out, counts.in) + beyond
  if (outCount > lastCountOf(song, song.grid) || !Number.isInteger(outCount)) return undefined
  return fix(say('checksRide.endWithLastBlock'), say('checksRide.endedWithLastBlock'), (ride) =>
    editSection(ride, section.id, (before) => ({ ...before, outCount })),
  )
}

/** Shorten the last block, or leave it out where all of it is too much; of a set, leave out the last round. */
function shorten(section: Section, beyond: number, eight: number): Fix | undefined {
  const last = section.blocks.at(-1)!
  if (!isSet(last)) {
    if (amountOf(last.length) > beyond) return lengthFix(last, -beyond, eight)
    const it = { block: quotedItem(last) }
    return fix(say('checksRide.leaveOut', it), say('checksRide.leftOut', it), (ride) =>
      editSection(ride, section.id, (before) =>
        withItems(
          before,
          before.blocks.filter((item) => item.id !== last.id),
        ),
      ),
    )
  }
  if (last.rounds < 2) return undefined
  return fix(say('checksRide.leaveOutRound'), say('checksRide.leftOutRound'), (ride) =>
    editSet(ride, last.id, (set) => ({ ...set, rounds: set.rounds - 1 })),
  )
}
