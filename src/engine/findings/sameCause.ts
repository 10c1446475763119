import type { Finding } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'
import type { RuleName } from './ruleNames.ts'

/** Findings that say again, of the same cue or block, what a weightier one says: by rule, the rules that say it. */
const SAID_BY: Readonly<Partial<Record<RuleName, readonly RuleName[]>>> = {
  // Too late to act on is also too late by the studio's rule; words with no room end wherever they can.
  cuePlace: ['cueLate', 'cueRoom', 'cueCollisions', 'quietKept'],
  breathlessWords: ['cueRoom', 'cueCollisions'],
  // An easy block on a total that is not easy: the demand says how much too heavy it is.
  easyTotal: ['intentAgainstDemand'],
}

/** Rules that say of single words what "too much talk" says of the half minute they are in. */
const WORDS_WITHOUT_ROOM: ReadonlySet<RuleName> = new Set(['cueRoom', 'cueCollisions'])

/**
 * Findings without those that have the same cause as a weightier one.
 *
 * @param talkWindow the stretch that "too much talk" is about
 */
export function oneForEachCause(found: readonly Finding[], talkWindow: Seconds): Finding[] {
  const ids = new Set(found.map(({ id }) => id))
  const crowded = found.filter(({ rule }) => WORDS_WITHOUT_ROOM.has(rule))
  return found.filter(({ id, rule, at }) => {
    if (rule === 'tooMuchTalk') return !crowded.some((words) => words.at >= at && words.at <= at + talkWindow)
    const place = id.slice(rule.length)
    return !SAID_BY[rule]?.some((other) => ids.has(`${other}${place}`))
  })
}
