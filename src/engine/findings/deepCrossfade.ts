import type { Finding } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, fix, type Noticed, quotedSection } from './finding.ts'

/** A crossfade that takes more off the song before than its last block: changes would be lost. */
export function deepCrossfade(facts: Facts): Finding[] {
  const { timeline, ride } = facts
  return timeline.sections.flatMap((before, index) => {
    const next = ride.sections[index + 1]
    if (!next || before.cut <= 0) return []
    const last = before.blocks.at(-1)
    const room = last ? before.seconds - last.from : before.seconds
    const asked = -next.leadInSeconds
    const excess = asked - room
    if (excess <= 1e-9) return []
    const noticed: Noticed = {
      rule: 'deepCrossfade',
      severity: 'warning',
      text: say('checksRide.deepCrossfade', {
        song: quotedSection(facts, index + 1),
        before: quotedSection(facts, index),
        seconds: asked,
      }),
      why: ARITHMETIC,
      amount: excess,
      fixes: [
        fix(say('checksRide.shortenCrossfade', { seconds: room }), say('checksRide.shortenedCrossfade', { seconds: room }), (whole) =>
          editSection(whole, next.id, (section) => ({ ...section, leadInSeconds: -room })),
        ),
      ],
    }
    return [atSection(facts, index + 1, noticed)]
  })
}
