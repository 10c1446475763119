import { callWords } from '#engine/cues/callWords.ts'
import type { Change, ChangeKind } from '#engine/cues/changeAt.ts'
import { usualLead } from '#engine/cues/usualPlace.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix, quoted } from '#engine/findings/finding.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'
import { say } from '#words/said.ts'

const NEED_WORDS: readonly ChangeKind[] = ['resistance', 'posture', 'move', 'pace', 'foot']
const CALLS = new Set(['preview', 'announce', 'countIn', 'action'])

/** Changes that nobody calls; the call is worded from the ledger. What holds as the ride begins has no time before it. */
export function unannounced(facts: Facts): Finding[] {
  return facts.cues.changes.flatMap((change) => {
    const played = facts.blocks[change.block]!
    const silent = change.kinds.filter((kind) => NEED_WORDS.includes(kind))
    if (
      played.from <= 0 ||
      // Nothing of the riding is asked of a stopped wheel.
      played.cadence.kind === 'still' ||
      silent.length === 0 ||
      played.block.cues.some(({ moment, text }) => CALLS.has(moment) && (text.trim() !== '' || moment === 'countIn'))
    )
      return []
    return [
      atBlock(facts, change.block, {
        rule: 'unannounced',
        severity: 'hint',
        text: say('checksCues.unannounced', { kinds: silent, block: quoted(facts, change.block) }),
        why: COMMON_PRACTICE,
        amount: silent.length,
        fixes: () => [callFix(facts, played, change)],
      }),
    ]
  })
}

function callFix(facts: Facts, played: PlayedBlock, change: Change): Fix | undefined {
  const id = freshId(facts, played.block.id)
  const text = callWords(facts.ride, facts.blocks, change)
  if (id === null || text === '') return undefined
  const counted = facts.sections[played.section]!.bpm !== undefined
  const lead = usualLead('announce', facts.rules, counted, change.wordsEnd)
  const cue: Cue = { id, moment: 'announce', lead, text }
  return fix(say('checksCues.announce', { words: text }), say('checksCues.announced', { block: quoted(facts, change.block) }), (ride) =>
    editBlock(ride, played.block.id, (block) => ({ ...block, cues: [...block.cues, cue] })),
  )
}

function freshId({ ride, blocks }: Facts, blockId: string): string | null {
  const id = `${blockId}-call`
  if (id.length > 64 || blocks.some(({ block }) => block.cues.some((cue) => cue.id === id))) return null
  for (const taken of idsOf(ride)) if (taken === id) return null
  return id
}
