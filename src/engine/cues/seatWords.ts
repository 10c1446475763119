import type { Cue } from '#plan/model.ts'

const SEAT = /\b(?:sit|sits|sitting|seats?|seated|saddle)\b/i
/** "Out of the saddle", "hips over the saddle" and "back to the saddle" are places, and offer nothing. */
const PLACE = /\b(?:out of|off|above|over|behind|back of|to) the (?:saddle|seat)\b/gi
/** What makes it a choice: "or stay seated", "option: seated", "seated works too", "the saddle is always there". */
const CHOICE =
  /\b(?:or|options?|optional(?:ly)?|if you|when(?:ever)? you|choice|choose|can|could|may|might|always|welcome|works?|fine|okay|ok|rather|instead|too|as well|anyone|prefer)\b/i
/** "Stay in the saddle" is an offer to riders who stand, and a call to riders who sit. */
const STAY = /\b(?:stay(?:ing)?|remain)\b/i

type Offer = 'always' | 'whereRidersStand' | 'never'
const known = new WeakMap<Cue, Offer>()

/** Whether a text offers to stay in the saddle, sentence by sentence: "sit, keep it on" is a call and no offer. */
function offerOf(text: string): Offer {
  const seated = text.split(/[.!?;…]+/).flatMap((sentence) => {
    const words = sentence.replace(PLACE, ' ')
    return SEAT.test(words) ? [words] : []
  })
  if (seated.some((words) => CHOICE.test(words))) return 'always'
  return seated.some((words) => STAY.test(words)) ? 'whereRidersStand' : 'never'
}

/** As `offerOf`, of a cue that is said where riders stand or sit; read once for each cue object. */
export function cueOffersSeat(cue: Cue, standing: boolean): boolean {
  let offer = known.get(cue)
  if (offer === undefined) {
    offer = offerOf(cue.text)
    known.set(cue, offer)
  }
  return offer === 'always' || (standing && offer === 'whereRidersStand')
}
