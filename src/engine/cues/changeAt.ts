import type { PlayedBlock } from '#engine/played.ts'
import type { PaceStep } from '#engine/speech/speech.ts'
import { sameState } from '#plan/ledger/ledgerState.ts'
import type { Counts, Rpm } from '#units/units.ts'

/** What riders have to do differently from a block on. */
export type ChangeKind = 'section' | 'set' | 'resistance' | 'posture' | 'hands' | 'move' | 'pace' | 'foot'

/** A call for the legs alone: the knob is not touched. */
interface PaceCall {
  readonly from: Rpm | null
  readonly to: Rpm
  /** "Faster, to 90", "double time", "pick it up to 100 over the block". */
  readonly step: PaceStep
}

/** The change at the start of a played block. */
export interface Change {
  readonly block: number
  readonly kinds: readonly ChangeKind[]
  /** Counts before the change by which words have to be over. */
  readonly wordsEnd: Counts
  readonly pace?: PaceCall
}

interface EndRules {
  readonly wordsEndMove: Counts
  readonly wordsEndPosture: Counts
  readonly wordsEndResistance: Counts
  readonly offBeatRpm: Rpm
}

/** Everything that differs from the block before. */
export function changeAt(played: PlayedBlock, before: PlayedBlock | undefined, rules: EndRules): Change {
  const kinds: ChangeKind[] = []
  const { block, ledger } = played
  if (before === undefined || before.section !== played.section) kinds.push('section')
  if (played.set && before?.set?.set !== played.set.set) kinds.push('set')
  if (turnsKnob(played)) kinds.push('resistance')
  if (block.posture !== (before?.block.posture ?? 'seated')) kinds.push('posture')
  if (before !== undefined && block.hands !== before.block.hands) kinds.push('hands')
  if (block.move !== undefined && !sameMove(block.move, before?.block.move)) kinds.push('move')
  const pace = paceCall(played, before, rules.offBeatRpm)
  if (pace) kinds.push('pace')
  if (block.lead === 'swap' && played.footSpoken) kinds.push('foot')
  return { block: played.index, kinds, wordsEnd: wordsEndBefore(kinds, rules), ...(pace && ledger.form === 'stay' && { pace }) }
}

/** True where the call moves the knob of any rider. */
export function turnsKnob({ ledger: { before, after }, block }: PlayedBlock): boolean {
  return block.resistance.kind !== 'keep' && !sameState(before, after)
}

type Move = NonNullable<PlayedBlock['block']['move']>

const sameMove = (move: Move, before: Move | undefined): boolean =>
  before !== undefined && move.name === before.name && move.counts === before.counts && move.side === before.side

/** Resistance comes before posture, posture before a move; the slower the change, the earlier the words end. */
function wordsEndBefore(kinds: readonly ChangeKind[], rules: EndRules): Counts {
  const posture = kinds.includes('posture')
  if (posture && kinds.includes('resistance')) return rules.wordsEndResistance
  if (posture) return rules.wordsEndPosture
  return kinds.some((kind) => kind === 'resistance' || kind === 'move' || kind === 'pace' || kind === 'foot') ? rules.wordsEndMove : 0
}

/** Faster, slower, a ramp, or other strikes inside a song; none within the tolerance of an off-beat cadence. */
function paceCall(played: PlayedBlock, before: PlayedBlock | undefined, tolerance: Rpm): PaceCall | null {
  if (played.cadence.kind !== 'turning') return null
  const { from, to, least, most, pieces } = played.cadence
  const last = before?.cadence.kind === 'turning' ? before.cadence.to : null
  const sameSong = before?.section === played.section
  // A song that moves by no more than legs may be off it calls for nothing; nor does the first eight's mean against the last's.
  const drifts = pieces !== undefined
  if (drifts && Math.max(most - Math.max(from, to), Math.min(from, to) - least) > tolerance) {
    const up = most - Math.max(from, to) > Math.min(from, to) - least
    return { from: last, to, step: { kind: 'withMusic', up, rpm: up ? most : least, back: to } }
  }
  if (drifts ? Math.abs(from - to) > tolerance : from !== to) return { from: last, to, step: { kind: 'ramp', up: to > from, rpm: to } }
  if (last === null || !sameSong) return null
  const [strikes, old] = [played.strikesPerBeat, before!.strikesPerBeat]
  if (strikes !== null && old !== null && strikes !== old) return { from: last, to: from, step: { kind: 'time', up: strikes > old } }
  if (Math.abs(from - last) <= tolerance) return null
  return { from: last, to: from, step: { kind: 'step', up: from > last, rpm: from } }
}
