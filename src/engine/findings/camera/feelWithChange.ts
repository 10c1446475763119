import { turnsKnob } from '#engine/cues/changeAt.ts'
import { FEEL_LADDER } from '#engine/demand/feelLadder.ts'
import { feelOfTotal } from '#engine/demand/feelOfTotal.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { COMMON_PRACTICE, eachBlock, inQuotes } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { Finding } from '#engine/report.ts'
import type { Block } from '#plan/model.ts'

/** Changes of resistance that say only how far to turn: turns mean nothing on a bike nobody here has seen. */
export function feelWithChange(facts: Facts): Finding[] {
  return eachBlock(facts, (played) => {
    if (!turnsKnob(played) || saysFeel(played.block)) return undefined
    const feel = feelOfTotal(played.ledger.after.nominal, facts.ride)
    return {
      rule: 'feelWithChange',
      severity: 'hint',
      text: `${inQuotes(played.block)} changes the resistance without a feel; on another bike riders cannot know what to look for.`,
      why: COMMON_PRACTICE,
      fixes: [blockFix(played.block, `Say it feels like ${withArticle(feel)}`, `Gave ${inQuotes(played.block)} a feel`, { feel })],
    }
  })
}

const WORDS = new RegExp(`\\b(?:feels?|${FEEL_LADDER.map(({ feel }) => feel).join('|')})\\b`, 'i')

const saysFeel = ({ feel, resistance, cues }: Block): boolean =>
  Boolean(feel?.trim()) || resistance.kind === 'byFeel' || cues.some(({ text }) => WORDS.test(text))

const withArticle = (feel: string): string => (/^(?:an?|the|base)\b/i.test(feel) ? feel : `${/^[aeiou]/i.test(feel) ? 'an' : 'a'} ${feel}`)
