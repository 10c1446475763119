import { constantsOf } from '#engine/constants.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { startLead } from '#plan/cueStart.ts'
import type { Cue, Ride } from '#plan/model.ts'
import type { Counts, Seconds, Stretch } from '#units/units.ts'
import type { MeaningOf } from './claims/claim.ts'
import { claimsIn } from './claims/claimsOf.ts'
import { sectionClock } from './sectionClock.ts'
import { speechSeconds, wordsPerSecond } from './speechRate.ts'
import { isCalm, LEAST_ROOM } from './storyWindows.ts'
import { crowdedWindows, overlap, spokenStretches } from './talk.ts'
import { type Utterance, utteranceOf } from './utterance.ts'

/** Room for more than calls inside a block. */
export interface StoryRoom extends Stretch {
  /** Words that can be said in it. */
  words: number
  /** What a story here lacks: time that is free, or riders who can listen. */
  lacks?: 'room' | 'calm'
  /** When the build-up has come down far enough for as long as a story takes, if it does in this block. */
  calmFrom?: Seconds
}

type Planned = Pick<RideReport, 'blocks' | 'sections' | 'cues' | 'curves'>

/**
 * Where words about form go: to the middle of the longest stretch of the block in which
 * nothing is spoken, on a count where there is a song. Null where they fit nowhere.
 */
export function placeInside(ride: Ride, report: Planned, index: number, text: string): Cue['lead'] | null {
  const played = report.blocks[index]!
  const longest = freeStretches(report, played).reduce<Stretch | null>(
    (best, free) => (best && best.to - best.from >= free.to - free.from ? best : free),
    null,
  )
  if (longest === null) return null
  const middle = (longest.from + longest.to) / 2
  const rules = constantsOf(ride)
  const length = speechSeconds(utteranceOf(text, speechOf(ride)), rate(ride, report, played, middle), rules)
  return length > longest.to - longest.from ? null : leadTo(ride, report, played, middle + length / 2, Math.round)
}

/**
 * Where words go that come with no moment of their own: to the one they name themselves, as “ten seconds left” does; else to
 * the start of the block, after its change, or to the first place after that where they run into no other words and into no
 * music that is to be left alone.
 */
export function placeTyped(ride: Ride, report: Planned, index: number, text: string): Cue['lead'] {
  const played = report.blocks[index]!
  const told = momentTold(ride, report, played, text)
  if (told !== null) return leadTo(ride, report, played, told, Math.round)
  const unit = 'counts' in played.block.length ? 'counts' : 'seconds'
  const utterance = utteranceOf(text, speechOf(ride))
  const fits = (free: Stretch): boolean => lengthAt(ride, report, played, utterance, free.from) <= free.to - free.from
  const free = freeStretches(report, played).find(fits)
  if (free === undefined || free.from <= played.from) return startLead(unit)
  return leadTo(ride, report, played, free.from + lengthAt(ride, report, played, utterance, free.from), Math.floor)
}

/** Beats of a bar where no song says. */
const USUAL_BAR: Counts = 4

/** The moment inside the block that words are true at: “ten seconds left”, “last eight”, “halfway”. Null where they name none. */
function momentTold(ride: Ride, { sections }: Planned, played: PlayedBlock, text: string): Seconds | null {
  const { from, to } = played
  const clock = sectionClock(ride.sections[played.section]!, sections[played.section]!.one)
  const bar = ride.sections[played.section]!.song?.grid?.beatsPerBar ?? USUAL_BAR
  const before = (value: number, unit: MeaningOf<'left'>['unit']): Seconds =>
    unit === 'seconds' ? to - value : clock.atBeat(clock.beatAt(to) - (unit === 'bars' ? bar : 1) * value)
  for (const {
    meanings: [meaning],
  } of claimsIn(text, ride.bike.unit, speechOf(ride))) {
    if ((meaning.about !== 'left' && meaning.about !== 'share') || (meaning.of !== undefined && meaning.of !== 'block')) continue
    const at = meaning.about === 'share' ? from + meaning.value * (to - from) : before(meaning.value, meaning.unit)
    if (at > from && at < to) return at
  }
  return null
}

