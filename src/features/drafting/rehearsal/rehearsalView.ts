import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'

/** Places of the bar that are written frame by frame. */
export type Slot = 'clock' | 'song' | 'count' | 'eight' | 'name' | 'call' | 'say' | 'next'

/** What the bar says at one moment of the ride; empty places are not shown. */
interface RehearsalWords {
  texts: Record<Slot, string>
  /** What is said to those who hear the page; another one for every block. */
  spoken: string
}

/** Pure: the same state gives the same words. */
export function rehearsalView(led: LedClass, state: LeadState): RehearsalWords {
  const { name, call } = nowOf(led, state)
  const { beat, eights, countsLeft, secondsLeft } = state
  return {
    texts: {
      clock: `${formatClock(Math.floor(state.at + 1e-6))} of ${formatClock(led.report.overall.total)}`,
      song: state.section === undefined ? '' : nameOfSection(led.ride, led.ride.sections[state.section]!),
      count: beat ? `${beat.count}` : state.phase === 'finished' ? '' : `${Math.ceil(secondsLeft - 1e-6)}`,
      eight: eights ? eightOf(eights, beat!.unit) : state.phase === 'finished' ? '' : 'seconds left',
      name,
      call,
      say: sayOf(led, state),
      next: nextOf(led, state, countsLeft),
    },
    spoken: `${name}${call && `, ${call}`}.`,
  }
}

/** "eight 3 of 8" */
const eightOf = ({ left, of }: NonNullable<LeadState['eights']>, counts: number): string =>
  `${counts === 6 ? 'six' : 'eight'} ${of - left + 1} of ${of}`

const BETWEEN = {
  briefing: 'briefing',
  leadIn: 'before the one',
  openTail: 'nothing planned',
  clearUp: 'clear-up',
  finished: 'the end',
} as const

function nowOf(led: LedClass, { phase, block }: LeadState): { name: string; call: string } {
  if (phase !== 'block' || block === undefined) return { name: phase === 'block' ? '' : BETWEEN[phase], call: '' }
  const { block: own, ledger } = led.report.blocks[block]!
  return { name: nameOfItem(own), call: [POSTURE_WORDS[own.posture].is, ledger.call, ledger.total].join(' · ') }
}

/** The words that are due. */
function sayOf({ report }: LedClass, { cue }: LeadState): string {
  if (cue === undefined) return ''
  return report.cues.lines[cue]!.cue.text.trim() || 'Count in.'
}

/** "then surge, one on, in 12 counts" */
function nextOf(led: LedClass, { next, phase }: LeadState, countsLeft: number | undefined): string {
  if (!next) return phase === 'finished' ? '' : 'then the end'
  const { block, ledger } = led.report.blocks[next.block]!
  const when = countsLeft === undefined || phase !== 'block' ? formatDuration(Math.ceil(next.in - 1e-6)) : `${countsLeft} counts`
  return `then ${nameOfItem(block)}, ${ledger.call}, in ${when}`
}
