import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Chunk, Planned } from './chunks.ts'
import { layRounds } from './layRounds.ts'
import { type Lessons, teaching } from './lessons.ts'
import { isUp, patternOf } from './patternOf.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import { upAt } from './recipes.ts'
import { SHORTEST_BLOCK } from './segments.ts'
import { standingOf } from './standingOf.ts'
import { RISE, type WorkSong } from './workSong.ts'

interface Laid {
  planned: Planned[]
  lessons: Lessons
}

/** Lengths that end on phrases are preferred, then whole pairs of eights. */
const STEPS = [PHRASE_EIGHTS, 2, 1] as const

/**
 * A song of work in blocks: quieter stretches under its louder ones. A hard stretch is as long as its level takes and the
 * quiet one after it makes good; what is left of it is a build before it. Where the music builds, effort rises with it.
 * Recipes in rounds are rounds with their recovery.
 */
export function layWork(song: WorkSong): Laid {
  const { recipe, segments, lessons } = song
  const rounds = recipe.rounds ? layRounds(song, upEffort(song)) : null
  if (rounds) return { planned: rounds, lessons }
  const lesson = recipe.move && teaching(recipe.move, song.level, lessons)
  const up = recipe.long ? staysUp(song) : []
  const planned = segments.flatMap((segment, index) =>
    segment.up
      ? louder(song, index, figureAt(song, index, lesson?.next))
      : quieter(song, index, up.includes(index) ? recipe.ups[0] : recipe.down),
  )
  return { planned: withSwap(planned), lessons: lesson?.after() ?? lessons }
}

const half = (effort: Effort): Effort => Math.round(effort * 2) / 2

function upEffort({ recipe, intensity, plan }: WorkSong): Effort {
  if (recipe.finish) return plan.finish
  if (recipe.style === 'push') return half(intensity < 0.6 ? plan.push - 0.5 : plan.push)
  return half(plan.easiest + (plan.hardest - plan.easiest) * intensity)
}

/** What a louder stretch is ridden as, and what comes before its layer. */
interface Figure {
  pattern: string
  terrain?: Chunk['terrain']
  counts?: number
  /** What it is layered on. */
  plain: string
  /** What its last showing is where a stretch shows it more than once: the next lesson of a move. */
  faster?: (() => Layer) | undefined
}

type Layer = Pick<Figure, 'pattern' | 'terrain' | 'counts'>

function figureAt(
  { recipe, segments, plan, level }: WorkSong,
  index: number,
  nextLesson: (() => { pattern: string; counts: number }) | undefined,
): Figure {
  const ups = segments.filter(({ up }) => up)
  const place = ups.indexOf(segments[index]!)
  const up = upAt(recipe, place, ups.length)
  const seated = recipe.down === 'flat' ? 'tempo' : recipe.down
  // Who changes place often sits and stands in turn in a seated effort.
  const turns = plan.setsUp && up !== 'move' && !isUp(up)
  const plain = turns
    ? standingOf(recipe.down) === 'standing-hill'
      ? 'standing-hill'
      : 'run'
    : recipe.ups[0] !== up
      ? recipe.ups[0]
      : seated
  if (up !== 'move' || !nextLesson) return { pattern: up, plain }
  const layer = (): Layer => {
    const { pattern, counts } = nextLesson()
    const own = patternOf(pattern)
    return { pattern, ...(recipe.on && { terrain: recipe.on }), ...(own.move!.counts !== counts && { counts }) }
  }
  return { ...layer(), plain, ...(level === 'advanced' && { faster: layer }) }
}

