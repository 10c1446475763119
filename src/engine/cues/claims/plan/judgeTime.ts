import type { MeaningOf, Target, Whole } from '#engine/cues/claims/claim.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Seconds } from '#units/units.ts'
import { ALIKE, type PlanView } from './planView.ts'
import type { Spoken } from './spoken.ts'
import { AHEAD, isOf, type StretchLength, stretchesFrom, stretchOfSection, subjectsOf } from './stretches.ts'
import { anyFits, HOLDS, type Verdict } from './verdict.ts'

/** A spoken time may be off by a tenth, or by three seconds: people round. One that is called a guess by a fifth, or eight. */
const near = (said: Seconds, real: Seconds, guess: boolean): boolean =>
  Math.abs(said - real) <= (guess ? Math.max(8, real / 5) : Math.max(3, real / 10)) + 1e-9

/** Time to go and time gone are told to five seconds, and near their end to the second. */
const asToGo = (real: Seconds): Seconds => (real >= 7.5 ? 5 * Math.round(real / 5) : Math.max(0, Math.round(real)))

/** Counts to go are called as the eight or the phrase begins, half an eight to an eight off at most. */
const nearCounts = (said: number, real: number): boolean => Math.abs(said - real) <= (said >= 32 ? 8 : said >= 8 ? 4 : 2) + 1e-9

/** What of a stretch comes nearest to what is said: a number holds while its sentence is spoken. */
const within = (said: number, least: number, most: number): number => Math.min(most, Math.max(least, said))

/** Less than this is not said of a whole class. */
const CLASS_SECONDS = 60

/** "twenty seconds", "for thirty-two counts", "under a minute". */
export function judgeLength(meaning: MeaningOf<'length'>, spoken: Spoken): Verdict {
  const { cadence, from, to } = spoken.played
  // Many things are held in one block of stretches, each as long as it takes.
  if (cadence.kind === 'still' && meaning.unit === 'seconds' && meaning.high < to - from) return null
  const stretches = lengthsMeant(meaning, spoken).filter(({ counts }) => meaning.unit === 'seconds' || counts !== null)
  return anyFits(
    stretches,
    (stretch) => lasts(meaning, meaning.unit === 'seconds' ? stretch.seconds : stretch.counts!),
    ({ seconds, counts }) => {
      const real = meaning.unit === 'seconds' ? seconds : counts!
      return { low: real, high: real }
    },
  )
}

function lasts({ unit, low, high, bound }: MeaningOf<'length'>, real: number): boolean {
  const slack = unit === 'seconds' ? 3 : 0
  if (bound === 'under') return real <= high + slack
  if (bound === 'over') return real >= low - slack
  if (unit === 'counts') return bound === 'near' ? Math.abs(real - low) <= real / 10 : real === low
  if (low < high) return real >= low - slack && real <= high + slack
  return near(low, real, bound === 'near')
}

function lengthsMeant({ on, song, class: whole, unit, high }: MeaningOf<'length'>, spoken: Spoken): StretchLength[] {
  const { view, played } = spoken
  if (song) return [stretchOfSection(view, played.section)]
  if (whole) return classStretches(view)
  const own = subjectsOf(spoken, on).flatMap((block) => stretchesFrom(view, block, on))
  const opens = view.blocksOf(played.section)[0] === played ? [stretchOfSection(view, played.section)] : []
  return [...own, ...opens, ...(played.index === 0 && unit === 'seconds' && high >= 5 * CLASS_SECONDS ? classStretches(view) : [])]
}

function classStretches({ ride, blocks }: PlanView): StretchLength[] {
  const end = blocks.at(-1)?.to ?? 0
  return [
    { seconds: end - (blocks[0]?.from ?? 0), counts: null },
    { seconds: ride.slotMinutes * 60, counts: null },
  ]
}

