import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { editBlock } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** The first showing of a move that comes without a form point; later uses rest on it. */
export function moveWithoutForm(facts: Facts): Finding[] {
  // A form point may be part of the call.
  const speech = speechOf(facts.ride)
  return facts.cues.showings.flatMap(({ move, first }) => {
    const played = facts.blocks[first]!
    if (played.cadence.kind === 'still' || played.block.cues.some(({ moment, text }) => moment === 'form' || speech.told.form(text)))
      return []
    return [
      atBlock(facts, first, {
        rule: 'moveWithoutForm',
        severity: 'hint',
        text: say('checksCues.moveWithoutForm', { move, block: quotedItem(played.block) }),
        why: COMMON_PRACTICE,
        fixes: () => [formFix(played, speech)],
      }),
    ]
  })
}

function formFix({ block }: PlayedBlock, { sentences }: Speech): Fix | undefined {
  const id = `${block.id}-form`
  if (id.length > 64 || block.cues.some((cue) => cue.id === id)) return undefined
  const name = block.move!.name.toLowerCase()
  const text = sentences.moveForm(name)
  // In the middle of the block, where the move is under way.
  const lead =
    'counts' in block.length ? { counts: Math.floor(block.length.counts / 2) } : { seconds: Math.floor(block.length.seconds / 2) }
  const cue: Cue = { id, moment: 'form', lead, text }
  return fix(say('checksCues.addForm', { words: text }), say('checksCues.addedForm', { block: quotedItem(block) }), (ride) =>
    editBlock(ride, block.id, (before) => ({ ...before, cues: [...before.cues, cue] })),
  )
}
