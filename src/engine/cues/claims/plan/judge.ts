import type { Meaning, MeaningOf, Unit } from '#engine/cues/claims/claim.ts'
import { judgeAhead, judgeDone, judgeLast, judgeMore, judgePlace, judgeRounds, rowOf } from './judgeCount.ts'
import { judgeChange, judgeStay, judgeTotal } from './judgeKnob.ts'
import { judgeEach, judgeMoveCounts, judgeRepeats } from './judgeMove.ts'
import { judgeCadence, judgeEffort, judgeTempo } from './judgePace.ts'
import { judgeClock, judgeGone, judgeLeft, judgeLength, judgeShare, judgeUntil } from './judgeTime.ts'
import type { Spoken } from './spoken.ts'
import type { Verdict } from './verdict.ts'

/** What the plan says to one meaning of a number, at the moment it is said. */
export function judge(meaning: Meaning, spoken: Spoken): Verdict {
  if ('unit' in meaning && meaning.unit === 'bars') return judgeBars(meaning, spoken)
  switch (meaning.about) {
    case 'change':
      return judgeChange(meaning, spoken)
    case 'stay':
      return judgeStay(spoken)
    case 'total':
      return judgeTotal(meaning, spoken)
    case 'length':
      return spoken.moment === 'story' ? null : judgeLength(meaning, spoken)
    case 'left':
      return judgeLeft(meaning, spoken)
    case 'gone':
      return judgeGone(meaning, spoken)
    case 'until':
      return judgeUntil(meaning, spoken)
    case 'share':
      return judgeShare(meaning, spoken, rowDone(spoken))
    case 'clock':
      return judgeClock(meaning, spoken)
    case 'rounds':
      return judgeRounds(meaning, spoken)
    case 'ahead':
      return judgeAhead(meaning, spoken)
    case 'more':
      return judgeMore(meaning, spoken)
    case 'done':
      return judgeDone(meaning, spoken)
    case 'place':
      return judgePlace(meaning, spoken)
    case 'last':
      return judgeLast(meaning, spoken)
    case 'moveCounts':
      return judgeMoveCounts(meaning, spoken)
    case 'each':
      return judgeEach(meaning, spoken)
    case 'repeats':
      return judgeRepeats(meaning, spoken)
    case 'effort':
      return judgeEffort(meaning, spoken)
    case 'cadence':
      return judgeCadence(meaning, spoken)
    case 'tempo':
      return judgeTempo(meaning, spoken)
  }
}

/** Bars are judged as the counts they have; those of songs in six are felt in more than one way. */
function judgeBars(meaning: Extract<Meaning, { unit: Unit }> | MeaningOf<'moveCounts'>, spoken: Spoken): Verdict {
  const bar = spoken.view.ride.sections[spoken.ridden.section]!.song?.grid?.beatsPerBar
  if (bar !== 3 && bar !== 4) return null
  const verdict =
    meaning.about === 'length'
      ? judge({ ...meaning, unit: 'counts', low: meaning.low * bar, high: meaning.high * bar }, spoken)
      : judge({ ...meaning, unit: 'counts', value: meaning.value * bar }, spoken)
  if (verdict === null || verdict.holds) return verdict
  const { low = 0, high = low } = verdict.right
  return { ...verdict, right: { low: low / bar, high: high / bar } }
}

function rowDone(spoken: Spoken): { done: number; of: number } | null {
  const row = rowOf(spoken, undefined)
  return row && { done: row.earlier, of: row.total }
}
