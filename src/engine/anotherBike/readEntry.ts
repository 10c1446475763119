import type { LedgerEntry, PlayedBlock } from '#engine/played.ts'
import type { SpokenCalls } from '#engine/speech/speech.ts'
import { atTotal, inRange, type LedgerState, sameState } from '#plan/ledger/ledgerState.ts'
import type { Bike } from '#plan/model.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { KnobSteps, Rpm } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { paceOf } from './paceOf.ts'
import type { ShownOn, TotalOnBike } from './readTotal.ts'

/** Reads a total at a cadence on the bike a ride is shown on. */
export type Reader = (total: KnobSteps, rpm: Rpm) => TotalOnBike

/** What words on another bike need beside the block itself. */
export interface EntryContext {
  on: ShownOn
  read: Reader
  /** The cadence of a block that turns no pedals or says no pace. */
  quietRpm: Rpm
  /** How the ride's calls are said. */
  calls: SpokenCalls
}

/** The words of a state: written, written smallest, spoken, and what it feels like. */
export interface StateWords {
  total: string
  small: string
  spoken: string
  feel: string
  rounding: Text
  /** Beyond what can be read there. */
  isByFeel: boolean
}

/**
 * A played block's entry in the words of another bike. What was a change becomes the total to
 * arrive at, since rounded totals do not add up; a call that leaves the knob where it stands is
 * "stay", also where riders were told to turn and the other bike's step is too coarse for it.
 *
 * @param standing how riders stand before it, as they were last told
 */
export function readEntry(played: PlayedBlock, standing: Pick<StateWords, 'small'>, context: EntryContext): LedgerEntry {
  const { ledger, block } = played
  const { calls } = context
  const { small } = calls
  if (block.resistance.kind === 'allOff')
    return { ...ledger, total: small.allOff, reading: { small: 'off', feel: say('figures.noResistance'), rounding: '' } }
  const rpm = paceOf(played, context.quietRpm)
  const words = wordsOfState(ledger.after, rpm, context)
  const stays = words.small === standing.small && (!words.isByFeel || sameState(ledger.before, ledger.after))
  const { checkpoint } = ledger
  return {
    ...ledger,
    total: words.total,
    form: stays ? 'stay' : words.isByFeel ? 'byFeel' : 'total',
    call: stays ? calls.stay : callOf(played, words, calls),
    change: stays ? small.stay : words.isByFeel ? small.byFeel : small.to(words.small),
    reading: {
      small: words.small,
      feel: words.feel,
      rounding: words.rounding,
      ...(checkpoint && {
        checkpoint: wordsOfState({ ...inRange(checkpoint), nominal: checkpoint.to }, rpm, context).total,
      }),
    },
  }
}

/** The smallest form of what cannot be read there. */
export const BY_FEEL = 'feel'

/** Riders who may stand apart are given both ends as far as they can be read; above what can be, and where an end is open, "or more". */
export function wordsOfState({ low, nominal, high }: LedgerState, rpm: Rpm, { on, read, calls }: EntryContext): StateWords {
  const aim = read(nominal, rpm)
  if (aim.kind === 'byFeel') {
    const rounding = say('figures.beyondMeasured', { above: aim.side === 'above' })
    const { byFeel } = calls.small
    return { total: byFeel, small: BY_FEEL, spoken: byFeel, feel: aim.feel, rounding, isByFeel: true }
  }
  const least = low === null ? null : read(low, rpm)
  const most = high === null ? null : read(high, rpm)
  const there: LedgerState = {
    low: least?.kind === 'byFeel' ? aim.total : (least?.total ?? null),
    nominal: aim.total,
    high: most?.kind === 'byFeel' ? null : (most?.total ?? null),
  }
  // "About" says already that riders may be on either side.
  const state = there.low === null && there.high === null ? atTotal(aim.total) : there
  return {
    total: calls.small.about(calls.small.total(state, on.bike)),
    small: smallest(state, on.bike, calls),
    spoken: calls.about(state, on.bike, on.datum),
    feel: aim.feel,
    rounding: roundingWords(aim),
    isByFeel: false,
  }
}

/** "~13", "~11–13", "~12+", "~9 max" */
function smallest(state: LedgerState, bike: Bike, { small }: SpokenCalls): string {
  const { low, high } = state
  if (low === null && high !== null) return `~${formatSetting(high, bike.stepsPerUnit)} max`
  return high === null ? `~${formatSetting(low ?? state.nominal, bike.stepsPerUnit)}+` : `~${small.total(state, bike)}`
}

/** "6 W more by rounding", "the same watts" */
function roundingWords({ wattsOff }: Extract<TotalOnBike, { kind: 'reading' }>): Text {
  const watts = Math.round(wattsOff)
  if (watts === 0) return say('figures.sameWatts')
  return say('figures.byRounding', { watts: Math.abs(watts), more: watts > 0 })
}

function callOf(
  { ledger: { before, after }, block: { resistance } }: PlayedBlock,
  { spoken, feel, isByFeel }: StateWords,
  calls: SpokenCalls,
): string {
  if (isByFeel) return calls.feltWay(Math.sign(after.nominal - before.nominal) as -1 | 0 | 1, feel)
  return `${resistance.kind === 'change' && resistance.mode === 'ifYouHaveIt' ? calls.asked('ifYouHaveIt', spoken) : spoken}, ${feel}`
}
