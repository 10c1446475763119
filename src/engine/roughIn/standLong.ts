import type { Effort, Seconds } from '#units/units.ts'
import { type Chunk, isRounds, type Planned } from './chunks.ts'
import { isUp, patternOf } from './patternOf.ts'
import { standingOf } from './standingOf.ts'

/** What is ridden seated between two stretches out of the saddle, and may as well be ridden up: no harder than … (common practice). */
const BETWEEN: Effort = 7
/** What standing asks for anyway (common practice). */
const STANDING: Effort = 4.5

/** A song as far as it is drafted. */
interface Standing {
  planned: Planned[]
  eightSeconds: Seconds
  /** Whether its beat lets riders stand, and its place in the class does. */
  standsLong: boolean
}

interface Run {
  song: number
  from: number
  to: number
  seconds: Seconds
}

/**
 * Songs with one stretch out of the saddle as long as the level takes: the longest there is room for about one that is there,
 * what is seated in it ridden up.
 *
 * @param most seconds of the stretch
 */
export function standLong<T extends Standing>(songs: readonly T[], most: Seconds): T[] {
  const runs = songs.flatMap((song, index) => (song.standsLong ? runsOf(song, index) : [])).filter(({ seconds }) => seconds <= most)
  const [best] = runs.sort((a, b) => b.seconds - a.seconds)
  if (!best) return [...songs]
  return songs.map((song, index) =>
    index === best.song
      ? { ...song, planned: song.planned.map((item, at) => (at >= best.from && at <= best.to ? upIn(item as Chunk) : item)) }
      : song,
  )
}

/** Every stretch that riders are up in and can stay up in throughout. */
function runsOf({ planned, eightSeconds }: Standing, song: number): Run[] {
  const runs: Run[] = []
  for (const [from, first] of planned.entries()) {
    // Riders sit as the song begins, and as it ends.
    if (from === 0 || isRounds(first)) continue
    let seconds = 0
    let wasUp = false
    for (let to = from; to < planned.length - 1; to++) {
      const item = planned[to]!
      if (isRounds(item) || !(isUp(item.pattern) || canStand(item))) break
      seconds += item.eights * eightSeconds
      wasUp ||= isUp(item.pattern)
      if (wasUp) runs.push({ song, from, to, seconds })
    }
  }
  return runs
}

/** Seated, without a figure of its own, and nobody drinks in it or changes feet. */
function canStand(chunk: Chunk): boolean {
  const { terrain, move } = patternOf(chunk.pattern)
  return (
    (terrain === 'flat' || terrain === 'hill' || terrain === 'tempo') &&
    move === undefined &&
    !chunk.water &&
    !chunk.swap &&
    chunk.effort + (chunk.rise ?? 0) <= BETWEEN
  )
}

const upIn = (chunk: Chunk): Chunk =>
  isUp(chunk.pattern) ? chunk : { ...chunk, pattern: standingOf(chunk.pattern), effort: Math.max(chunk.effort, STANDING) }
