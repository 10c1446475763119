import type { Told } from '#engine/speech/speech.ts'

/** Telling somebody to drink: "grab a sip", "bottles up", "hydrate", "get some water"; "drink it in" is about the view. */
const DRINKING = [
  /\bdrink(?:s|ing)?\b(?!\s+(?:it\s+)?in\b)/i,
  /\bsips?\b/i,
  /\bhydrat(?:e|ion)\b/i,
  /\bbottles?\b(?!\s+(?:it|that|them|your|neck)\b)/i,
  /\b(?:grab|get|take|have|reach for|need|some|your|quick|of|for)\s+(?:(?:a|some|your|more|the|that|bit of|little)\s+)*water\b/i,
]
/** "Water." by itself, or "water break": elsewhere water may run over rocks. */
const WATER =
  /^\s*(?:and\s+|some\s+|quick\s+)?water(?:\s+(?:break|now|here|time|stop|please|everyone|everybody|if you (?:need|want) it))?\s*$/i
/** Words that put it off or deny it; "don't forget to drink" does neither. */
const NOT_NOW = /\b(?:don['’]?t|do not|no|not|never|without|later|next|after|soon|until|yet)\b/i
const REMINDER = /\b(?:don['’]?t|do not|never)\s+(?:forget|skip)\b/i
/** "smooth as water", "like water over rocks". */
const LIKENED = /\b(?:like|as)\s+(?:\p{L}+\s+)?water\b/iu

const SEAT = /\b(?:sit|sits|sitting|seats?|seated|saddle)\b/i
const SEATED = /\b(?:sit|sits|sitting|seat|seated|saddle)\b/i
/** "Out of the saddle", "hips over the saddle" and "back to the saddle" are places, and offer nothing. */
const PLACE = /\b(?:out of|off|above|over|behind|back of|to) the (?:saddle|seat)\b/gi
/** What makes it a choice: "or stay seated", "option: seated", "seated works too", "the saddle is always there". */
const CHOICE =
  /\b(?:or|options?|optional(?:ly)?|if you|when(?:ever)? you|choice|choose|can|could|may|might|always|welcome|works?|fine|okay|ok|rather|instead|too|as well|anyone|prefer)\b/i
/** "Stay in the saddle" is an offer to riders who stand, and a call to riders who sit. */
const STAY = /\b(?:stay(?:ing)?|remain)\b/i

/** Hands, voice and shoulders are light and easy too, and no resistance. */
const OF_THE_BODY =
  /\b(?:light|easy|soft|smooth|firm|strong|heavy)\s+(?:\p{L}+\s+)?(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|feet|foot|voice)\b|\b(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|feet|foot)\s+(?:(?:are|stay|is)\s+)?(?:light|easy|soft|smooth|firm)\b|\bland(?:ing)?\s+(?:soft|light|easy)\b/giu
/** What a resistance is like under the legs: "heavy but smooth", "feels like wet sand", "thick", "a real hill". */
const RESISTANCE =
  /\b(?:feel(?:s|ing)?|heav(?:y|ier|iest)|light(?:er|est|ly)?|easy|easier|smooth(?:er|ly)?|brisk|thick(?:er)?|springy|firm(?:er)?|soft(?:er)?|strong(?:er)?|stiff(?:er)?|sticky|steep(?:er)?|gentle|chunky|gritty|tough(?:er)?|hard(?:er)?|solid|rolling|flat road|real (?:hill|climb)|weight|push(?:es)? back|grip|resist(?:s|ance under)|sand|mud|snow)\b/iu
/** How the breath and the talk go: "chatty", "short sentences", "one word at a time". */
const BREATH =
  /\b(?:chatt?(?:y|ing|able)?|conversation(?:al)?|can (?:still )?(?:talk|chat|speak)|(?:full|whole|short) sentences|one word|few words|out of breath|breathless|breathy|comfortabl[ey]|nothing (?:but|to it)|(?:just above|almost|next to) nothing)\b/iu

const MUSIC = /\b(?:counts?|bars?|measures?|phrases?|eights?|sixes|chorus|verse|bridge|break|drop|(?:whole|rest of the) song)\b/i
const EFFORT =
  /\b(?:hard|harder|strong|heavy|push|surge|sprint|attack|climb|go|own it|all out|everything|effort|of ten|breathless|rise|up|summit|finish|home)\b/i
const RISING = /\b(?:up|rise|stand|standing|out of the saddle)\b/i

/** What of the body a form point names. */
const BODY =
  /\b(?:hands?|elbows?|arms?|shoulders?|chest|spine|back|core|hips?|knees?|heels?|toes|chin|head|neck|land(?:ing)?|breathe|tall|soft)\b/i

/** What English words tell beside their numbers, in a leader's common words. */
export const told: Told = {
  /** Clause by clause. Precision first: water in a comparison and a drink that is promised for later are none. */
  drink: (text) =>
    text.split(/[.!?,;:…–—]+/).some((clause) => {
      if (LIKENED.test(clause) || NOT_NOW.test(clause.replace(REMINDER, ''))) return false
      return WATER.test(clause) || DRINKING.some((pattern) => pattern.test(clause))
    }),
  /** Sentence by sentence: "sit, keep it on" is a call and no offer. */
  seat(text) {
    const seated = text.split(/[.!?;…]+/).flatMap((sentence) => {
      const words = sentence.replace(PLACE, ' ')
      return SEAT.test(words) ? [words] : []
    })
    if (seated.some((words) => CHOICE.test(words))) return 'always'
    return seated.some((words) => STAY.test(words)) ? 'whereRidersStand' : 'never'
  },
  seated: (text) => SEATED.test(text),
  feel(text) {
    const rest = text.replace(OF_THE_BODY, ' ')
    return RESISTANCE.test(rest) || BREATH.test(rest)
  },
  form: (text) => BODY.test(text),
  effort: (text) => EFFORT.test(text),
  music: (text) => MUSIC.test(text),
  rising: (text) => text.search(RISING),
}
