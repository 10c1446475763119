import type { Load } from './load.ts'
import { fitsLoad } from './loadWords.ts'
import type { Passage } from './passage.ts'

type Where = Pick<Passage, 'load' | 'onBeat' | 'role' | 'before' | 'kind' | 'isLast' | 'block'>

/** Words that are true only somewhere, and where that is. */
const ONLY: readonly (readonly [words: RegExp, isThere: (where: Where) => boolean])[] = [
  // Feet that keep their own pace have no beat, and nobody counts with them.
  [
    /\b(?:beat|downbeat|rhythm|ride the count|\p{L}+ counts|eights? (?:left|more)|last (?:\p{L}+ )?eights?|last sixteen|sixteen more)\b/iu,
    ({ onBeat }) => onBeat,
  ],
  // What builds is neither even nor held at one pace.
  [/\b(?:steady|even|one pace|same pressure|hold it|hold one|hold steady)\b/i, ({ block: { effort } }) => effort.to <= effort.from],
  [/\b(?:wake|warm(?:s|ing)?|gets the legs ready)\b/i, ({ role }) => role === 'warmUp'],
  [
    /\b(?:here comes the hill|starts to rise|the road goes up|here's the hill|rise in the road)\b/i,
    ({ before }) => before?.block.terrain !== 'hill',
  ],
  [/\b(?:all the way home|bring(?:s)? it home|last part of class|last song)\b/i, ({ isLast }) => isLast],
  [/\b(?:saddle each time|on the saddle|in the saddle)\b/i, ({ block }) => block.posture === 'seated' || block.move !== undefined],
]

/** Whether a text is true where it is said: of the load, the music, the place in the class. */
export const suits = (text: string, where: Where, loads: readonly Load[] = [where.load]): boolean =>
  fitsLoad(text, loads) && ONLY.every(([words, isThere]) => !words.test(text) || isThere(where))
