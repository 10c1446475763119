import { roomFrom } from '#engine/cues/cueRoom.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { overlap } from '#engine/cues/talk.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, fix, type Noticed } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { type Said, say, type Text } from '#words/said.ts'

/** Less than this over, or into one another, is a rounding of speech. */
export const SPEECH_ROUNDING: Seconds = 0.25

/** A finding about one cue of a played block, at the moment its words start. */
export function atLine(facts: Facts, line: CueLine, noticed: Noticed): Finding {
  return atBlock(facts, line.block, noticed, line.from, line.cue.id)
}

/** A cue's words in quotes, cut where they run long. */
export function quotedCue({ cue }: CueLine): Text {
  const text = cue.text.trim()
  if (text === '') return say('checksCues.theCountIn')
  return say('names.quoted', { name: text.length > 60 ? `${text.slice(0, 57).trimEnd()}…` : text })
}

/** Replaces fields of a cue. */
export function cueFix({ blocks }: Facts, { block, cue }: CueLine, label: Said, done: Said, patch: Partial<Cue>): Fix {
  const { id } = blocks[block]!.block
  return fix(label, done, (ride) =>
    editBlock(ride, id, (before) => ({ ...before, cues: before.cues.map((one) => (one.id === cue.id ? { ...one, ...patch } : one)) })),
  )
}

/**
 * Whether a line's words could end so many counts before their change instead: nothing else is spoken or kept quiet there,
 * and they start no sooner than they may.
 */
export function movesFreely({ blocks, cues }: Facts, line: CueLine, counts: Counts): boolean {
  const beat = line.lead > 0 ? (line.change - line.to) / line.lead : 0
  if (beat <= 0) return false
  const to = line.change - counts * beat
  const moved = { from: to - (line.to - line.from), to }
  const free = cues.lines.every((other) => other === line || overlap(other, moved) === 0)
  return free && moved.from >= (roomFrom(blocks, line) ?? 0) && cues.quiet.every((stretch) => overlap(stretch, moved) === 0)
}

/** Ends a cue's words so many counts before its change; half as many seconds where there is no song. */
export function leadFix(facts: Facts, line: CueLine, counts: Counts): Fix {
  const counted = facts.sections[facts.blocks[line.block]!.section]!.bpm !== undefined
  const by = { amount: counted ? counts : counts / 2, counted }
  return cueFix(facts, line, say('checksCues.endBefore', by), say('checksCues.movedToEnd', { cue: quotedCue(line), ...by }), {
    lead: counted ? { counts } : { seconds: counts / 2 },
  })
}
