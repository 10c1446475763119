import type { Cue } from '#plan/model.ts'

/** Hands, voice and shoulders are light and easy too, and no resistance. */
const OF_THE_BODY =
  /\b(?:light|easy|soft|smooth|firm|strong|heavy)\s+(?:\p{L}+\s+)?(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|feet|foot|voice)\b|\b(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|feet|foot)\s+(?:(?:are|stay|is)\s+)?(?:light|easy|soft|smooth|firm)\b|\bland(?:ing)?\s+(?:soft|light|easy)\b/giu
/** What a resistance is like under the legs: "heavy but smooth", "feels like wet sand", "thick", "a real hill". */
const RESISTANCE =
  /\b(?:feel(?:s|ing)?|heav(?:y|ier|iest)|light(?:er|est|ly)?|easy|easier|smooth(?:er|ly)?|brisk|thick(?:er)?|springy|firm(?:er)?|soft(?:er)?|strong(?:er)?|stiff(?:er)?|sticky|steep(?:er)?|gentle|chunky|gritty|tough(?:er)?|hard(?:er)?|solid|rolling|flat road|real (?:hill|climb)|weight|push(?:es)? back|grip|resist(?:s|ance under)|sand|mud|snow)\b/iu
/** How the breath and the talk go: "chatty", "short sentences", "one word at a time". */
const BREATH =
  /\b(?:chatt?(?:y|ing|able)?|conversation(?:al)?|can (?:still )?(?:talk|chat|speak)|(?:full|whole|short) sentences|one word|few words|out of breath|breathless|breathy|comfortabl[ey]|nothing (?:but|to it)|(?:just above|almost|next to) nothing)\b/iu

const known = new WeakMap<Cue, boolean>()

/** Whether a cue tells what the resistance feels like, in a leader's common words; read once for each cue object. */
export function tellsFeel(cue: Cue): boolean {
  let told = known.get(cue)
  if (told === undefined) {
    const text = cue.text.replace(OF_THE_BODY, ' ')
    told = RESISTANCE.test(text) || BREATH.test(text)
    known.set(cue, told)
  }
  return told
}
