import { numberWords } from '#engine/speech/english/numberWords.ts'
import type { SpokenSentences } from '#engine/speech/speech.ts'
import type { Seconds } from '#units/units.ts'

/** "thirty-five seconds", "a minute", "two minutes and a half"; to five seconds under a minute, else to half minutes. */
function lengthWords(seconds: Seconds): string {
  if (seconds < 60) return `${numberWords(seconds)} seconds`
  const halves = Math.round(seconds / 30)
  const whole = Math.floor(halves / 2)
  const minutes = whole === 1 ? 'a minute' : `${numberWords(whole)} minutes`
  return halves % 2 === 0 ? minutes : `${minutes} and a half`
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Points for the moves rooms do most; own words. */
const MOVE_FORMS: readonly (readonly [move: RegExp, text: string])[] = [
  [/jump|lift|rise/, 'Light hands, land soft.'],
  [/travel|back/, 'Hips back over the saddle, long spine.'],
  [/press|push-up/, 'Elbows soft, weight on the legs.'],
  [/lean|sway|corner/, 'Shoulders move, hips stay over the pedals.'],
  [/crunch|pulse/, 'Small and from the middle, breathe out.'],
]

export const sentences: SpokenSentences = {
  formPoints: [
    'Drop the shoulders.',
    'Light hands.',
    'Long back.',
    'Knees over the toes.',
    'Push and pull, round circles.',
    'Chest open, breathe low.',
  ],
  moveForm: (move) => MOVE_FORMS.find(([name]) => name.test(move))?.[1] ?? 'Slow and small first, then on the beat.',
  closing: 'Legs still, wheel stopped, both sides equal. Thank you, and well ridden.',
  inTheRoom: 'Every change starts from your own base, staying in the saddle is always an option, and you stop if you are dizzy.',
  atHome: 'Your bike is not mine, so go by the feel I describe, stay in the saddle whenever you like, and stop if you are dizzy.',
  coming({ minutes, efforts, longest, hardestAt }) {
    const length = `${capitalised(numberWords(minutes))} ${minutes === 1 ? 'minute' : 'minutes'}`
    if (hardestAt === null) return `${length} with nothing hard in them.`
    const minute = numberWords(hardestAt)
    if (efforts === 1) return `${length} with one hard effort of about ${lengthWords(longest)}, at minute ${minute}.`
    return `${length} with ${numberWords(efforts)} hard efforts, none longer than ${lengthWords(longest)}, the hardest at minute ${minute}.`
  },
  length(seconds) {
    if (seconds % 60 === 0) return seconds === 60 ? 'one minute' : `${numberWords(seconds / 60)} minutes`
    return `${numberWords(seconds)} ${seconds === 1 ? 'second' : 'seconds'}`
  },
  lighter: (size) => `${size === null ? 'at base' : `${size} less`}, same legs`,
  orSeated: (option) => (option === undefined ? 'stay seated' : `${option}; or stay seated`),
}
