import { CALL_PLACE, RADIO_RATE, SPEECH_RATES, wordsThatFit } from '#engine/cues/speechRate.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  wpm: number
  beats: number
  bpm: number
  setting: keyof typeof SPEECH_RATES
}

checkRows('speech', rows, {
  'cue.': ({ wpm, beats, bpm }: Inputs) => wordsThatFit(wpm, beats, bpm),
  'cue.lead': () => [...CALL_PLACE],
  'speech.radio': () => [...RADIO_RATE],
  'speech.tauroza': ({ setting }: Inputs) => {
    const { from, to, mean } = SPEECH_RATES[setting]
    return [from, to, mean]
  },
})
