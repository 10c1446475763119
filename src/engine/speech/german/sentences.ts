import type { SpokenSentences } from '#engine/speech/speech.ts'
import type { Seconds } from '#units/units.ts'
import { numberBefore, numberWords } from './numberWords.ts'

const minutesOf = (minutes: number): string => `${numberBefore(minutes)} ${minutes === 1 ? 'Minute' : 'Minuten'}`

/** "fünfunddreißig Sekunden", "eine Minute", "anderthalb Minuten". */
function lengthWords(seconds: Seconds): string {
  if (seconds < 60) return `${numberWords(seconds)} Sekunden`
  const halves = Math.round(seconds / 30)
  const whole = Math.floor(halves / 2)
  if (halves % 2 === 0) return minutesOf(whole)
  return `${whole === 1 ? 'anderthalb' : `${numberWords(whole)}einhalb`} Minuten`
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Points for the moves rooms do most; own words. */
const MOVE_FORMS: readonly (readonly [move: RegExp, text: string])[] = [
  [/jump|lift|rise|sprung|sprünge|hoch/, 'Hände leicht, weich landen.'],
  [/travel|back|zurück/, 'Hüfte zurück über den Sattel, Rücken lang.'],
  [/press|push-up|liegestütz/, 'Ellbogen weich, Gewicht auf den Beinen.'],
  [/lean|sway|corner|seit|kurve/, 'Schultern bewegen sich, Hüfte bleibt über den Pedalen.'],
  [/crunch|pulse|puls/, 'Klein und aus der Mitte, ausatmen.'],
]

export const sentences: SpokenSentences = {
  formPoints: [
    'Schultern tief.',
    'Hände locker.',
    'Rücken lang.',
    'Knie über den Fußspitzen.',
    'Drücken und ziehen, runder Tritt.',
    'Brust auf, tief atmen.',
  ],
  moveForm: (move) => MOVE_FORMS.find(([name]) => name.test(move))?.[1] ?? 'Erst langsam und klein, dann auf den Beat.',
  closing: 'Beine still, Rad steht, beide Seiten gleich. Danke, stark gefahren.',
  inTheRoom:
    'Jede Ansage zählt von deinem eigenen Grundwiderstand, im Sattel bleiben geht immer, und wenn dir schwindlig wird, hörst du auf.',
  atHome:
    'Dein Rad ist nicht meins, also fahr nach dem Gefühl, das ich beschreibe, bleib im Sattel, wann immer du willst, und hör auf, wenn dir schwindlig wird.',
  coming({ minutes, efforts, longest, hardestAt }) {
    const length = capitalised(minutesOf(minutes))
    if (hardestAt === null) return `${length} ohne harte Belastung.`
    const minute = numberWords(hardestAt)
    if (efforts === 1) return `${length} mit einer harten Belastung von etwa ${dative(lengthWords(longest))}, in Minute ${minute}.`
    return `${length} mit ${numberWords(efforts)} harten Belastungen, keine länger als ${lengthWords(longest)}, die härteste in Minute ${minute}.`
  },
  length: (seconds) => (seconds % 60 === 0 ? minutesOf(seconds / 60) : seconds === 1 ? 'eine Sekunde' : `${numberWords(seconds)} Sekunden`),
  lighter: (size) => `${size === null ? 'auf Grundwiderstand' : `${size} weniger`}, gleiche Beine`,
  orSeated: (option) => (option === undefined ? 'sitzen bleiben' : `${option}; oder sitzen bleiben`),
}

const dative = (length: string): string => length.replace(/^eine /, 'einer ')
