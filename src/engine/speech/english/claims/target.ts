import type { Target } from '#engine/cues/claims/claim.ts'
import { endsAt, type Reader, says, wordAt } from './reader.ts'
import { singular } from './singular.ts'
import { NO_KIND, wordSet } from './words.ts'

/** Words that may stand between a time and what it is told of: "… and then we're going to push". */
const LEADING = wordSet(
  "and then we we're we'll you you're you'll it's it i i'm y'all everybody everyone the our your next first last that are is be going go to get gonna gotta are will again until till til before from of our another one more come coming start starts starting begins hit back time up for big",
)
/** As many of them as a sentence has. */
const MOST = 7

const WORK = /^(?:work|working|business)$/
const EASY = /^(?:rest|recover|recovery|recovering|breathe|easy|ease|relax|resting)$/

/** What comes after a time, as the words from a token on say: "… and we're back to work", "… till the next push". */
export function targetAfter(reader: Reader, next: number): Target | null {
  for (let at = next; at < next + MOST && at < reader.tokens.length; at++) {
    if (at > next && endsAt(reader, at - 1)) return null
    if (says(reader, at, 'back at it') || says(reader, at, 'go again')) return { quality: 'hard' }
    const target = targetAt(reader, at)
    if (target !== null) return target
    if (!LEADING.has(wordAt(reader, at))) return null
  }
  return null
}

/** What comes, as the words before "in ten seconds" say: "we push in …", "next surge in …", "back at it in …". */
export function targetBefore(reader: Reader, first: number): Target | null {
  if (first >= 3 && says(reader, first - 3, 'back at it') && !endsAt(reader, first - 1)) return { quality: 'hard' }
  for (let at = first - 1; at >= first - 3 && at >= 0 && !endsAt(reader, at); at--) {
    const target = targetAt(reader, at)
    if (target !== null && (at === 0 || LEADING.has(wordAt(reader, at - 1)) || endsAt(reader, at - 1))) return target
    if (!/^(?:again|back|up|down|hard|next|coming|comes|starts|begins|hits)$/.test(wordAt(reader, at))) return null
  }
  return null
}

/** "push", "surging", "work", "rest", "stand": what may be meant by one word. */
function targetAt(reader: Reader, at: number): Target | null {
  const word = wordAt(reader, at)
  if (WORK.test(word)) return { quality: 'hard' }
  if (EASY.test(word)) return { quality: 'easy' }
  if (/^(?:stand|standing)$/.test(word)) return { posture: 'standing' }
  if (/^(?:sit|sitting|seated)$/.test(word)) return { posture: 'seated' }
  if (LEADING.has(word) || NO_KIND.has(word) || !/^\p{L}{4,}$/u.test(word)) return null
  return { kind: singular(word.length > 5 ? word.replace(/ing$/, '') : word) }
}
