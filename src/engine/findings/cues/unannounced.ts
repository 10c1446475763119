import type { Change, ChangeKind } from '#engine/cues/changeAt.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, fix, quoted } from '#engine/findings/finding.ts'
import { sayTotal } from '#engine/ledger/sayCall.ts'
import type { Finding, Fix, PlayedBlock } from '#engine/report.ts'
import { editBlock } from '#plan/edits.ts'
import type { Cue } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'

const NEED_WORDS: readonly ChangeKind[] = ['resistance', 'posture', 'move', 'pace', 'foot']
const CALLS = new Set(['preview', 'announce', 'countIn', 'action'])

/** Changes that nobody calls; the call is worded from the ledger. */
export function unannounced(facts: Facts): Finding[] {
  return facts.cues.changes.flatMap((change) => {
    const played = facts.blocks[change.block]!
    const silent = change.kinds.filter((kind) => NEED_WORDS.includes(kind))
    if (
      silent.length === 0 ||
      played.block.cues.some(({ moment, text }) => CALLS.has(moment) && (text.trim() !== '' || moment === 'countIn'))
    )
      return []
    return [
      atBlock(facts, change.block, {
        rule: 'unannounced',
        severity: 'hint',
        text: `Nobody calls the change of ${silent.map((kind) => NAMES[kind]).join(' and ')} into ${quoted(facts, change.block)}.`,
        why: COMMON_PRACTICE,
        amount: silent.length,
        fixes: [callFix(facts, played, change)],
      }),
    ]
  })
}

const NAMES: Record<ChangeKind, string> = {
  section: 'song',
  set: 'set',
  resistance: 'resistance',
  posture: 'posture',
  hands: 'hands',
  move: 'move',
  pace: 'pace',
  foot: 'lead foot',
}

function callFix(facts: Facts, played: PlayedBlock, change: Change): Fix | undefined {
  const id = freshId(facts, played.block.id)
  const text = wordsFor(facts, played, change)
  if (id === null || text === '') return undefined
  const counted = facts.sections[played.section]!.bpm !== undefined
  const lead = counted ? { counts: Math.max(4, change.wordsEnd) } : { seconds: facts.rules.announceSeconds }
  const cue: Cue = { id, moment: 'announce', lead, text }
  return fix(`Announce “${text}”`, `Announced ${quoted(facts, change.block)}`, (ride) =>
    editBlock(ride, played.block.id, (block) => ({ ...block, cues: [...block.cues, cue] })),
  )
}

/** Resistance first, then posture, then pace, foot and move; only what is the same in every round. */
function wordsFor({ blocks, ride }: Facts, played: PlayedBlock, { kinds, pace }: Change): string {
  const rounds = blocks.filter(({ block }) => block.id === played.block.id)
  const { block, ledger } = played
  const parts: string[] = []
  if (kinds.includes('resistance')) {
    const { low, high } = ledger.after
    if (rounds.every((round) => round.ledger.call === ledger.call)) parts.push(ledger.call)
    else if (rounds.every((round) => round.ledger.total === ledger.total)) parts.push(sayTotal(low, high, ride.bike, ride.datum))
  }
  if (kinds.includes('posture')) parts.push(POSTURE_WORDS[block.posture])
  if (pace) parts.push(pace.words)
  if (kinds.includes('foot') && played.foot !== null) parts.push(`${played.foot} foot leads now`)
  if (kinds.includes('move') && block.move) parts.push(`${block.move.name} on ${block.move.counts}`)
  return parts.map((part) => `${part[0]!.toUpperCase()}${part.slice(1)}.`).join(' ')
}

const POSTURE_WORDS = { seated: 'sit', standing: 'up', hovering: 'hover low', offBike: 'off the bike' } as const

function freshId({ ride, blocks }: Facts, blockId: string): string | null {
  const id = `${blockId}-call`
  if (id.length > 64 || blocks.some(({ block }) => block.cues.some((cue) => cue.id === id))) return null
  for (const taken of idsOf(ride)) if (taken === id) return null
  return id
}
