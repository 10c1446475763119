import type { Cue } from '#plan/model.ts'

const SEAT = /\b(?:sit|sits|sitting|seats?|seated|saddle)\b/i
/** "Out of the saddle", "hips over the saddle" and "back to the saddle" are places, and offer nothing. */
const PLACE = /\b(?:out of|off|above|over|behind|back of|to) the (?:saddle|seat)\b/gi
/** What makes it a choice: "or stay seated", "option: seated", "seated works too", "the saddle is always there". */
const CHOICE =
  /\b(?:or|options?|optional(?:ly)?|if you|when(?:ever)? you|choice|choose|can|could|may|might|always|welcome|works?|fine|okay|ok|rather|instead|stay(?:ing)?|remain|too|as well|anyone|prefer)\b/i

const known = new WeakMap<Cue, boolean>()

/** Whether a text offers to stay in the saddle, sentence by sentence: "sit, keep it on" is a call and no offer. */
const offersSeat = (text: string): boolean =>
  text.split(/[.!?;…]+/).some((sentence) => SEAT.test(sentence.replace(PLACE, ' ')) && CHOICE.test(sentence.replace(PLACE, ' ')))

/** As `offersSeat`; read once for each cue object. */
export function cueOffersSeat(cue: Cue): boolean {
  let offered = known.get(cue)
  if (offered === undefined) {
    offered = offersSeat(cue.text)
    known.set(cue, offered)
  }
  return offered
}
