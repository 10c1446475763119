import { numberWords } from '#engine/speech/english/numberWords.ts'
import type { Wording } from './announcing.ts'
import type { Deck } from './deck.ts'
import { capital, sayEffort, sayLength, sayTimes } from './numbersSaid.ts'
import { type Kind, moveKey, type Passage } from './passage.ts'
import { suits } from './suits.ts'

/** The efforts of a song that riders are told of. */
interface Gist {
  /** What the hardest of them is, and how often its kind comes, rounds counted. */
  kind: Kind
  move: string
  moveCounts: number | undefined
  count: number
  /** Efforts of other kinds. */
  others: number
  least: number
  most: number
  effort: number
}

/**
 * What a song brings, in one or two sentences: what, how many, how long, how hard. `ahead` is said before the song, the
 * others in its first seconds.
 */
export function previewing(passages: readonly Passage[], ahead: boolean, deck: Deck): Wording[] {
  const [opening] = passages
  if (opening === undefined) return []
  const gist = gistOf(passages)
  const loads = passages.map(({ load }) => load)
  const texts =
    gist === null ? quietSong(passages, opening.role, ahead) : [...workSong(gist, opening.role, ahead), ...shortWork(gist, ahead)]
  const fresh = deck.order(texts.filter((text) => suits(text, opening, loads) && deck.uses(text) === 0))
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

/** "thirty seconds each", "the longest forty seconds", "forty seconds". */
function lengths({ count, others, least, most }: Gist): string {
  const high = sayLength(most)
  if (count + others === 1) return high
  return sayLength(least) === high ? `${high} each` : `the longest ${high}`
}

const NAMES: Partial<Record<Kind, readonly [one: string, many: string]>> = {
  tallClimb: ['standing climb', 'standing climbs'],
  run: ['standing run', 'standing runs'],
  climb: ['climb in the saddle', 'climbs in the saddle'],
  tempo: ['tempo stretch', 'tempo stretches'],
  flat: ['fast stretch', 'fast stretches'],
  tallFlat: ['standing flat', 'standing flats'],
  surge: ['surge', 'surges'],
  push: ['push', 'pushes'],
  hold: ['hold', 'holds'],
}

function workSong(gist: Gist, role: Passage['role'], ahead: boolean): string[] {
  const { kind, count, others, effort } = gist
  const long = lengths(gist)
  const hard = `${sayEffort(effort)} out of ten`
  const song = ahead ? 'Next song' : 'This song'
  const what = phraseOf(gist)
  const last =
    role === 'finish'
      ? [`Last big song: ${what}, ${long}, ${hard}.`, `This is the one we saved the legs for. ${capital(what)}, ${long}.`]
      : []
  if (kind === 'jumps' || kind === 'move') {
    const name = moveName(gist)
    return [
      ...last,
      `${ahead ? 'Next' : 'Now'} we add ${name}. Slow and controlled, ${long}.`,
      `${song} has ${name} in it. We start slow.`,
      `${song}: ${what}. ${capital(long)}, ${hard} at most.`,
    ]
  }
  const many = others === 0 && count > 1
  const stands = kind === 'tallClimb' || kind === 'run'
  const we = kind === 'tallClimb' ? 'we climb' : 'we run'
  return [
    ...last,
    `${song}: ${what}, ${long}, ${hard}.`,
    `${capital(what)} ${ahead ? 'next' : 'in this one'}, ${long}, ${hard}.`,
    `${ahead ? 'Coming up' : 'Here is the plan'}: ${what}, ${long}.`,
    ...(many ? [`${song} has ${what}. ${capital(long)}, ${hard}.`] : []),
    ...(stands && many
      ? [`${song} ${we}. Out of the saddle ${sayTimes(count)}, ${long}, ${hard}.`, `${song} ${we}. We stand ${sayTimes(count)}, ${long}.`]
      : []),
  ]
}

/** "three standing climbs", "two holds and two more efforts". */
function phraseOf(gist: Gist): string {
  const { kind, count, others, move } = gist
  const [one, many] =
    NAMES[kind] ?? (kind === 'jumps' ? ['round of jumps', 'rounds of jumps'] : [`round of ${plural(move)}`, `rounds of ${plural(move)}`])
  const own = count === 1 ? `one ${one}` : `${numberWords(count)} ${many}`
  if (others === 0) return own
  return `${own} and ${numberWords(others)} more ${others === 1 ? 'effort' : 'efforts'}`
}

const moveName = ({ kind, move, moveCounts }: Gist): string => {
  if (kind !== 'jumps') return plural(move)
  if (moveCounts === undefined) return 'jumps'
  return `jumps on ${moveCounts === 8 ? 'eights' : moveCounts === 4 ? 'fours' : moveCounts === 16 ? 'sixteens' : `${numberWords(moveCounts)}s`}`
}

const plural = (name: string): string => (/(?:s|sh|ch|x)$/.test(name) ? `${name}es` : `${name}s`)

const shortWork = (gist: Gist, ahead: boolean): string[] => {
  const name = gist.kind === 'jumps' || gist.kind === 'move' ? moveName(gist) : phraseOf({ ...gist, others: 0 })
  return ahead ? [`${capital(name)} next.`, `Get ready: ${name}.`] : [`${capital(name)} in this one.`]
}

function quietSong(passages: readonly Passage[], role: Passage['role'], ahead: boolean): string[] {
  const kinds = new Set(passages.map(({ kind }) => kind))
  if (role === 'coolDown' || kinds.has('flush')) {
    return ahead
      ? [
          'That was the last of the work. Next we roll it out.',
          'The work is done. One easy song to bring it home.',
          'The work is behind you. Next song is just for the legs.',
        ]
      : [
          'This one brings it home. Let the legs roll.',
          'The work is done. Roll it out with me.',
          'Last song. Let it all come down.',
          'The work is behind you. Easy from here.',
        ]
  }
  if (role === 'recovery' || kinds.has('recover')) {
    return ahead
      ? ['Next song is yours. Easy legs, slow breath.', 'A whole easy song next. You earned it.', 'Next song we let it all come down.']
      : ['This song is yours. Breathe and reset.', 'Nothing to chase in this one. Easy legs.', 'Use this one to get your breath back.']
  }
  if (role === 'warmUp') {
    return ahead
      ? ['One more song to warm up, a little more each time.', 'Next song we build a little.', 'Still warming up. Next one adds a bit.']
      : [
          'We warm up through this one, a little more each time.',
          'This one gets the legs ready.',
          'A little more on every step of this song.',
        ]
  }
  const [opening] = passages
  if (opening?.kind === 'climb' || kinds.has('climb')) {
    return ahead
      ? ['A seated climb next. One steady hill.', 'Next song we climb in the saddle.', 'Hill next. We stay in the saddle.']
      : ['This song is one steady hill, in the saddle.', 'We stay seated on this climb.', 'One hill, top to bottom of the song.']
  }
  return ahead
    ? ['Next song is steady. One pace, one road.', 'A steady road next.', 'Steady riding next, all in the saddle.']
    : ['This one is steady. Find a pace and own it.', 'One road, one pace, in this song.', 'Steady song. Settle in and ride.']
}
