import { bySpeech } from '#engine/speech/bySpeech.ts'
import type { Speech, Told } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'

const known = bySpeech(() => new WeakMap<Cue, ReturnType<Told['seat']>>())

/** Whether a cue offers to stay in the saddle, said where riders stand or sit; read once for each cue object. */
export function cueOffersSeat(cue: Cue, standing: boolean, speech: Speech): boolean {
  const ofCues = known(speech)
  let offer = ofCues.get(cue)
  if (offer === undefined) {
    offer = speech.told.seat(cue.text)
    ofCues.set(cue, offer)
  }
  return offer === 'always' || (standing && offer === 'whereRidersStand')
}
