import type { PlayedBlock } from '#engine/played.ts'
import type { Cue } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { CueLine } from './placeCues.ts'

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

/**
 * Whether a text tells riders to drink now, clause by clause. Precision first: water in a comparison and a drink that is
 * promised for later are none.
 */
const tellsToDrink = (text: string): boolean =>
  text.split(/[.!?,;:…–—]+/).some((clause) => {
    if (LIKENED.test(clause) || NOT_NOW.test(clause.replace(REMINDER, ''))) return false
    return WATER.test(clause) || DRINKING.some((pattern) => pattern.test(clause))
  })

const known = new WeakMap<Cue, boolean>()

/** As `tellsToDrink`; read once for each cue object. */
function isDrink(cue: Cue): boolean {
  let told = known.get(cue)
  if (told === undefined) {
    told = tellsToDrink(cue.text)
    known.set(cue, told)
  }
  return told
}

/** When riders are told to drink. A story only tells of it, and a preview of what is to come. */
const drinksTold = (lines: readonly CueLine[]): Seconds[] =>
  lines.filter(({ cue, moment }) => moment !== 'story' && moment !== 'preview' && isDrink(cue)).map(({ from }) => from)

/** When riders drink, in order: in blocks that are marked for it, and where a cue says so. */
export const drinkMoments = (blocks: readonly PlayedBlock[], lines: readonly CueLine[]): Seconds[] =>
  [...blocks.flatMap(({ block, from, to }) => (block.water && to > from ? [from] : [])), ...drinksTold(lines)].sort((a, b) => a - b)

/** What is said of a drink belongs to the one begun less than a minute before. */
const ONE_DRINK: Seconds = 60

/** As `drinkMoments`, each drink once. */
export const drinkStops = (blocks: readonly PlayedBlock[], lines: readonly CueLine[]): Seconds[] =>
  drinkMoments(blocks, lines).filter((at, index, all) => index === 0 || at - all[index - 1]! >= ONE_DRINK)
