import { countWords } from '#engine/cues/countWords.ts'
import { opensBlock } from '#engine/cues/cueRoom.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { speakingSeconds } from '#engine/cues/speechRate.ts'
import { utteranceOf, utteranceOfCue } from '#engine/cues/utterance.ts'
import type { Edit, Scale, Speech } from '#engine/speech/speech.ts'
import { checkClaims, type Mismatch } from './checkClaims.ts'
import { claimsIn, claimsOf } from './claimsOf.ts'
import { edited } from './edited.ts'
import type { PlanView } from './plan/planView.ts'

/** A text with only its wrong numbers changed, each in the form it had; null where one of them cannot be. */
export function repaired(text: string, mismatches: readonly Mismatch[], scale: Scale, { grammar }: Speech): string | null {
  const edits: Edit[] = []
  for (const { claim, right } of mismatches) {
    const own = grammar.rewrite(text, claim, right, scale)
    if (own === null) return null
    edits.push(...own)
  }
  const words = edited(text, edits)
  return words === text ? null : words
}

/**
 * The words with their wrong numbers put right, where they then read as the same sentence and hold whenever the cue is
 * spoken; null where no change of the numbers alone does that.
 *
 * @param lines every time the cue is spoken, as it stands
 */
export function repairOf(mismatches: readonly Mismatch[], lines: readonly CueLine[], view: PlanView): string | null {
  const { cue } = lines[0]!
  const {
    ride: { bike },
    speech,
  } = view
  const text = repaired(cue.text, mismatches, bike, speech)
  if (text === null) return null
  const meant = (claims: ReturnType<typeof claimsIn>): string => claims.map(({ meanings: [{ about }] }) => about).join(' ')
  return meant(claimsIn(text, bike.unit, speech)) === meant(claimsOf(cue, bike.unit, speech)) && holds(text, lines, view) ? text : null
}

/** Whether other words for a cue hold whenever it is spoken. */
export const holds = (text: string, lines: readonly CueLine[], view: PlanView): boolean =>
  lines.every((line) => checkClaims(respoken(line, text, view), view).length === 0)

/** A line with other words: they end when the old ones do, or begin with their block, and take longer or shorter by what they are. */
function respoken(line: CueLine, text: string, { blocks, rules, speech }: PlanView): CueLine {
  const cue = { ...line.cue, text }
  if (line.count !== undefined) return { ...line, cue }
  const words = countWords(text, speech)
  const speaking = Math.max(0, line.to - line.from - rules.speechPause)
  const before = speakingSeconds(utteranceOfCue(line.cue, speech), 1, rules)
  const length = before === 0 ? 0 : rules.speechPause + (speaking * speakingSeconds(utteranceOf(text, speech), 1, rules)) / before
  if (opensBlock(line, blocks)) return { ...line, cue, words, to: line.from + length }
  return { ...line, cue, words, from: Math.max(0, line.to - length) }
}