/** A quieter stretch; its last eights rise where the music builds towards what follows, else a seated effort may be set up out of the saddle. */
function quieter(song: WorkSong, index: number, pattern: string): Chunk[] {
  const { segments, plan, recipe, rules, level, eightSeconds } = song
  const { eights, build = 0 } = segments[index]!
  const chunk = { pattern, effort: plan.down }
  const phrase = Math.ceil(SHORTEST_BLOCK / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS
  const sets =
    plan.setsUp && build === 0 && !recipe.finish && segments[index + 1]?.up && !recipe.ups.some((up) => up !== 'move' && isUp(up))
  // Nobody recovers in it: what was before has its recovery first.
  const before = segments[index - 1]?.up ? Math.min(segments[index - 1]!.eights * eightSeconds, plan.hardSeconds) : 0
  const need = before > 0 ? recoveryNeed({ work: before, peak: rules.hardEffort, allOut: false }, level, rules) : SHORTEST_BLOCK
  const setUp = sets && (eights - phrase) * eightSeconds >= Math.max(SHORTEST_BLOCK, need) - 1e-6 ? phrase : 0
  // Trained riders come up as the music builds, where its beat lets them stand.
  const risesUp = plan.attacks && !recipe.finish && recipe.rpm.to <= rules.standingMaxRpm
  return [
    { ...chunk, eights: eights - build - setUp },
    { ...chunk, pattern: risesUp ? standingOf(pattern) : pattern, eights: build, rise: RISE },
    { ...chunk, pattern: standingOf(pattern), eights: setUp },
  ].filter((each) => each.eights > 0)
}

/** The quieter stretches that riders stay up through, easily, between louder ones: as many as leave them up no longer than the level stands, the last such. */
function staysUp({ segments, plan, eightSeconds }: WorkSong): readonly number[] {
  const runs = [4, 3, 2, 1].flatMap((quiet) =>
    segments.flatMap(({ up }, from) => (up && segments[from + 2 * quiet]?.up ? [{ from, to: from + 2 * quiet }] : [])).reverse(),
  )
  const longest = runs.find(
    ({ from, to }) => sum(segments.slice(from, to + 1).map(({ eights }) => eights)) * eightSeconds <= plan.standingSeconds,
  )
  return longest ? segments.flatMap(({ up }, index) => (!up && index > longest.from && index < longest.to ? [index] : [])) : []
}

/** Nobody minds a move in harder work than this (common practice). */
const MOST_WITH_MOVES: Effort = 8
const MOVING = /^(?:jumps-|leans$|presses$|corners$|travel-backs$)/

/** Louder stretches of a song grow to its last one: by so much each, and by what the level takes in all. */
const GROWTH: Effort = 0.5

function louder(song: WorkSong, index: number, figure: Figure): Chunk[] {
  const { recipe, plan, rules, level, eightSeconds } = song
  const ups = song.segments.filter((segment) => segment.up)
  const place = ups.indexOf(song.segments[index]!)
  const { eights } = song.segments[index]!
  const rest = restAfter(song, index)
  const growth = Math.min(plan.growth, GROWTH * (ups.length - 1 - place))
  const moves = figure.counts !== undefined || MOVING.test(figure.pattern)
  const wanted = Math.min(half(Math.max(plan.down + 1, upEffort(song) - growth)), moves ? MOST_WITH_MOVES : 10)
  const fits = (effort: Effort, count: number) =>
    effort < rules.hardEffort || recoveryNeed({ work: count * eightSeconds, peak: effort, allOut: false }, level, rules) <= rest
  const stands = isUp(figure.pattern)
  const longest = place === ups.length - 1 ? Math.min(plan.hardSeconds, song.lastMost) : plan.hardSeconds
  const most = wanted >= rules.hardEffort ? longest : stands ? plan.standingSeconds : Number.POSITIVE_INFINITY
  const leavesRoom = (each: number) => each === eights || (eights - each) * eightSeconds >= SHORTEST_BLOCK
  const count = wholePart(eights, (each) => leavesRoom(each) && each * eightSeconds <= most && fits(wanted, each))
  // Too little rest for any of it hard: the whole stretch just under hard.
  const effort = count === 0 ? Math.min(wanted, rules.hardEffort - 0.5) : wanted
  const size =
    count === 0 ? wholePart(eights, (each) => leavesRoom(each) && (!stands || each * eightSeconds <= plan.standingSeconds)) : count
  const standsUp = plan.setsUp && !stands && (eights - size) * eightSeconds >= SHORTEST_BLOCK && !recipe.finish
  const build = {
    pattern: recipe.long ? recipe.ups[0] : standsUp ? standingOf(recipe.down) : recipe.down,
    eights: eights - size,
    effort: Math.min(effort, plan.down + 1),
  }
  return [build, ...layered(figure, size, effort, song, song.segments[index]!.rise)].filter((chunk) => chunk.eights > 0)
}

/** A louder stretch in steps of whole phrases where it is long enough: plain and with its layer in turn, the layer last. */
function layered(figure: Figure, eights: number, effort: Effort, song: WorkSong, rise: Segment['rise']): Chunk[] {
  const { plan, recipe, rules } = song
  const { plain, faster, ...own } = figure
  if (!recipe.finish) {
    const steps = plain === own.pattern || recipe.long ? 1 : plan.steps
    if (!rise || eights <= rise.eights + rise.last) return inTurns({ ...own, faster }, plain, eights, effort, steps, song)
    const held = effort < rules.hardEffort ? effort : Math.max(rules.hardEffort, effort - HELD_BACK)
    return [
      ...inTurns(own, plain, eights - rise.eights - rise.last, held, steps, song),
      { pattern: plain, eights: rise.eights, effort: held, rise: HELD_BACK },
      ...inTurns(own, plain, rise.last, effort, steps, song),
    ]
  }
  // A finish is hardest at its very end.
  const before = Math.min(effort, Math.max(rules.hardEffort, effort - 1))
  const hard = recipe.down !== 'flat' ? recipe.down : plain === 'push' ? 'run' : 'tempo'
  if (rise && eights > rise.eights + rise.last) {
    const first = inTurns({ pattern: hard }, plain, eights - rise.eights - rise.last, before, plan.steps, song)
    return [...first, { pattern: hard, eights: rise.eights, effort: before, rise: effort - before }, { ...own, eights: rise.last, effort }]
  }
  const steps = inTurns({ pattern: hard }, plain, eights, before, Math.max(2, plan.steps), song)
  return [...steps.slice(0, -1), { ...own, eights: steps.at(-1)!.eights, effort }]
}

/** A long effort keeps so much for where the music builds inside it. */
const HELD_BACK: Effort = 0.5

/** So many steps at most of a stretch, plain and a figure in turn, the figure last, and faster where it was there before. */
function inTurns(figure: Omit<Figure, 'plain'>, plain: string, eights: number, effort: Effort, most: number, song: WorkSong): Chunk[] {
  const { faster, ...layer } = figure
  const phrase = Math.ceil(SHORTEST_BLOCK / song.eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS
  const steps = Math.max(1, Math.min(most, Math.floor(eights / phrase)))
  const size = Math.max(1, Math.floor(eights / steps / PHRASE_EIGHTS)) * PHRASE_EIGHTS
  const last: Chunk = { ...(steps > 2 && faster ? faster() : layer), eights: eights - (steps - 1) * size, effort }
  const before = Array.from({ length: steps - 1 }, (_, i): Chunk => {
    return (steps - 1 - i) % 2 === 1 ? { pattern: plain, eights: size, effort } : { ...layer, eights: size, effort }
  })
  return [...before, last]
}

/** Seconds of the quieter stretch that follows, with what is easy after the song where it is the song's last; a build is no rest. */
function restAfter({ segments, eightSeconds, easyAfter }: WorkSong, index: number): Seconds {
  const next = segments[index + 1]
  const own = next && !next.up ? (next.eights - (next.build ?? 0)) * eightSeconds : 0
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

/** Moves whose accents fall on one foot are ridden half with either: the swap is made where riders sit, as near the middle as may be. */
function withSwap(planned: readonly Chunk[]): Chunk[] {
  const accents = planned.map(({ pattern, eights }) => (ACCENTED.test(pattern) ? eights : 0))
  const all = sum(accents)
  if (all === 0) return [...planned]
  const apart = (at: number) => Math.abs(2 * sum(accents.slice(0, at)) - all)
  const seats = planned.flatMap(({ pattern }, at) => (at > 0 && !isUp(pattern) ? [at] : []))
  const [best] = seats.sort((a, b) => apart(a) - apart(b))
  return planned.map((chunk, at) => (at === best && apart(at) < all ? { ...chunk, swap: true } : chunk))
}

const ACCENTED = /^(?:jumps-|presses$|travel-backs$)/
const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)
