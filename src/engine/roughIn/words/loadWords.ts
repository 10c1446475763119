import type { Effort } from '#units/units.ts'
import type { Load } from './load.ts'

/** Words of one weight, and the efforts they may be said of. */
interface LoadWords {
  name: string
  words: RegExp
  least: Effort
  most: Effort
  /** Only with something on the knob, and where the model agrees to within a step. */
  weighted?: true
  knob?: Load['knob']
}

/**
 * Which words go with which effort, 0–10. The order and the bands are the trade's (talk test and feel; common practice);
 * what is said of hands, shoulders, or feet is no load and is left out first.
 */
const LOAD_WORDS: readonly LoadWords[] = [
  { name: 'next to nothing', words: /\b(?:next to|almost|just above|barely) (?:nothing|any)\b|\bno work\b/i, least: 0, most: 3 },
  { name: 'light', words: /\b(?:light|lightly|easy|easily|gentle|gently|loose|effortless)\b/i, least: 0, most: 4.5 },
  { name: 'chatty', words: /\b(?:chat|chatty|conversation|full sentences|whole sentences|sing along)\b/i, least: 0, most: 4.5 },
  {
    name: 'recovering',
    words: /\b(?:recover|recovers|recovery|rest|catch your breath|get your breath back|breath comes? back)\b/i,
    least: 0,
    most: 5,
  },
  { name: 'comfortable', words: /\b(?:comfortabl[ey]|cruis(?:e|ing))\b/i, least: 0, most: 5.5 },
  { name: 'firm', words: /\b(?:firm|solid|some grip|pushes back|push back|short sentences|honest work)\b/i, least: 4.5, most: 7.5 },
  { name: 'heavy', words: /\b(?:heavy|thick|steep|grind|grinding|big gear|weight of it)\b/i, least: 6, most: 10, weighted: true },
  {
    name: 'strong',
    words: /\b(?:strong|powerful|hard work|digging|dig in|few words|real climb|real hill|real work|breath loud)\b/i,
    least: 6,
    most: 10,
  },
  { name: 'hard', words: /\b(?:hard|burn|burning|burns|breathing hard|big effort)\b/i, least: 7, most: 10 },
  {
    name: 'hardest',
    words:
      /\b(?:one word|word at a time|breathless|out of breath|everything|all you have|all you've got|nothing left|hang on|hanging on)\b/i,
    least: 8,
    most: 10,
  },
  { name: 'heavier', words: /\b(?:heavier|steeper|tips up)\b/i, least: 0, most: 10, knob: 'up' },
  { name: 'lighter', words: /\b(?:lighter|levels? (?:off|out)|flattens? out|over the top)\b/i, least: 0, most: 10, knob: 'down' },
]

/** "light hands", "loose shoulders", "landing soft", "light on the bars", "strong legs" is how a body is held. */
const OF_THE_BODY =
  /\b(?:light|easy|soft|loose|gentle|heavy|strong|firm)\s+(?:(?:and|,)\s+\p{L}+\s+)?(?:(?:in|on) the\s+)?(?:\p{L}+\s+)?(?:hands?|grip|bars?|elbows?|shoulders?|arms?|face|jaw|neck|feet|foot|knees?|core|upper body)\b|\b(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|neck|feet|foot|knees?|core|upper body)\s+(?:(?:are|stay|is|stays)\s+)?(?:light|easy|soft|loose|gentle|strong|firm)\b|\b(?:up|land|landing|touch)\s+(?:light|lightly|easy|gently)\b/giu

/** How far the model may be from a word's band. */
const MODEL_SLACK = 0.5

/**
 * Whether a text's words about load fit what is ridden: each of them at least one of the loads it may be about.
 *
 * @param loads of the block that is called; of a song that is previewed all its blocks
 */
export function fitsLoad(text: string, loads: readonly Load[]): boolean {
  const told = text.replace(OF_THE_BODY, ' ')
  return LOAD_WORDS.every((one) => !one.words.test(told) || loads.some((load) => isWithin(one, load)))
}

function isWithin({ least, most, weighted, knob }: LoadWords, load: Load): boolean {
  if (knob !== undefined && load.knob !== knob) return false
  if (load.to < least || load.to > most) return false
  return !weighted || (load.weighted && (load.demand === null || load.demand >= least - MODEL_SLACK))
}
