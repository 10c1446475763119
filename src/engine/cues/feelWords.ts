import { bySpeech } from '#engine/speech/bySpeech.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'

const known = bySpeech(() => new WeakMap<Cue, boolean>())

/** Whether a cue tells what the resistance feels like, in a leader's common words; read once for each cue object. */
export function tellsFeel(cue: Cue, speech: Speech): boolean {
  const ofCues = known(speech)
  let told = ofCues.get(cue)
  if (told === undefined) {
    told = speech.told.feel(cue.text)
    ofCues.set(cue, told)
  }
  return told
}
