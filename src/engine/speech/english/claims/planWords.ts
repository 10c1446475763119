import type { Figures, Meaning } from '#engine/cues/claims/claim.ts'
import type { OtherCall } from '#engine/cues/claims/plan/verdict.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import { placeWords, sizeWords } from '#engine/speech/english/settingWords.ts'
import type { Scale } from '#engine/speech/speech.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { sayTime, sayWallClock } from './sayTime.ts'
import { agreeing, sayPlural } from './sayWhole.ts'

/** What the plan has, in words of its own, where the number in the cue has no other form: "two left", "same resistance". */
export function planWords(meaning: Meaning, { low = 0, high, of }: Figures, call: OtherCall | undefined, scale: Scale): string {
  switch (meaning.about) {
    case 'change':
    case 'stay':
      return call === 'allOff'
        ? 'all off'
        : low === 0
          ? 'same resistance'
          : `${sizeWords(stepsOf(low, scale), scale)} ${low > 0 ? 'on' : 'off'}`
    case 'total': {
      const ends = [...new Set([low, high ?? low])].map(
        (value) => `${value < 0 ? 'minus ' : ''}${placeWords(stepsOf(value, scale), scale)}`,
      )
      const bound = call === 'orMore' ? 'at least ' : call === 'orLess' ? 'at most ' : ''
      return bound + ends.join(' to ')
    }
    case 'length':
      return meaning.unit === 'seconds' ? time(low) : `${count(low)} ${meaning.unit}`
    case 'left':
      return meaning.unit === 'seconds' ? `${time(low)} left` : `${count(low)} ${meaning.unit} left`
    case 'gone':
      return `${time(low)} gone`
    case 'until':
      return meaning.unit === 'seconds' ? `in ${time(low)}` : `in ${count(low)} ${meaning.unit}`
    case 'share':
      return `${Math.round(100 * low)}% done`
    case 'clock':
      return sayWallClock(low, meaning.of24)
    case 'rounds':
      return `${numberWords(low)} ${agreeing('rounds', low)}`
    case 'ahead':
      return meaning.kind ? `${numberWords(low)} ${agreeing(meaning.kind, low)}` : numberWords(low)
    case 'more':
      if (low === 0) return 'none left'
      return meaning.kind ? `${numberWords(low)} ${agreeing(meaning.kind, low)} left` : `${numberWords(low)} left`
    case 'done':
      if (low === 0) return 'none done'
      return `${numberWords(low)}${of === undefined ? '' : ` of ${numberWords(of)}`} done`
    case 'place':
      return `${meaning.kind ?? 'number'} ${numberWords(low)}${of === undefined ? '' : ` of ${numberWords(of)}`}`
    case 'last':
      if (high === undefined) return `number ${numberWords(low)}`
      return high <= 0 ? `the last${of === undefined ? ' one' : ` of ${numberWords(of)}`}` : `${numberWords(high)} left after it`
    case 'moveCounts':
      if (meaning.unit && meaning.unit !== 'counts') return `${formatNumber(low, 2)} ${meaning.unit}`
      return sayPlural(low, false) ?? `${numberWords(low)} counts`
    case 'each':
      return `${count(low)} of each`
    case 'repeats':
      return `${count(low)} times`
    case 'effort':
      return `${Number.isInteger(low) ? numberWords(low) : formatNumber(low, 1)} out of ten`
    case 'cadence':
      return `${Math.round(low)} rpm`
    case 'tempo':
      return `${Math.round(low)} bpm`
  }
}

const stepsOf = (value: number, { stepsPerUnit }: Scale): number => Math.round(Math.abs(value) * stepsPerUnit)
const time = (seconds: number): string =>
  sayTime(Math.max(1, seconds), { as: 'duration', figures: false, unit: 'seconds', adjective: false }, '') ?? `${Math.round(seconds)} s`
const count = (value: number): string => numberWords(Math.max(0, Math.round(value)))
