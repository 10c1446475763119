import { feelOfTotal } from '#engine/demand/feelOfTotal.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Block, Posture, Ride } from '#plan/model.ts'
import { isolated } from '#units/isolated.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { effortRange } from '#words/forms.ts'
import type { Language } from '#words/language.ts'
import { tell, words } from '#words/words.ts'
import { minutesWords } from './minutesWords.ts'
import { withoutSongWords } from './songWords.ts'

/** Blocks next to each other that are ridden alike, as one. */
interface RiddenStretch {
  id: string
  seconds: Seconds
  length: string
  effort: { from: Effort; to: Effort }
  level: string
  /** What the effort is called. */
  effortWords: string
  posture: Posture
  road: string
  /** What the knob should feel like: the planner's own words, or what the total feels like. */
  feel: string
  /** Whether those are the planner's own. */
  ownFeel: boolean
  /** The total for the room's own bikes, "2"; of rounds that differ in it each in turn, "2, 2¼, 2½". Absent where no wheel turns. */
  total?: string
  /** Moves, water, and the like. */
  notes: string[]
  /** Options, easier before harder. */
  options: string[]
}

/** Stretches ridden once, or several times in turn. */
export interface StretchGroup {
  times: number
  stretches: RiddenStretch[]
}

/** A section's blocks as stretches, what repeats in turn said once with its times. */
export function stretchesOf(ride: Ride, played: readonly PlayedBlock[]): StretchGroup[] {
  const runs: PlayedBlock[][] = []
  for (const block of played) {
    const run = runs.at(-1)
    if (run && goesOn(run.at(-1)!, block)) run.push(block)
    else runs.push([block])
  }
  return inTurns(runs.map((run) => stretchOf(ride, run)))
}

/** Ridden alike: same body, road and total, no new option, and an effort that does not jump. */
function goesOn(before: PlayedBlock, next: PlayedBlock): boolean {
  const [a, b] = [before.block, next.block]
  return (
    a.posture === b.posture &&
    a.terrain === b.terrain &&
    tell(before.ledger.total) === tell(next.ledger.total) &&
    a.move?.name === b.move?.name &&
    a.easier?.text === b.easier?.text &&
    !b.water &&
    Math.abs(a.effort.to - b.effort.from) < 1
  )
}

function stretchOf(ride: Ride, run: readonly PlayedBlock[]): RiddenStretch {
  const [first, last] = [run[0]!, run.at(-1)!]
  const effort = { from: first.block.effort.from, to: last.block.effort.to }
  const seconds = last.to - first.from
  return {
    id: `${first.index}`,
    seconds,
    length: minutesWords(seconds),
    effort,
    level: effortRange(effort),
    effortWords: words.names.effort({ effort: Math.max(effort.from, effort.to) }),
    posture: first.block.posture,
    road: first.cadence.kind === 'still' ? words.printed.wheelStopped : words.printed.road(first.block),
    ...knobOf(ride, last),
    notes: notesOf(first.block, ride.language),
    options: optionsOf(first.block, ride.language),
  }
}

function knobOf(ride: Ride, { block, ledger, cadence }: PlayedBlock): Pick<RiddenStretch, 'feel' | 'ownFeel' | 'total'> {
  if (cadence.kind === 'still') return { feel: words.printed.wheelStopped, ownFeel: false }
  const own = inSentence(withoutSongWords(block.feel ?? '', ride.language), ride.language)
  if (own !== '') return { feel: isolated(own), ownFeel: true, total: tell(ledger.total) }
  return { feel: tell(feelOfTotal(ledger.after.nominal, ride)), ownFeel: false, total: tell(ledger.total) }
}

function notesOf({ move, water, allOut, walk, notes }: Block, language?: Language): string[] {
  const said = [
    move && isolated(inSentence(withoutSongWords(move.name, language), language)),
    allOut ? words.printed.allOut : '',
    water ? words.printed.water : '',
    walk ? words.printed.walkAmong : '',
    isolated(withoutSongWords(notes ?? '', language)),
  ]
  return said.filter((word): word is string => Boolean(word))
}

