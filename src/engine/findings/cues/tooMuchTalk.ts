import { isCalm } from '#engine/cues/storyWindows.ts'
import { overlap } from '#engine/cues/talk.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { sayCue } from './atLine.ts'

/** Half a minute of work that is mostly talk; the longest cue in it is named. Where riders can listen, a welcome or a story may take its time. */
export function tooMuchTalk(facts: Facts): Finding[] {
  const { talkSeconds, talkWindow } = facts.rules
  return facts.cues.crowded.flatMap(({ from, to, seconds }) => {
    if (isCalm(facts.curves.strain, { from, to })) return []
    const lines = facts.cues.lines.filter((line) => overlap(line, { from, to }) > 0)
    if (lines.every(({ change }) => change <= 0)) return []
    const longest = lines.reduce((best, line) => (line.to - line.from > best.to - best.from ? line : best), lines[0]!)
    const found = atBlock(facts, longest.block, {
      rule: 'tooMuchTalk',
      severity: 'hint',
      text: `From ${formatClock(from)} there are ${formatNumber(seconds, 0)} s of speech in ${formatNumber(talkWindow, 0)} s, more than ${formatNumber(talkSeconds, 0)}; the longest is ${sayCue(longest)}.`,
      why: COMMON_PRACTICE,
      amount: seconds - talkSeconds,
    })
    return [{ ...found, at: Math.max(0, from) }]
  })
}
