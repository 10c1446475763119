import { capital } from '#engine/roughIn/words/capital.ts'
import type { Kind } from '#engine/roughIn/words/passage.ts'
import type { Gist, Voice } from '#engine/roughIn/words/voice.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import { plural } from './names.ts'
import { sayEffort, sayLength, sayTimes } from './numbers.ts'

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

function workSong(gist: Gist, isFinish: boolean, ahead: boolean): string[] {
  const { kind, count, others, effort } = gist
  const long = lengths(gist)
  const hard = `${sayEffort(effort)} out of ten`
  const song = ahead ? 'Next song' : 'This song'
  const what = phraseOf(gist)
  const last = isFinish
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

const shortWork = (gist: Gist, ahead: boolean): string[] => {
  const name = gist.kind === 'jumps' || gist.kind === 'move' ? moveName(gist) : phraseOf({ ...gist, others: 0 })
  return ahead ? [`${capital(name)} next.`, `Get ready: ${name}.`] : [`${capital(name)} in this one.`]
}

const QUIET: Readonly<Record<Parameters<Voice['previews']['quiet']>[0], Readonly<Record<'ahead' | 'now', readonly string[]>>>> = {
  coolDown: {
    ahead: [
      'That was the last of the work. Next we roll it out.',
      'The work is done. One easy song to bring it home.',
      'The work is behind you. Next song is just for the legs.',
    ],
    now: [
      'This one brings it home. Let the legs roll.',
      'The work is done. Roll it out with me.',
      'Last song. Let it all come down.',
      'The work is behind you. Easy from here.',
    ],
  },
  recovery: {
    ahead: ['Next song is yours. Easy legs, slow breath.', 'A whole easy song next. You earned it.', 'Next song we let it all come down.'],
    now: ['This song is yours. Breathe and reset.', 'Nothing to chase in this one. Easy legs.', 'Use this one to get your breath back.'],
  },
  warmUp: {
    ahead: ['One more song to warm up, a little more each time.', 'Next song we build a little.', 'Still warming up. Next one adds a bit.'],
    now: [
      'We warm up through this one, a little more each time.',
      'This one gets the legs ready.',
      'A little more on every step of this song.',
    ],
  },
  climb: {
    ahead: ['A seated climb next. One steady hill.', 'Next song we climb in the saddle.', 'Hill next. We stay in the saddle.'],
    now: ['This song is one steady hill, in the saddle.', 'We stay seated on this climb.', 'One hill, top to bottom of the song.'],
  },
  steady: {
    ahead: ['Next song is steady. One pace, one road.', 'A steady road next.', 'Steady riding next, all in the saddle.'],
    now: ['This one is steady. Find a pace and own it.', 'One road, one pace, in this song.', 'Steady song. Settle in and ride.'],
  },
}

export const previews: Voice['previews'] = {
  work: workSong,
  short: shortWork,
  quiet: (kind, ahead) => QUIET[kind][ahead ? 'ahead' : 'now'],
  ofRounds: (text) => text.replace(/^Next song(?::| is| has)/, 'Coming up:'),
}
