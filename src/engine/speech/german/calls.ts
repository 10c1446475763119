import type { PaceStep, Scale, SmallCalls, SpokenCalls } from '#engine/speech/speech.ts'
import type { LedgerState } from '#plan/ledger/ledgerState.ts'
import type { Posture } from '#plan/model.ts'
import { formatSetting, formatSettingRange, formatSignedSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import { numberWords } from './numberWords.ts'
import { placeWords, sizeWords } from './settingWords.ts'

const POSTURES: Readonly<Record<Posture, string>> = {
  seated: 'hinsetzen',
  standing: 'aufstehen',
  hovering: 'tief in den Hover',
  offBike: 'runter vom Rad',
}

function total({ low, nominal, high }: LedgerState, scale: Scale, datum: 'base' | 'loose', about = ''): string {
  const place = (steps: KnobSteps): string => {
    if (steps < 0) return `${placeWords(-steps, scale)} unter ${datum === 'base' ? 'Grundwiderstand' : 'null'}`
    return steps === 0 && datum === 'base' ? 'Grundwiderstand' : placeWords(steps, scale)
  }
  if (low === null) return high === null ? `auf etwa ${place(nominal)}` : `auf höchstens ${about}${place(high)}`
  if (high === null) return `auf mindestens ${about}${place(low)}`
  return low === high ? `auf ${about}${place(low)}` : `auf ${about}${place(low)} bis ${place(high)}`
}

function pace(step: PaceStep): string {
  switch (step.kind) {
    case 'ramp':
      return `${step.up ? 'schneller werden' : 'langsamer werden'} bis ${Math.round(step.rpm)}`
    case 'withMusic':
      return `${step.up ? 'hoch' : 'runter'} auf ${Math.round(step.rpm)} und zurück auf ${Math.round(step.back)} mit der Musik`
    case 'time':
      return step.up ? 'doppeltes Tempo' : 'halbes Tempo'
    case 'step':
      return `${step.up ? 'schneller' : 'langsamer'}, auf ${Math.round(step.rpm)}`
  }
}

/** With the comma of German: "1,3". */
const comma = (text: string): string => text.replaceAll('.', ',')

const small: SmallCalls = {
  stay: 'halten',
  allOff: 'alles raus',
  byFeel: 'nach Gefühl',
  change: (steps, scale) => (steps === 0 ? 'halten' : comma(formatSignedSetting(steps, scale.stepsPerUnit))),
  asked: (mode, change) => (mode === 'exact' ? change : `${change} ${mode === 'atLeast' ? 'oder mehr' : 'wenn du kannst'}`),
  total({ low, nominal, high }, { stepsPerUnit }) {
    const at = (steps: KnobSteps) => comma(formatSetting(steps, stepsPerUnit))
    if (low === null) return high === null ? `etwa ${at(nominal)}` : `${at(high)} oder weniger`
    return high === null
      ? `${at(low)} oder mehr`
      : comma(formatSettingRange({ from: low, to: high }, stepsPerUnit).replace(' to ', ' bis '))
  },
  to: (at) => `auf ${at}`,
  toByFeel: (at) => `auf ${at} nach Gefühl`,
  about: (at) => `etwa ${at}`,
}

/** How the calls of a class are said in German. */
export const calls: SpokenCalls = {
  stay: 'Widerstand halten',
  allOff: 'alles raus',
  change: (steps, scale) => (steps === 0 ? 'Widerstand halten' : `${sizeWords(Math.abs(steps), scale)} ${steps > 0 ? 'mehr' : 'weniger'}`),
  asked: (mode, change) => (mode === 'exact' ? change : mode === 'atLeast' ? `mindestens ${change}` : `${change}, wenn du kannst`),
  total: (state, scale, datum) => total(state, scale, datum),
  byFeel: (state, scale, datum) => `nach Gefühl, ${total(state, scale, datum).slice('auf '.length)}`,
  about: (state, scale, datum) => total(state, scale, datum, 'etwa '),
  feltWay: (way, feel) => `nach Gefühl${way === 0 ? '' : way > 0 ? ', schwerer' : ', leichter'}: ${feel}`,
  small,
  posture: (posture) => POSTURES[posture],
  foot: (foot) => `jetzt führt ${foot === 'left' ? 'links' : 'rechts'}`,
  move: ({ name, counts }) => `${name} auf ${counts}`,
  pace,
  round: (left) => (left === 1 ? 'letzte Runde' : `noch ${numberWords(left)}`),
}
