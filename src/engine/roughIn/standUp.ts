import type { Seconds } from '#units/units.ts'
import { type Chunk, eightsOf, isRounds, type Planned } from './chunks.ts'
import { patternOf } from './patternOf.ts'
import { PHRASE_EIGHTS } from './phrases.ts'
import { standingOf } from './standingOf.ts'

/** Seats want a break sooner than this, and a class is out of the saddle for so much of its riding (common practice); a little inside, as rounding takes some. */
const SEATED_MOST: Seconds = 540
const LEAST_SHARE = 0.12
/** A break lasts from … to …. */
const BREAK: Readonly<{ least: Seconds; most: Seconds }> = { least: 14, most: 30 }
/** Eights of sitting after one that would end a song. */
const AFTER = 2 * PHRASE_EIGHTS
/** Riders sit for so long before one. */
const SIT: Seconds = 30
/** Effort of a break: what standing asks for anyway, and no more than riders recover at in an easy song. */
const EFFORT = { least: 4.5, most: 6.5 } as const

/** A song as far as it is drafted. */
interface Standing {
  planned: Planned[]
  eightSeconds: Seconds
  /** Seconds on the ride clock of its first count. */
  one: Seconds
  /** Where a break may be made: in work, in a warm-up, in a recovery; not in what brings riders down at the end. */
  mayStand: boolean
}

interface Stretch {
  song: number
  /** Its place among what is planned of the song. */
  at: number
  from: Seconds
  to: Seconds
  up: number
  /** A break may be cut out of it, or it may be one as a whole. */
  breaks: 'part' | 'whole' | null
}

/**
 * Songs in which nobody sits for longer than seats bear, and which are out of the saddle for long enough: short breaks
 * of a phrase, cut out of the longest seated stretches.
 *
 * @param riding seconds of the whole class
 */
export function standUp<T extends Standing>(songs: readonly T[], start: Seconds, riding: Seconds): T[] {
  let result = [...songs]
  // Every break is one step; more than these are never wanted.
  for (let step = 0; step < 60; step++) {
    const stretches = stretchesOf(result)
    const run = longestSeated(stretches, start)
    const share = stretches.reduce((sum, { from, to, up }) => sum + up * (to - from), 0) / riding
    if (run.to - run.from <= SEATED_MOST && share >= LEAST_SHARE) return result
    const isLong = run.to - run.from > SEATED_MOST
    const inPart = placeOf(stretches, isLong ? run : { from: start, to: start + riding }, result, 'part')
    const cut = inPart ?? (isLong ? placeOf(stretches, run, result, 'whole') : undefined)
    if (!cut) return result
    const broken = cut.breaks === 'whole' ? ridingUp : withBreak
    result = result.map((song, index) => (index === cut.song ? { ...song, planned: broken(song, cut.at) } : song))
  }
  return result
}

function stretchesOf(songs: readonly Standing[]): Stretch[] {
  return songs.flatMap(({ planned, eightSeconds, one, mayStand }, song) => {
    let from = one
    return planned.map((item, at): Stretch => {
      const to = from + eightsOf([item]) * eightSeconds
      const stretch = {
        song,
        at,
        from,
        to,
        up: upShare(item),
        breaks: mayStand && !isRounds(item) ? breakOf(item, eightSeconds, at === planned.length - 1) : null,
      }
      from = to
      return stretch
    })
  })
}

const isSeated = ({ pattern }: Chunk): boolean => patternOf(pattern).posture === 'seated'

/** Share of its time out of the saddle; of jumps half. */
function upShare(item: Planned): number {
  if (isRounds(item)) return item.parts.reduce((sum, part) => sum + upShare(part) * part.eights, 0) / eightsOf(item.parts)
  return isSeated(item) ? 0 : patternOf(item.pattern).terrain === 'jumps' ? 0.5 : 1
}

/** Seated, steady and not hard: a break is cut out of it where it is long enough that riders sit before and after; a short one is a break as a whole. */
function breakOf(chunk: Chunk, eightSeconds: Seconds, last: boolean): Stretch['breaks'] {
  const { terrain } = patternOf(chunk.pattern)
  const left = chunk.eights - breakEights(eightSeconds) - (last ? AFTER : 0)
  const plain =
    chunk.rise === undefined &&
    patternOf(chunk.pattern).move === undefined &&
    terrain !== 'flush' &&
    terrain !== 'stretch' &&
    terrain !== 'push'
  if (!isSeated(chunk) || !plain || chunk.effort > EFFORT.most) return null
  if (left >= PHRASE_EIGHTS && left * eightSeconds >= SIT) return 'part'
  const seconds = chunk.eights * eightSeconds
  return !last && !chunk.water && !chunk.swap && seconds >= BREAK.least && seconds <= BREAK.most ? 'whole' : null
}

const breakEights = (eightSeconds: Seconds): number => Math.ceil(BREAK.least / eightSeconds / PHRASE_EIGHTS - 1e-9) * PHRASE_EIGHTS

function longestSeated(stretches: readonly Stretch[], start: Seconds): { from: Seconds; to: Seconds } {
  let longest = { from: start, to: start }
  let since = start
  for (const { from, to, up } of stretches) {
    if (up > 0) since = to
    else if (to - since > longest.to - longest.from) longest = { from: since, to }
    if (up > 0 && from - since > longest.to - longest.from) longest = { from: since, to: from }
  }
  return longest
}

/** Of what may be broken inside a time, the nearest to its middle by whole minutes, harder work first: easy songs are left easy where they can be. */
function placeOf(
  stretches: readonly Stretch[],
  run: { from: Seconds; to: Seconds },
  songs: readonly Standing[],
  how: 'part' | 'whole',
): Stretch | undefined {
  const middle = (run.from + run.to) / 2
  const effort = ({ song, at }: Stretch) => (songs[song]!.planned[at] as Chunk).effort
  const inside = stretches.filter(({ breaks, from, to }) => breaks === how && from >= run.from - 1e-6 && to <= run.to + 1e-6)
  const cost = (stretch: Stretch) =>
    Math.abs((stretch.from + stretch.to) / 2 - middle) / (run.to - run.from) + (effort(stretch) < EFFORT.least ? 0.5 : 0)
  return inside.sort((a, b) => cost(a) - cost(b))[0]
}

/** The chunk at a place ridden up throughout. */
function ridingUp({ planned }: Standing, at: number): Planned[] {
  const chunk = planned[at] as Chunk
  const effort = Math.min(EFFORT.most, Math.max(EFFORT.least, chunk.effort))
  return planned.with(at, { ...chunk, pattern: standingOf(chunk.pattern), effort })
}

/** The chunk at a place with a break at its end, or before its last phrase where nothing follows in the song. */
function withBreak({ planned, eightSeconds }: Standing, at: number): Planned[] {
  const chunk = planned[at] as Chunk
  const up = breakEights(eightSeconds)
  const after = at === planned.length - 1 ? AFTER : 0
  const { water: _, swap: __, label: ___, ...plain } = chunk
  const effort = Math.min(EFFORT.most, Math.max(EFFORT.least, chunk.effort))
  return [
    ...planned.slice(0, at),
    { ...chunk, eights: chunk.eights - up - after },
    { ...plain, pattern: standingOf(chunk.pattern), eights: up, effort },
    ...(after > 0 ? [{ ...plain, eights: after }] : []),
    ...planned.slice(at + 1),
  ]
}