/** "forty seconds to go", "last eight": of what riders are in, or of what they are about to be in. */
export function judgeLeft(meaning: MeaningOf<'left'>, spoken: Spoken): Verdict {
  const { view, at, over, ridden, coming, inside } = spoken
  // "Two more" is about counts, and "thirty seconds" about what is left, only in the middle of a block.
  if (meaning.midway && !inside) return null
  const ends = endsOf(view, ridden, meaning.of, meaning.unit === 'seconds' && meaning.value >= CLASS_SECONDS)
  const about = coming && (meaning.of === undefined || meaning.of === 'block') ? stretchesFrom(view, coming) : []
  if (meaning.unit === 'seconds') {
    const left = ends.map((end) => ({ most: end - at, least: end - over }))
    const whole = about.map(({ seconds }) => ({ most: seconds, least: seconds }))
    // What has all but ended is not what is left of; the block that comes is told then.
    return anyFits(
      likeliest(inside ? [...left, ...whole] : [...whole, ...left], meaning.value, ({ most }) => most),
      ({ most, least }) => near(meaning.value, within(meaning.value, least, most), meaning.near === true),
      ({ most }) => ({ low: asToGo(most), high: asToGo(most) }),
    )
  }
  const clock = view.clockOf(ridden.section)
  if (!clock.counted) return null
  const [here, there] = [clock.beatAt(at), clock.beatAt(over)]
  const left = ends
    .filter((end) => end <= view.sections[ridden.section]!.to + 1e-6)
    .map((end) => ({ most: clock.beatAt(end) - here, least: clock.beatAt(end) - there }))
  const exact = about.flatMap(({ counts }) => (counts === null ? [] : [counts]))
  // What is about to begin lasts as long as it is planned, to the count.
  if (exact.includes(meaning.value)) return HOLDS
  return anyFits(
    left,
    ({ most, least }) => nearCounts(meaning.value, within(meaning.value, least, most)),
    ({ most }) => ({ low: inEights(most), high: inEights(most) }),
  )
}

/** Counts to go as they are called: in eights, and near the end in fours. */
const inEights = (counts: number): number => (counts >= 12 ? 8 * Math.round(counts / 8) : Math.max(4, 4 * Math.round(counts / 4)))

/** Minutes are told of the class where they are far more than the block has: those that come nearest stand first then. */
function likeliest<Candidate>(
  candidates: readonly Candidate[],
  said: Seconds,
  of: (candidate: Candidate) => Seconds,
): readonly Candidate[] {
  const [first] = candidates
  if (first === undefined || said < 2 * CLASS_SECONDS || of(first) * 3 > said) return candidates
  const off = (candidate: Candidate): number => Math.abs(Math.log(Math.max(1, of(candidate)) / said))
  return candidates.toSorted((a, b) => off(a) - off(b))
}

/** When what a block stands in ends: itself, its work, its hill, its round, set and song, and the class. */
function endsOf(view: PlanView, played: PlayedBlock, of: Whole | undefined, long: boolean): Seconds[] {
  const { blocks, ride, sections } = view
  const runs = (alike: readonly (typeof ALIKE)[number][]) =>
    alike.flatMap((one) => {
      const run = view.runOf(played.index, one)
      return run ? [blocks[run.last]!.to] : []
    })
  const ofClass = [blocks.at(-1)!.to, ride.slotMinutes * 60]
  switch (of) {
    case 'class':
      return ofClass
    case 'song':
      return [sections[played.section]!.to]
    case 'set':
      return [...runs(['set', 'round']), sections[played.section]!.to]
    case 'block':
      return [played.to, ...runs(ALIKE)]
    default:
      return [played.to, ...runs(ALIKE), sections[played.section]!.to, ...(long ? ofClass : [])]
  }
}

/** "a minute down", "twelve minutes in". */
export function judgeGone({ value, of, near: guess }: MeaningOf<'gone'>, { view, at, ridden }: Spoken): Verdict {
  const gone = startsOf(view, ridden, of, value >= CLASS_SECONDS).map((start) => at - start)
  return anyFits(
    likeliest(gone, value, (real) => real),
    (real) => near(value, real, guess === true),
    (real) => ({ low: asToGo(real) }),
  )
}

function startsOf(view: PlanView, played: PlayedBlock, of: Whole | undefined, long: boolean): Seconds[] {
  const { blocks, sections } = view
  const runs = ALIKE.flatMap((one) => {
    const run = view.runOf(played.index, one)
    return run ? [blocks[run.first]!.from] : []
  })
  const ofClass = [blocks[0]!.from, 0]
  if (of === 'class') return ofClass
  if (of === 'song') return [sections[played.section]!.one]
  if (of === 'block') return [played.from, ...runs]
  return [played.from, ...runs, sections[played.section]!.one, ...(long ? ofClass : [])]
}

/** How many changes ahead "in two minutes it gets hard" may look. */
const CHANGES_AHEAD = 3

