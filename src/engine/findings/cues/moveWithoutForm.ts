import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'

/** The first showing of a move that comes without a form point; later uses rest on it. */
export function moveWithoutForm(facts: Facts): Finding[] {
  return facts.cues.showings.flatMap(({ move, first }) => {
    const played = facts.blocks[first]!
    if (played.cadence.kind === 'still' || played.block.cues.some(tellsForm)) return []
    return [
      atBlock(facts, first, {
        rule: 'moveWithoutForm',
        severity: 'hint',
        text: say('checksCues.moveWithoutForm', { move, block: quotedItem(played.block) }),
        why: COMMON_PRACTICE,
        fixes: () => [formFix(played)],
      }),
    ]
  })
}

/** How a body does it: a form point may be part of the call. */
const BODY =
  /\b(?:hands?|elbows?|arms?|shoulders?|chest|spine|back|core|hips?|knees?|heels?|toes|chin|head|neck|land(?:ing)?|breathe|tall|soft)\b/i

const tellsForm = ({ moment, text }: Cue): boolean => moment === 'form' || BODY.test(text)

/** Points for the moves rooms do most; own words. */
const POINTS: readonly (readonly [move: RegExp, text: string])[] = [
  [/jump|lift|rise/, 'Light hands, land soft.'],
  [/travel|back/, 'Hips back over the saddle, long spine.'],
  [/press|push-up/, 'Elbows soft, weight on the legs.'],
  [/lean|sway|corner/, 'Shoulders move, hips stay over the pedals.'],
  [/crunch|pulse/, 'Small and from the middle, breathe out.'],
]

function formFix({ block }: PlayedBlock): Fix | undefined {
  const id = `${block.id}-form`
  if (id.length > 64 || block.cues.some((cue) => cue.id === id)) return undefined
  const name = block.move!.name.toLowerCase()
  const text = POINTS.find(([move]) => move.test(name))?.[1] ?? 'Slow and small first, then on the beat.'
  // In the middle of the block, where the move is under way.
  const lead =
    'counts' in block.length ? { counts: Math.floor(block.length.counts / 2) } : { seconds: Math.floor(block.length.seconds / 2) }
  const cue: Cue = { id, moment: 'form', lead, text }
  return fix(say('checksCues.addForm', { words: text }), say('checksCues.addedForm', { block: quotedItem(block) }), (ride) =>
    editBlock(ride, block.id, (before) => ({ ...before, cues: [...before.cues, cue] })),
  )
}
