import { sayTotal } from '#engine/ledger/sayCall.ts'
import type { LedgerEntry, LedgerState, PlayedBlock } from '#engine/report.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSettingRange } from '#units/formatSetting.ts'
import type { KnobSteps, Rpm } from '#units/units.ts'
import type { ShownOn, TotalOnBike } from './readTotal.ts'

/** Reads a total at a cadence on the bike a ride is shown on. */
export type Reader = (total: KnobSteps, rpm: Rpm) => TotalOnBike

/** What words on another bike need beside the block itself. */
export interface EntryContext {
  on: ShownOn
  read: Reader
  /** The highest total of the ride's own bike, at which a range is open. */
  ceiling: KnobSteps
  /** The cadence of a block that turns no pedals or says no pace. */
  quietRpm: Rpm
}

/** The words of a state: written, written smallest, spoken, and what it feels like. */
export interface StateWords {
  total: string
  small: string
  spoken: string
  feel: string
  rounding: string
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
  if (block.resistance.kind === 'allOff')
    return { ...ledger, total: 'all off', reading: { small: 'off', feel: 'no resistance', rounding: '' } }
  const rpm = cadenceOf(played, context)
  const words = wordsOfState(ledger.after, rpm, context)
  const stays = words.small === standing.small && (words.small !== BY_FEEL || sameState(ledger.before, ledger.after))
  const { checkpoint } = ledger
  return {
    ...ledger,
    total: words.total,
    call: stays ? 'stay' : callOf(played, words),
    change: stays ? 'stay' : words.small === BY_FEEL ? 'by feel' : `to ${words.small}`,
    reading: {
      small: words.small,
      feel: words.feel,
      rounding: words.rounding,
      ...(checkpoint && {
        checkpoint: wordsOfState({ low: checkpoint.from, nominal: checkpoint.to, high: checkpoint.to }, rpm, context).total,
      }),
    },
  }
}

const BY_FEEL = 'feel'

const sameState = (a: LedgerState, b: LedgerState): boolean => a.low === b.low && a.nominal === b.nominal && a.high === b.high

/** The pace of the middle of a block; where nothing turns or is known, the pace the ride's bike was measured at. */
export const cadenceOf = ({ cadence }: Pick<PlayedBlock, 'cadence'>, { quietRpm }: EntryContext): Rpm => {
  const rpm = cadence.kind === 'turning' ? (cadence.from + cadence.to) / 2 : 0
  return rpm > 0 ? rpm : quietRpm
}

/** Riders who may stand apart are given both ends as far as they can be read. */
export function wordsOfState({ low, nominal, high }: LedgerState, rpm: Rpm, { on, read, ceiling }: EntryContext): StateWords {
  const [least, aim, most] = [read(low, rpm), read(nominal, rpm), read(high, rpm)]
  if (aim.kind === 'byFeel') {
    const rounding = `${aim.side === 'above' ? 'above' : 'below'} what the bikes were measured for`
    return { total: 'by feel', small: BY_FEEL, spoken: 'by feel', feel: aim.feel, rounding }
  }
  const from = least.kind === 'reading' ? least.total : aim.total
  const isOpen = low < high && (high === ceiling || most.kind === 'byFeel')
  const to = isOpen ? from : most.kind === 'reading' ? most.total : aim.total
  const written = formatSettingRange(from, to, on.bike.stepsPerUnit)
  const spoken = `to about ${sayTotal(from, to, on.bike, on.datum).slice('to '.length)}`
  return {
    total: `about ${written}${isOpen ? ' or more' : ''}`,
    small: `~${written}${isOpen ? '+' : ''}`,
    spoken: isOpen ? `${spoken} or more` : spoken,
    feel: aim.feel,
    rounding: roundingWords(aim),
  }
}

/** "rounded: 6 W more", "rounded: as many watts" */
function roundingWords({ wattsOff }: Extract<TotalOnBike, { kind: 'reading' }>): string {
  const watts = Math.round(wattsOff)
  if (watts === 0) return 'the same watts'
  return `${formatNumber(Math.abs(watts), 0)} W ${watts > 0 ? 'more' : 'less'} by rounding`
}

function callOf({ ledger: { before, after }, block: { resistance } }: PlayedBlock, { spoken, feel, small }: StateWords): string {
  if (small === BY_FEEL) {
    const turned = Math.sign(after.nominal - before.nominal)
    const way = turned === 0 ? '' : turned > 0 ? ', heavier' : ', lighter'
    return `by feel${way}: ${feel}`
  }
  const asked = resistance.kind === 'change' && resistance.mode === 'ifYouHaveIt' ? ' if you have it' : ''
  return `${spoken}${asked}, ${feel}`
}
