import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { quoted } from '#engine/findings/finding.ts'
import type { Finding } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { say } from '#words/said.ts'
import { atLine, cueFix, quotedCue } from './atLine.ts'

const WHY = say('sources.resistanceFirst')

/** Calls that send riders out of the saddle before the resistance they stand on. */
export function resistanceFirst(facts: Facts): Finding[] {
  const rising = new Set(
    facts.cues.changes.filter(({ kinds }) => kinds.includes('posture') && kinds.includes('resistance')).map(({ block }) => block),
  )
  const speech = speechOf(facts.ride)
  return facts.cues.lines.flatMap((line) => {
    const { block } = facts.blocks[line.block]!
    if (block.posture !== 'standing' || !rising.has(line.block)) return []
    const added = claimsOf(line.cue, facts.ride.bike.unit, speech).find(
      ({ meanings: [first] }) => first.about === 'change' && first.low > 0,
    )
    const up = speech.told.rising(line.cue.text)
    if (added === undefined || up < 0 || up > added.from) return []
    const text = resistanceToFront(line.cue.text, added.from)
    return [
      atLine(facts, line, {
        rule: 'resistanceFirst',
        severity: 'warning',
        text: say('checksCues.resistanceFirst', { cue: quotedCue(line), block: quoted(facts, line.block) }),
        why: WHY,
        fixes: () => [
          text === null
            ? undefined
            : cueFix(facts, line, say('checksCues.say', { words: text }), say('checksCues.putResistanceFirst', { cue: quotedCue(line) }), {
                text,
              }),
        ],
      }),
    ]
  })
}

/** The sentence with the resistance moved to the front; null where it is all one sentence. */
function resistanceToFront(text: string, at: number): string | null {
  const sentences = text.match(/[^.!?]+[.!?]*\s*/g) ?? []
  let start = 0
  const index = sentences.findIndex((sentence) => {
    start += sentence.length
    return at < start
  })
  if (index <= 0) return null
  const moved = sentences[index]!.trim()
  return [moved, ...sentences.toSpliced(index, 1).map((sentence) => sentence.trim())].join(' ')
}
