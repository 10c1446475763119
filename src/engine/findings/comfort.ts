import { drinkMoments } from '#engine/cues/drinkWords.ts'
import { allowedMinutes, MEASURED_CLASS_LEVEL } from '#engine/hearing/noiseDose.ts'
import type { Finding } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { formatDuration } from '#units/formatDuration.ts'
import type { Facts } from './facts.ts'
import { COMMON_PRACTICE, fix, inQuotes, ofRide } from './finding.ts'
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
  const text = `No water break for ${formatDuration(dry)}. In a warm room, sooner is better.`
  const fixes = best && [
    blockFix(best.block, `Drink in ${inQuotes(best.block)}`, `Marked a drink in ${inQuotes(best.block)}`, { water: true }),
  ]
  return [ofRide({ rule: 'water', severity: 'hint', text, why: COMMON_PRACTICE, amount: dry, fixes }, longest.from)]
}

/** A class longer than its usual loudness may last in a day. */
function hearing({ ride, overall }: Facts): Finding[] {
  const minutes = allowedMinutes(MEASURED_CLASS_LEVEL)
  if (ride.room !== 'studio' || overall.total / 60 <= minutes) return []
  const text = `At the ${MEASURED_CLASS_LEVEL} dB measured in such classes ${Math.round(minutes)} minutes are a day’s share of noise; keep the music down.`
  const why = 'NIOSH 98-126 (85 dB for 8 h, halved every 3 dB); level: Beach & Nie 2014'
  return [ofRide({ rule: 'hearing', severity: 'hint', text, why, amount: overall.total / 60 - minutes })]
}

const BRIEFING_SECONDS = 150

/** Newcomers need the brake, their base and the bike set-up explained. */
function briefing({ ride, overall }: Facts): Finding[] {
  if (ride.level !== 'beginner' || ride.briefingSeconds > 0 || ride.sections.length === 0) return []
  const text = 'Newcomers need the brake, their base and the bike set-up explained before the first song.'
  const fits = overall.slack >= BRIEFING_SECONDS
  const add = fix(`Add a briefing of ${formatDuration(BRIEFING_SECONDS)}`, 'Added a briefing', (whole) => ({
    ...whole,
    briefingSeconds: BRIEFING_SECONDS,
  }))
  return [ofRide({ rule: 'briefing', severity: 'hint', text, why: COMMON_PRACTICE, fixes: [fits ? add : undefined] })]
}
