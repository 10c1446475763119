import { numberWords } from '#engine/speech/english/numberWords.ts'
import { placeWords, sizeWords } from '#engine/speech/english/settingWords.ts'
import type { PaceStep, Scale, SmallCalls, SpokenCalls } from '#engine/speech/speech.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Posture } from '#plan/model.ts'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'

const POSTURES: Readonly<Record<Posture, string>> = { seated: 'sit', standing: 'up', hovering: 'hover low', offBike: 'off the bike' }

function total({ low, nominal, high }: LedgerState, scale: Scale, datum: 'base' | 'loose', about = ''): string {
  const place = (steps: KnobSteps): string => {
    if (steps < 0) return `${placeWords(-steps, scale)} under ${datum === 'base' ? 'base' : 'zero'}`
    return steps === 0 && datum === 'base' ? 'base' : placeWords(steps, scale)
  }
  if (low === null) return high === null ? `to about ${place(nominal)}` : `to at most ${about}${place(high)}`
  if (high === null) return `to at least ${about}${place(low)}`
  return low === high ? `to ${about}${place(low)}` : `to ${about}${place(low)} to ${place(high)}`
}

function pace(step: PaceStep): string {
  switch (step.kind) {
    case 'ramp':
      return `${step.up ? 'pick it up' : 'bring it down'} to ${Math.round(step.rpm)}`
    case 'withMusic':
      return `${step.up ? 'up' : 'down'} to ${Math.round(step.rpm)} and back to ${Math.round(step.back)} with the music`
    case 'time':
      return step.up ? 'double time' : 'half time'
    case 'step':
      return `${step.up ? 'faster' : 'slower'}, to ${Math.round(step.rpm)}`
  }
}

const small: SmallCalls = {
  stay: 'stay',
  allOff: 'all off',
  byFeel: 'by feel',
  change: (steps, scale) => (steps === 0 ? 'stay' : formatSignedSetting(steps, scale.stepsPerUnit)),
  asked: (mode, change) => (mode === 'exact' ? change : `${change} ${mode === 'atLeast' ? 'or more' : 'if you have it'}`),
  total({ low, nominal, high }, { stepsPerUnit }) {
    const at = (steps: KnobSteps) => formatSetting(steps, stepsPerUnit)
    if (low === null) return high === null ? `${at(nominal)} or so` : `${at(high)} or less`
    return high === null ? `${at(low)} or more` : formatSettingRange({ from: low, to: high }, stepsPerUnit)
  },
  to: (at) => `to ${at}`,
  toByFeel: (at) => `to ${at} by feel`,
  about: (at) => `about ${at}`,
}

/** How the calls of a class are said in English. */
export const calls: SpokenCalls = {
  stay: 'stay',
  allOff: 'all off',
  change: (steps, scale) => (steps === 0 ? 'stay' : `${sizeWords(Math.abs(steps), scale)} ${steps > 0 ? 'on' : 'off'}`),
  asked: (mode, change) => (mode === 'exact' ? change : mode === 'atLeast' ? `at least ${change}` : `${change} if you have it`),
  total: (state, scale, datum) => total(state, scale, datum),
  byFeel: (state, scale, datum) => `by feel, ${total(state, scale, datum).slice('to '.length)}`,
  about: (state, scale, datum) => total(state, scale, datum, 'about '),
  feltWay: (way, feel) => `by feel${way === 0 ? '' : way > 0 ? ', heavier' : ', lighter'}: ${feel}`,
  small,
  posture: (posture) => POSTURES[posture],
  foot: (foot) => `${foot} foot leads now`,
  move: ({ name, counts }) => `${name} on ${counts}`,
  pace,
  round: (left) => (left === 1 ? 'last one' : numberWords(left)),
}
