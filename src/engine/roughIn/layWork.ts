import type { Constants } from '#engine/constants.ts'
import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import type { Level } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Chunk, Planned } from './chunks.ts'
import { LEVEL_PLANS } from './levels.ts'
import type { Segment } from './phrases.ts'
import { SHORTEST_BLOCK } from './segments.ts'
import { PARTS, type Style } from './styles.ts'

/** A song of work as it is to be laid. */
interface WorkSong {
  style: Style
  segments: readonly Segment[]
  /** 0 to 1: how hard it may become. */
  intensity: number
  /** The last peak of the class lies in it. */
  finish: boolean
  /** Whether the room does side leans. */
  leans: boolean
  eightSeconds: Seconds
  /** Seconds after its last whole eight, which rounds cannot hold. */
  rest: Seconds
  /** Easy riding that follows the song for certain. */
  easyAfter: Seconds
}

/** Lengths that end on phrases are preferred, then whole pairs of eights. */
const STEPS = [4, 2, 1] as const

/**
 * A song of work in blocks: quieter stretches under its louder ones. A hard stretch is as long as
 * its level takes and the quiet one after it makes good; what is left of it is a build before it.
 * Pushes are rounds with their recovery.
 */
export function layWork(song: WorkSong, level: Level, rules: Constants): Planned[] {
  const rounds = song.style === 'push' ? pushRounds(song, level, rules) : null
  return (
    rounds ?? song.segments.flatMap((segment, index) => (segment.up ? louder(song, index, level, rules) : [quieter(song, segment, level)]))
  )
}

const half = (effort: Effort): Effort => Math.round(effort * 2) / 2

function upEffort({ style, intensity, finish }: WorkSong, level: Level): Effort {
  const { up, push } = LEVEL_PLANS[level]
  if (style === 'push') return intensity < 0.6 ? half(push - 0.5) : push
  const most = finish ? up.hardest + (level === 'beginner' ? 0 : 0.5) : up.hardest
  return half(up.easiest + (most - up.easiest) * intensity)
}

function quieter({ style, segments }: WorkSong, segment: Segment, level: Level): Chunk {
  const chunk = { pattern: PARTS[style].down, eights: segment.eights, effort: LEVEL_PLANS[level].down }
  // Half the jumps with either foot: the swap is made where riders sit.
  const next = segments[segments.indexOf(segment) + 1]
  const swap = style === 'jumps' && next !== undefined && next === evenSplit(segments.filter(({ up }) => up))
  return swap ? { ...chunk, swap } : chunk
}

/** The segment from which on the others are as long together as those before it, as nearly as may be. */
function evenSplit(segments: readonly Segment[]): Segment | undefined {
  const apart = (at: number) => Math.abs(sum(segments.slice(0, at)) - sum(segments.slice(at)))
  const places = segments.map((_, at) => at).slice(1)
  return segments[places.sort((a, b) => apart(a) - apart(b))[0] ?? -1]
}

/** Louder stretches of a song grow to its last one: by so much each, so much in all. */
const GROWTH: Readonly<{ each: Effort; all: Effort }> = { each: 0.5, all: 1 }

/** What a jumps song has too few of for both feet is ridden as a hill. */
const BOTH_FEET = 2

/** The pattern of one of a song's louder stretches: a hill is first ridden heavier in the saddle, a run has leans in its second. */
function patternOf({ style, leans }: WorkSong, place: number, of: number): string {
  if (style === 'climb' && place === 0 && of > 2) return 'seated-hill'
  if (style === 'jumps' && of < BOTH_FEET) return 'seated-hill'
  if (style === 'run' && leans && place === 1 && of > 2) return 'leans'
  return PARTS[style].up
}

