import type { Wording } from './announcing.ts'
import type { Deck } from './deck.ts'
import { type Kind, moveKey, type Passage } from './passage.ts'
import { suits } from './suits.ts'
import type { Gist, Voice } from './voice.ts'

/**
 * What a song brings, in one or two sentences: what, how many, how long, how hard. `ahead` is said before the song, the
 * others in its first seconds.
 */
export function previewing(passages: readonly Passage[], ahead: boolean, deck: Deck, voice: Voice): Wording[] {
  const [opening] = passages
  if (opening === undefined) return []
  const gist = gistOf(passages)
  const loads = passages.map(({ load }) => load)
  const texts =
    gist === null
      ? voice.previews.quiet(quietKind(passages, opening.role), ahead)
      : [...voice.previews.work(gist, opening.role === 'finish', ahead), ...voice.previews.short(gist, ahead)]
  const fresh = deck.order(texts.filter((text) => suits(text, opening, voice, loads) && deck.uses(text) === 0))
  // The fuller sentence first, as far as there is room for it.
  return fresh.sort((a, b) => Number(isShort(a)) - Number(isShort(b))).map((text) => ({ text, phrases: [] }))
}

const isShort = (text: string): boolean => text.split(' ').length < 7

function gistOf(passages: readonly Passage[]): Gist | null {
  const efforts = passages.filter(({ isEffort }) => isEffort)
  if (efforts.length === 0) return null
  const hardest = efforts.reduce((best, one) =>
    one.load.to > best.load.to || (one.load.to === best.load.to && TOLD.indexOf(one.kind) < TOLD.indexOf(best.kind)) ? one : best,
  )
  const isAlike = ({ kind, block }: Passage) => kind === hardest.kind && block.move?.name === hardest.block.move?.name
  const countOf = (list: readonly Passage[]) => list.reduce((sum, { times }) => sum + times.length, 0)
  const alike = efforts.filter(isAlike)
  return {
    kind: hardest.kind,
    move: moveKey(hardest.block),
    moveCounts: hardest.block.move?.counts,
    count: countOf(alike),
    others: countOf(efforts.filter((one) => !isAlike(one))),
    least: Math.min(...efforts.map(({ seconds }) => seconds)),
    most: Math.max(...efforts.map(({ seconds }) => seconds)),
    effort: hardest.load.to,
  }
}

/** Of equally hard kinds the one that says most of a song. */
const TOLD: readonly Kind[] = ['move', 'jumps', 'push', 'surge', 'tallClimb', 'run', 'climb', 'tempo', 'hold', 'flat', 'tallFlat']

/** What a song without efforts is told as. */
function quietKind(passages: readonly Passage[], role: Passage['role']): Parameters<Voice['previews']['quiet']>[0] {
  const kinds = new Set(passages.map(({ kind }) => kind))
  if (role === 'coolDown' || kinds.has('flush')) return 'coolDown'
  if (role === 'recovery' || kinds.has('recover')) return 'recovery'
  if (role === 'warmUp') return 'warmUp'
  return kinds.has('climb') ? 'climb' : 'steady'
}
