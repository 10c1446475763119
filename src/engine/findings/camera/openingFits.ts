import type { Facts } from '#engine/findings/facts.ts'
import { ARITHMETIC, fix, ofRide } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import { say } from '#words/said.ts'

/** A briefing is planned to whole steps of so many seconds. */
const STEP = 5

/** The opening card is said before the first song; the briefing has to be as long. */
export function openingFits(facts: Facts): Finding[] {
  const { ride, blocks } = facts
  if (blocks.length === 0) return []
  const { seconds, fits } = openingCard(ride, facts)
  if (fits) return []
  const needed = Math.ceil(seconds / STEP) * STEP
  const text = say('checksCues.openingCard', { takes: seconds, has: ride.briefingSeconds })
  const add = fix(say('checksCues.lengthenBriefing', { seconds: needed }), say('checksCues.madeRoomForOpening'), (whole) => ({
    ...whole,
    briefingSeconds: needed,
  }))
  return [ofRide({ rule: 'openingCard', severity: 'hint', text, why: ARITHMETIC, amount: seconds - ride.briefingSeconds, fixes: [add] })]
}
