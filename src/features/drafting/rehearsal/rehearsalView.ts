import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { tell, words } from '#words/words.ts'

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
  const { rehearsing } = words
  const { beat, eights, countsLeft, secondsLeft } = state
  return {
    texts: {
      clock: rehearsing.clock({ at: Math.floor(state.at + 1e-6), total: led.report.overall.total }),
      song: state.section === undefined ? '' : tell(sectionName(led.ride, led.ride.sections[state.section]!)),
      count: beat ? `${beat.count}` : state.phase === 'finished' ? '' : `${Math.ceil(secondsLeft - 1e-6)}`,
      eight: eights ? eightOf(eights, beat!.unit) : state.phase === 'finished' ? '' : rehearsing.secondsLeft,
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
  words.rehearsing.eight({ at: of - left + 1, of, unit: counts })

function nowOf(led: LedClass, { phase, block }: LeadState): { name: string; call: string } {
  if (phase !== 'block' || block === undefined) return { name: phase === 'block' ? '' : words.rehearsing.between({ phase }), call: '' }
  const { block: own, ledger } = led.report.blocks[block]!
  return { name: tell(itemName(own)), call: [words.names.posture({ posture: own.posture }), ledger.call, ledger.total].join(' · ') }
}

/** The words that are due. */
function sayOf({ report }: LedClass, { cue }: LeadState): string {
  if (cue === undefined) return ''
  return report.cues.lines[cue]!.cue.text.trim() || words.rehearsing.countIn
}

/** "then surge, one on, in 12 counts" */
function nextOf(led: LedClass, { next, phase }: LeadState, countsLeft: number | undefined): string {
  if (!next) return phase === 'finished' ? '' : words.rehearsing.thenEnd
  const { block, ledger } = led.report.blocks[next.block]!
  const what = { name: tell(itemName(block)), call: ledger.call }
  return countsLeft === undefined || phase !== 'block'
    ? words.rehearsing.thenIn({ ...what, seconds: Math.ceil(next.in - 1e-6) })
    : words.rehearsing.thenInCounts({ ...what, counts: countsLeft })
}