const lengthAt = (ride: Ride, report: Planned, played: PlayedBlock, utterance: Utterance, at: Seconds): Seconds =>
  speechSeconds(utterance, rate(ride, report, played, at), constantsOf(ride))

/**
 * The room a story has that begins where `placeTyped` puts it, and what speaks against one here: what is spoken or kept
 * quiet leaves less than a story takes, or riders are working too hard to listen.
 */
export function storyRoom(ride: Ride, report: Planned, index: number): StoryRoom {
  const played = report.blocks[index]!
  const free = freeStretches(report, played)
  const first = free.find(({ from, to }) => to - from >= LEAST_ROOM)
  if (first === undefined) {
    const longest = free.reduce<Stretch>((best, one) => (one.to - one.from > best.to - best.from ? one : best), {
      from: played.from,
      to: played.from,
    })
    return { ...longest, words: wordsIn(ride, report, played, longest), lacks: 'room' }
  }
  const calm = report.cues.storyWindows
    .map(({ from, to }) => ({ from: Math.max(from, played.from), to: Math.min(to, played.to) }))
    .find(({ from, to }) => to - from >= LEAST_ROOM)
  if (calm === undefined || calm.from > first.from + 1e-6) {
    return { ...first, words: wordsIn(ride, report, played, first), lacks: 'calm', ...(calm && { calmFrom: calm.from }) }
  }
  return { ...calm, words: wordsIn(ride, report, played, calm) }
}

const wordsIn = (ride: Ride, report: Planned, played: PlayedBlock, { from, to }: Stretch): number =>
  Math.floor(longestTalk(ride, report, { from, to }) * rate(ride, report, played, from))

/** Halves of a room after which a length is told to better than a word. */
const HALVES = 8

/** The longest talk from a moment on with which nothing near it counts as too much of it; more is never less, so it is halved for. */
function longestTalk(ride: Ride, { cues, curves }: Planned, { from, to }: Stretch): Seconds {
  const { talkSeconds, talkWindow } = constantsOf(ride)
  const near = cues.lines.filter((line) => overlap(line, { from: from - talkWindow, to: to + talkWindow }) > 0)
  const isTooMuch = (length: Seconds): boolean => {
    const story = { from, to: from + length }
    const spoken = spokenStretches([...near, story].sort((a, b) => a.from - b.from))
    return crowdedWindows(spoken, talkWindow, talkSeconds).some((window) => overlap(window, story) > 0 && !isCalm(curves.strain, window))
  }
  let [fits, most] = [0, to - from]
  if (!isTooMuch(most)) return most
  for (let half = 0; half < HALVES; half++) {
    const middle = (fits + most) / 2
    if (isTooMuch(middle)) most = middle
    else fits = middle
  }
  return fits
}

/** Words a second of the one who speaks in a block, at a moment. */
function rate(ride: Ride, { curves }: Planned, { block }: PlayedBlock, at: Seconds): number {
  const id = block.mic ?? block.leader
  const speaker = ride.leaders.find((leader) => leader.id === id) ?? ride.leaders[0]!
  const strain = block.walk || block.posture === 'offBike' ? 0 : strainAt(curves.strain, at)
  return wordsPerSecond(speaker.wordsPerMinute, strain, constantsOf(ride))
}

/** How long before the block's end a moment is, as the block is measured. */
function leadTo(ride: Ride, { sections }: Planned, played: PlayedBlock, at: Seconds, whole: (counts: number) => number): Cue['lead'] {
  if (!('counts' in played.block.length)) return { seconds: Math.max(0, whole(played.to - at)) }
  const clock = sectionClock(ride.sections[played.section]!, sections[played.section]!.one)
  return { counts: Math.max(0, whole(clock.beatAt(played.to) - clock.beatAt(at))) }
}

/** The block without what is spoken or kept quiet in it. */
function freeStretches({ cues }: Planned, { from, to }: PlayedBlock): Stretch[] {
  const taken = [...cues.lines, ...cues.quiet].filter((stretch) => overlap(stretch, { from, to }) > 0).sort((a, b) => a.from - b.from)
  const free: Stretch[] = []
  let start = from
  for (const stretch of taken) {
    if (stretch.from > start) free.push({ from: start, to: stretch.from })
    start = Math.max(start, stretch.to)
  }
  if (start < to) free.push({ from: start, to })
  return free
}
