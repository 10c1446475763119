import { countWords } from '#engine/cues/countWords.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import type { Counts, Seconds, Stretch } from '#units/units.ts'
import { announcing, barest, type Wording } from './announcing.ts'
import type { Moment } from './mouth.ts'
import type { Passage } from './passage.ts'
import type { Speaking, Spoken } from './speaking.ts'

/** A call in as few words as it may be said in, to be said more fully once everything else that is needed has its place. */
interface Called {
  passage: Passage
  moments: readonly Moment[]
  /** By how many counts before the change its words have to be over. */
  least: Counts
  said: Spoken
  wording: Wording
  stretches: readonly Stretch[]
}

/** A block shorter than this has no room for a count-in that can be spared. */
const SHORT_BEFORE: Seconds = 25
/** With less time before the first song its call comes as the song begins. */
const ROOM_FOR_WORDS: Seconds = 8

/** Count-ins, and every call in its barest words. */
export function callBarely(speaking: Speaking): Called[] {
  const { mine, mouth, clocks, rules, keep } = speaking
  for (const passage of mine) {
    const count = countIn(passage, rules.countInCounts)
    if (count === null) continue
    for (const { section, from } of passage.times) {
      const clock = clocks[section]!
      mouth.take({ from: clock.at(clock.countAt(from) - count), to: from })
    }
    keep(passage, { moment: 'countIn', counts: 0, text: '', order: -1, count })
  }
  return mine.flatMap((passage) => {
    const called = passage.opens === 'class' && passage.times[0]!.from < ROOM_FOR_WORDS ? open(passage, speaking) : call(passage, speaking)
    return called ? [called] : []
  })
}

/** Riders are counted into what they rise for, into moves, and into pushes. */
function countIn({ opens, change, kind, block, before, isEffort }: Passage, counts: Counts): 4 | 8 | null {
  if (opens === 'class') return null
  const rises = change?.kinds.includes('posture') && block.posture !== 'seated' && block.posture !== 'offBike'
  const pushes = kind === 'push' || kind === 'surge'
  if (!rises && !change?.kinds.includes('move') && !pushes) return null
  // In a short block the call is all there is time for.
  if (before && before.to - before.from < SHORT_BEFORE && (!isEffort || pushes)) return null
  return counts > 4 ? 8 : 4
}

/** Words that begin with the class. */
function open(passage: Passage, { ride, deck, mouth, keep, voice }: Speaking): null {
  const [wording] = announcing(passage, ride, deck, voice)
  if (!wording) return null
  mouth.take({ from: 0, to: mouth.length(wording.text, passage.times[0]!, 0) })
  keep(passage, { moment: 'action', counts: 0, text: wording.text, order: -1 })
  note(wording, deck)
  return null
}

function call(passage: Passage, speaking: Speaking): Called | null {
  const { ride, report, rules, deck, voice } = speaking
  const moments = passage.times.map((played): Moment => {
    const before = beforeOf(report, played)
    return { played: before ?? played, at: played.from, section: played.section, earliest: before ? before.from + 0.3 : 0 }
  })
  const hasCount = countIn(passage, rules.countInCounts)
  const least = Math.max(hasCount ?? 0, passage.change?.wordsEnd ?? 0)
  const wordings = barest(passage, announcing(passage, ride, deck, voice), voice)
  for (const isLate of [false, true])
    for (const wording of wordings) {
      const placed = place(passage, wording.text, moments, least, isLate, 'needed', speaking)
      if (!placed) continue
      const said = speaking.keep(passage, { moment: 'announce', counts: placed.counts, text: wording.text, order: -placed.counts })
      note(wording, deck)
      return { passage, moments, least, said, wording, stretches: placed.stretches }
    }
  return null
}

/** Calls again, each as fully as there is room for. */
export function callFully(called: readonly Called[], speaking: Speaking): void {
  const { ride, deck, mouth, spoken, isCountedIn, voice } = speaking
  for (const { passage, moments, least, said, wording: bare, stretches } of called) {
    mouth.release(stretches)
    const wordings = announcing(passage, ride, deck, voice).filter(({ text }) => countWords(text) > countWords(bare.text))
    for (const wording of wordings) {
      const placed = place(passage, wording.text, moments, least, false, undefined, speaking)
      if (!placed) continue
      const lead = isCountedIn(passage) ? { counts: placed.counts } : { seconds: placed.counts / 2 }
      const fuller: Spoken = { ...said, cue: { ...said.cue, text: wording.text, lead }, order: -placed.counts, shorter: [bare.text] }
      spoken[spoken.indexOf(said)] = fuller
      note(wording, deck)
      break
    }
    if (spoken.includes(said)) for (const stretch of stretches) mouth.take(stretch)
  }
}

interface Placed {
  counts: Counts
  stretches: readonly Stretch[]
}

/** The nearest place before the change where a call fits. */
function place(
  passage: Passage,
  text: string,
  moments: readonly Moment[],
  least: Counts,
  isLate: boolean,
  need: 'needed' | undefined,
  { rules, mouth, clocks, isCountedIn }: Speaking,
): Placed | null {
  const counted = isCountedIn(passage)
  const { played, at, section } = moments[0]!
  const clock = clocks[section]!
  const spokenCounts = clock.countAt(at) - clock.countAt(at - mouth.length(text, played, at) / BRISKLY)
  const ahead = (counted ? rules.announceCounts : rules.announceSeconds * 2) - spokenCounts
  // A call that has no room for more starts later than the studio likes.
  const from = isLate ? least : Math.max(least, Math.ceil(ahead))
  const most = Math.max(rules.announceCountsMost, least)
  for (let counts = counted ? from : 2 * Math.ceil(from / 2); counts <= most + 1e-9; counts += counted ? 1 : 2) {
    const stretches = mouth.sayBefore(text, moments, counts, need)
    if (stretches) return { counts, stretches }
  }
  return null
}

/** Said briskly, words start by so much later than with all their slack. */
const BRISKLY = 1.3

function beforeOf({ blocks }: Pick<RideReport, 'blocks'>, { index }: PlayedBlock): PlayedBlock | undefined {
  return blocks.slice(0, index).findLast(({ from, to }) => to > from)
}

/** Notes what is said, and what it is made of. */
export function note({ text, phrases }: Wording, deck: Speaking['deck']): void {
  for (const one of new Set([text, ...phrases])) deck.use(one)
}