function louder(song: WorkSong, index: number, level: Level, rules: Constants): Chunk[] {
  const { down } = PARTS[song.style]
  const ups = song.segments.filter((segment) => segment.up)
  const place = ups.indexOf(song.segments[index]!)
  const up = patternOf(song, place, ups.length)
  const plan = LEVEL_PLANS[level]
  const { eights } = song.segments[index]!
  const rest = restAfter(song, index)
  const growth = Math.min(GROWTH.all, GROWTH.each * (ups.length - 1 - place))
  const wanted = half(Math.max(plan.down + 1, upEffort(song, level) - growth))
  const fits = (effort: Effort, count: number) =>
    effort < rules.hardEffort || recoveryNeed({ work: count * song.eightSeconds, peak: effort, allOut: false }, level, rules) <= rest
  const most = wanted >= rules.hardEffort ? plan.hardSeconds : stands(song.style) ? plan.standingSeconds : Number.POSITIVE_INFINITY
  const leavesRoom = (each: number) => each === eights || (eights - each) * song.eightSeconds >= SHORTEST_BLOCK
  const count = wholePart(eights, (each) => leavesRoom(each) && each * song.eightSeconds <= most && fits(wanted, each))
  // Too little rest for any of it hard: the whole stretch just under hard.
  const effort = count === 0 ? Math.min(wanted, rules.hardEffort - 0.5) : wanted
  const shorter =
    count === 0
      ? wholePart(eights, (each) => leavesRoom(each) && (!stands(song.style) || each * song.eightSeconds <= plan.standingSeconds))
      : count
  const build = { pattern: down, eights: eights - shorter, effort: Math.min(effort, plan.down + 1) }
  const peak = { pattern: up, eights: shorter, effort }
  return [build, peak].filter((chunk) => chunk.eights > 0)
}

const stands = (style: Style): boolean => style === 'climb' || style === 'run' || style === 'jumps'

/** Seconds of the quieter stretch that follows, with what is easy after the song where it is the song's last. */
function restAfter({ segments, eightSeconds, easyAfter }: WorkSong, index: number): Seconds {
  const next = segments[index + 1]
  const own = next && !next.up ? next.eights * eightSeconds : 0
  return index + 2 >= segments.length ? own + easyAfter : own
}

/** All of a number of eights where that will do, else the longest part of it in whole phrases, pairs, or single eights; 0 where nothing does. */
function wholePart(eights: number, does: (eights: number) => boolean): number {
  if (does(eights)) return eights
  for (const step of STEPS) {
    for (let part = Math.floor(eights / step) * step; part > 0; part -= step) if (does(part)) return part
  }
  return 0
}

const MOST_ROUNDS = 6

/** Pushes as rounds: what comes before the first louder stretch, then rounds of push and recovery, then what comes after the last. */
function pushRounds(song: WorkSong, level: Level, rules: Constants): Planned[] | null {
  const { segments, eightSeconds } = song
  const first = segments.findIndex(({ up }) => up)
  if (first < 0) return null
  const before = sum(segments.slice(0, first))
  const last = segments.findLastIndex(({ up }) => up)
  const body = sum(segments.slice(first, last + 1))
  const after = sum(segments.slice(last + 1))
  const { from, to } = LEVEL_PLANS[level].pushSeconds
  const effort = upEffort(song, level)
  const lengths = [4, 6, 8, 2, 3].filter((eights) => eights * eightSeconds >= from && eights * eightSeconds <= to)
  for (const push of lengths) {
    const need = recoveryNeed({ work: push * eightSeconds, peak: Math.max(effort, rules.hardEffort), allOut: false }, level, rules)
    const recover = roundUp(push + Math.ceil(need / eightSeconds - 1e-9), 4) - push
    const leftOf = (count: number) => before + body + after - count * (push + recover)
    const most = Math.min(MOST_ROUNDS, Math.floor((body + after) / (push + recover)))
    // What is left comes before the rounds, and is none or long enough to be called into them.
    const allInRounds = leftOf(most) === 0 && song.rest === 0
    const rounds = allInRounds || leftOf(most) * eightSeconds >= SHORTEST_BLOCK ? most : most - 1
    if (rounds < 2) continue
    const left = leftOf(rounds)
    const down = LEVEL_PLANS[level].down
    return [
      ...(left > 0 ? [{ pattern: PARTS.push.down, eights: left, effort: down - 0.5 }] : []),
      {
        rounds,
        parts: [
          { pattern: PARTS.push.up, eights: push, effort },
          { pattern: 'recover', eights: recover, effort: 3 },
        ],
      },
    ]
  }
  return null
}

const sum = (segments: readonly Segment[]): number => segments.reduce((all, { eights }) => all + eights, 0)
const roundUp = (value: number, step: number): number => Math.ceil(value / step) * step
