import type { CueLine } from '#engine/cues/placeCues.ts'
import { isCalm } from '#engine/cues/storyWindows.ts'
import { overlap } from '#engine/cues/talk.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, type Noticed } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import type { Stretch } from '#units/units.ts'
import { say } from '#words/said.ts'
import { quotedCue } from './atLine.ts'

/** Half a minute of work that is mostly talk; the longest cue in it is named. Where riders can listen, a welcome or a story may take its time. */
export function tooMuchTalk(facts: Facts): Finding[] {
  const { talkSeconds, talkWindow } = facts.rules
  const linesIn = linesOfWindows(facts.cues.lines)
  return facts.cues.crowded.flatMap(({ from, to, seconds }) => {
    const lines = linesIn({ from, to })
    if (isCalm(facts.curves.strain, { from, to })) return []
    if (lines.every(({ change }) => change <= 0)) return []
    const longest = lines.reduce((best, line) => (line.to - line.from > best.to - best.from ? line : best), lines[0]!)
    const noticed: Noticed = {
      rule: 'tooMuchTalk',
      severity: 'hint',
      text: say('checksCues.tooMuchTalk', { from, seconds, window: talkWindow, most: talkSeconds, cue: quotedCue(longest) }),
      why: COMMON_PRACTICE,
      amount: seconds - talkSeconds,
    }
    return [atBlock(facts, longest.block, noticed, Math.max(0, from))]
  })
}

/** The lines spoken in a window, for windows that are asked for in their order: what has ended before one is not looked at again. */
function linesOfWindows(lines: readonly CueLine[]): (window: Stretch) => CueLine[] {
  let first = 0
  return (window) => {
    while (first < lines.length && lines[first]!.to <= window.from) first++
    const heard: CueLine[] = []
    for (let i = first; i < lines.length && lines[i]!.from < window.to; i++) if (overlap(lines[i]!, window) > 0) heard.push(lines[i]!)
    return heard
  }
}
