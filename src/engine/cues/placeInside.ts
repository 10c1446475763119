import { constantsOf } from '#engine/constants.ts'
import type { PlayedBlock, RideReport } from '#engine/report.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import type { Cue, Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { countWords } from './countWords.ts'
import { sectionClock } from './sectionClock.ts'
import { speechSeconds, wordsPerSecond } from './speechRate.ts'
import { LEAST_ROOM } from './storyWindows.ts'
import { overlap, type Stretch } from './talk.ts'

/** Room for more than calls inside a block. */
export interface StoryRoom extends Stretch {
  /** Words that can be said in it. */
  words: number
  /** Where a story ends that ends with the room. */
  lead: Cue['lead']
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
  const length = speechSeconds(countWords(text), rate(ride, report, played, middle), rules)
  return length > longest.to - longest.from ? null : leadTo(ride, report, played, middle + length / 2, Math.round)
}

/** Room for a story in a block, the longest where there are several; null where there is none. */
export function storyRoom(ride: Ride, report: Planned, index: number): StoryRoom | null {
  const played = report.blocks[index]!
  const rooms = report.cues.storyWindows
    .map(({ from, to }) => ({ from: Math.max(from, played.from), to: Math.min(to, played.to) }))
    .filter(({ from, to }) => to - from >= LEAST_ROOM)
    .sort((a, b) => b.to - b.from - (a.to - a.from))
  const [room] = rooms
  if (room === undefined) return null
  const words = Math.floor((room.to - room.from) * rate(ride, report, played, room.to))
  return { ...room, words, lead: leadTo(ride, report, played, room.to, Math.ceil) }
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
  return { counts: Math.max(0, whole(clock.countAt(played.to) - clock.countAt(at))) }
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