/** "in twenty seconds we push": until the next of what is named, else until one of the next changes, or the end of song or class. */
export function judgeUntil({ unit, value, ...target }: MeaningOf<'until'>, { view, at, over, ridden, inside, played }: Spoken): Verdict {
  const following = view.blocks.slice(ridden.index + 1, ridden.index + 1 + AHEAD)
  const named = nextOf(target, following, ridden, view)
  if (unit === 'counts') {
    const clock = view.clockOf(ridden.section)
    if (!clock.counted) return null
    const own = following.filter(({ section }) => section === ridden.section).slice(0, inside ? 2 : 1)
    const changes = named
      ? [named.from]
      : [...own.map(({ from }) => from), ...(inside || own.length === 0 ? [view.sections[ridden.section]!.to] : [])]
    return anyFits(
      changes.map((change) => ({ most: clock.beatAt(change) - clock.beatAt(at), least: clock.beatAt(change) - clock.beatAt(over) })),
      ({ most, least }) => nearCounts(value, within(value, least, most)),
      ({ most }) => ({ low: inEights(most), high: inEights(most) }),
    )
  }
  const next = named ? [named.from] : following.slice(0, CHANGES_AHEAD).map(({ from }) => from)
  const ends = named ? [] : [view.sections[ridden.section]!.to, view.blocks.at(-1)!.to]
  return anyFits(
    [...next, ...ends],
    (change) => near(value, within(value, change - over, change - at), false),
    // Announced with a block, it is told as that is long.
    (change) => ({ low: asToGo(!inside && change > played.from + 1 ? change - played.from : change - at) }),
  )
}

/** The next block that is what the words wait for; none where they name nothing, or nothing that comes. */
function nextOf(
  { kind, quality, posture }: Target,
  following: readonly PlayedBlock[],
  ridden: PlayedBlock,
  view: PlanView,
): PlayedBlock | undefined {
  if (kind !== undefined) return following.find((one) => isOf(one, kind, view.speech))
  if (quality !== undefined) return following.find((one) => view.works(one) === (quality === 'hard'))
  if (posture === undefined || ridden.block.posture === posture) return undefined
  return following.find(({ block }) => block.posture === posture)
}

/** A share is told to a tenth of a block, a seventeenth of a stretch of like ones, a twentieth of a song, a fiftieth of a class. */
const SHARES = { block: 0.1, run: 0.06, song: 0.05, class: 0.03 } as const

/** "halfway", "two thirds done": of what is ridden, or of a row of efforts. */
export function judgeShare({ value, of }: MeaningOf<'share'>, spoken: Spoken, row: { done: number; of: number } | null): Verdict {
  const { view, at, ridden } = spoken
  const { blocks, ride, sections } = view
  const wholes: { from: Seconds; to: Seconds; within: number }[] = []
  const add = (from: Seconds, to: Seconds, within: number) => to > from && wholes.push({ from, to, within })
  if (of === undefined || of === 'block' || of === 'set') {
    if (of !== 'set') add(ridden.from, ridden.to, SHARES.block)
    for (const alike of ALIKE) {
      // How far along they are is told of an effort, not of how long riders have been out of the saddle.
      if (alike === 'posture' || (alike === 'work' && of === 'block')) continue
      const run = view.runOf(ridden.index, alike)
      if (run) add(blocks[run.first]!.from, blocks[run.last]!.to, SHARES.run)
    }
  }
  // In the middle of a block a third is a third of it; half may be of the song.
  if (of === 'song' || of === 'set' || (of === undefined && (!spoken.inside || value === 0.5)))
    add(sections[ridden.section]!.one, sections[ridden.section]!.to, SHARES.song)
  // A third of the class is not told without naming the class; halfway is.
  if (of === 'class' || (of === undefined && value === 0.5)) {
    add(blocks[0]!.from, blocks.at(-1)!.to, SHARES.class)
    add(0, ride.slotMinutes * 60, SHARES.class)
  }
  // Of three pushes two are done when "halfway" is said between them: half an effort off at most.
  const slack = value === 0.5 && row ? 0.5 / row.of : 0.05
  if (row && row.of > 1 && (of === 'set' || (of === undefined && !spoken.inside)) && Math.abs(value - row.done / row.of) <= slack + 1e-9)
    return HOLDS
  return anyFits(
    wholes,
    ({ from, to, within }) => Math.abs((at - from) / (to - from) - value) <= within,
    ({ from, to }) => ({ low: (at - from) / (to - from) }),
  )
}

/** Seconds a time on the wall may be off. */
const CLOCK_SLACK = 75

/** "it's 6:34", "we finish at five to seven". */
export function judgeClock({ minute, of24, at: when }: MeaningOf<'clock'>, { view, at }: Spoken): Verdict {
  const { ride, blocks } = view
  if (ride.startsAt === undefined) return null
  const [hours = 0, minutes = 0] = ride.startsAt.split(':').map(Number)
  const start = hours * 60 + minutes
  const real = when === 'now' ? [at] : [blocks.at(-1)!.to, ride.slotMinutes * 60]
  const round = of24 ? DAY : DAY / 2
  return anyFits(
    real.map((seconds) => start + seconds / 60),
    (now) => {
      const off = (((now - minute) % round) + round) % round
      return Math.min(off, round - off) * 60 <= CLOCK_SLACK
    },
    (now) => ({ low: Math.round(now) % DAY }),
  )
}

const DAY = 24 * 60
