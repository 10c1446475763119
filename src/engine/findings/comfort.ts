import { drinkMoments } from '#engine/cues/drinkWords.ts'
import { allowedMinutes, MEASURED_CLASS_LEVEL } from '#engine/hearing/noiseDose.ts'
import type { Finding } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, fix, ofRide } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

/** Water and heat, hearing, and a briefing for newcomers, each only where it applies. */
export function comfort(facts: Facts): Finding[] {
  return [...water(facts), ...hearing(facts), ...briefing(facts)]
}

/** The longest stretch without a drink, marked or told, where the class lasts long enough to warm a room. */
function water(facts: Facts): Finding[] {
  const { ride, blocks, cues, rules } = facts
  const played = blocks.filter(({ from, to }) => to > from)
  const last = played.at(-1)
  if (!last) return []
  let since = played[0]!.from
  let longest = { from: since, to: since }
  for (const at of [...drinkMoments(played, cues.lines, speechOf(ride)), last.to]) {
    if (at - since > longest.to - longest.from) longest = { from: since, to: at }
    since = Math.max(since, at)
  }
  const dry = longest.to - longest.from
  if (dry <= rules.waterSeconds) return []
  const middle = (longest.from + longest.to) / 2
  const easy = played.filter(({ block, from }) => block.effort.from <= rules.easyEffort && from > longest.from && from < longest.to)
  const best = easy.toSorted((a, b) => Math.abs(a.from - middle) - Math.abs(b.from - middle))[0]
  const text = say('checksRide.water', { seconds: dry })
  const there = best && { block: quotedItem(best.block) }
  const fixes = there && [blockFix(best.block, say('checksRide.drinkIn', there), say('checksRide.markedDrink', there), { water: true })]
  return [ofRide({ rule: 'water', severity: 'hint', text, why: COMMON_PRACTICE, amount: dry, fixes }, longest.from)]
}

/** A class longer than its usual loudness may last in a day. */
function hearing({ ride, overall }: Facts): Finding[] {
  const minutes = allowedMinutes(MEASURED_CLASS_LEVEL)
  if (ride.room !== 'studio' || overall.total / 60 <= minutes) return []
  const text = say('checksRide.hearing', { level: MEASURED_CLASS_LEVEL, minutes })
  const why = say('sources.noise')
  return [ofRide({ rule: 'hearing', severity: 'hint', text, why, amount: overall.total / 60 - minutes })]
}

const BRIEFING_SECONDS = 150

/** Newcomers need the brake, their base and the bike set-up explained. */
function briefing({ ride, overall }: Facts): Finding[] {
  if (ride.level !== 'beginner' || ride.briefingSeconds > 0 || ride.sections.length === 0) return []
  const text = say('checksRide.briefing')
  const fits = overall.slack >= BRIEFING_SECONDS
  const add = fix(say('checksRide.addBriefing', { seconds: BRIEFING_SECONDS }), say('checksRide.addedBriefing'), (whole) => ({
    ...whole,
    briefingSeconds: BRIEFING_SECONDS,
  }))
  return [ofRide({ rule: 'briefing', severity: 'hint', text, why: COMMON_PRACTICE, fixes: [fits ? add : undefined] })]
}