/** Staying seated is always an option and said once, at the foot. */
function optionsOf({ easier, harder }: Block, language?: Language): string[] {
  const easy = withoutSongWords(easier?.text ?? '', language)
  const hard = withoutSongWords(harder?.text ?? '', language)
  return [
    ...(easy && !STAY_SEATED.test(easy) ? [words.printed.easierOption({ text: isolated(inSentence(easy, language)) })] : []),
    ...(hard ? [words.printed.harderOption({ text: isolated(inSentence(hard, language)) })] : []),
  ]
}

const STAY_SEATED = /^(?:stay seated|bleibt? sitzen|sitzen bleiben|im sattel bleiben)\.?$/i

/** A text as it stands inside a sentence; in German it may begin with a noun. */
const inSentence = (text: string, language?: Language): string =>
  (language === 'de' ? text : text.charAt(0).toLowerCase() + text.slice(1)).replace(/\.$/, '')

/** Longest pattern looked for; nobody holds more than four things in turn in the head. */
const LONGEST_TURN = 4

/** Patterns that come at least twice in a row, the shortest first, said once with what each round's totals are. */
function inTurns(stretches: readonly RiddenStretch[]): StretchGroup[] {
  const groups: StretchGroup[] = []
  for (let at = 0; at < stretches.length; ) {
    const turn = turnAt(stretches, at)
    const rounds = Array.from({ length: turn.times }, (_, round) =>
      stretches.slice(at + round * turn.length, at + (round + 1) * turn.length),
    )
    groups.push({ times: turn.times, stretches: rounds[0]!.map((_, place) => together(rounds.map((round) => round[place]!))) })
    at += turn.times * turn.length
  }
  // What comes once stands together.
  return groups.reduce<StretchGroup[]>((merged, group) => {
    const before = merged.at(-1)
    if (before?.times === 1 && group.times === 1) before.stretches = [...before.stretches, ...group.stretches]
    else merged.push({ ...group })
    return merged
  }, [])
}

function turnAt(stretches: readonly RiddenStretch[], at: number): { length: number; times: number } {
  for (let length = 1; length <= LONGEST_TURN; length++) {
    let times = 1
    while (repeats(stretches, at, length, times)) times++
    if (times > 1) return { length, times }
  }
  return { length: 1, times: 1 }
}

const repeats = (stretches: readonly RiddenStretch[], at: number, length: number, times: number): boolean =>
  Array.from({ length }, (_, i) => i).every((i) => {
    const [one, other] = [stretches[at + i]!, stretches[at + times * length + i]]
    return other !== undefined && alike(one, other)
  })

/** The same in all that is printed but the total, and what that feels like. */
const alike = (a: RiddenStretch, b: RiddenStretch): boolean =>
  a.length === b.length &&
  a.posture === b.posture &&
  a.road === b.road &&
  a.level === b.level &&
  a.notes.join() === b.notes.join() &&
  a.options.join() === b.options.join() &&
  (a.total === undefined) === (b.total === undefined) &&
  (a.feel === b.feel || !(a.ownFeel || b.ownFeel))

/** The same stretch of every round as one, which says what differs. */
function together(rounds: readonly RiddenStretch[]): RiddenStretch {
  const [first, last] = [rounds[0]!, rounds.at(-1)!]
  const same = rounds.every(({ total }) => total === first.total)
  return {
    ...first,
    seconds: rounds.reduce((sum, { seconds }) => sum + seconds, 0) / rounds.length,
    feel: first.feel === last.feel ? first.feel : words.printed.feelFromTo({ from: first.feel, to: last.feel }),
    total: same ? first.total : rounds.map(({ total }) => total).join(', '),
  }
}
