import { numberAt } from './numberAt.ts'
import { endsAt, type Reader, wordAt } from './reader.ts'
import { wordSet } from './words.ts'

/** Words that stand after a number without describing what is counted. */
const NONE = wordSet(
  `and the this that these those for with from then than but not you we they our your his her its all any out off over into onto under after
  before until till per each every last next first second third quarter half turn percent hundred dozen point time gear level come keep give
  take get find make let hold stay push stand sit jump surge climb sprint more another extra degree are were will can would`,
)
/** As many adjectives as anybody puts there. */
const MOST = 2

/**
 * Where words that only describe what is counted end: "thirty ugly seconds", "forty nice slow counts". They are any words
 * but those that build a sentence, numbers and plurals, which would be what is counted.
 */
export function afterAdjectives(reader: Reader, at: number): number {
  let next = at
  while (next < at + MOST && !endsAt(reader, next) && describes(reader, next)) next++
  return next
}

function describes(reader: Reader, at: number): boolean {
  const word = wordAt(reader, at)
  return (
    /^\p{L}{3,}$/u.test(word) && !NONE.has(word) && (!/s$/.test(word) || /(?:ous|ss)$/.test(word)) && numberAt(reader.tokens, at) === null
  )
}
