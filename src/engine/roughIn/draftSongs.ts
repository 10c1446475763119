import type { Constants } from '#engine/constants.ts'
import type { SongDrive } from '#engine/loudness/energyOf.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { type Ride, tempoOf } from '#plan/model.ts'
import type { Effort, Seconds } from '#units/units.ts'
import type { Aim } from './aims.ts'
import type { Arc, Place } from './arc.ts'
import { balanced } from './balanced.ts'
import { castEasy, type Part, rankRecipes, type Used } from './castSongs.ts'
import { eightsOf, keptUnder, type Planned } from './chunks.ts'
import { endsLong } from './endsLong.ts'
import { finishForm } from './finishForm.ts'
import { holdsThrough } from './holdsThrough.ts'
import { type Draft, keepToShare } from './keepToShare.ts'
import { layCoolDown, layRecovery, layWarmUp } from './layEasy.ts'
import { layWork } from './layWork.ts'
import type { Lessons } from './lessons.ts'
import { LEVEL_RANGES, type LevelPlan } from './levels.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import { isLong, type Recipe } from './recipes.ts'
import type { Random } from './seededRandom.ts'
import { segmentsOf } from './segments.ts'
import { keysOfPlan, shapeOfPlan } from './shapeOfPlan.ts'
import { standLong } from './standLong.ts'
import { standUp } from './standUp.ts'
import type { Stretch } from './stretches.ts'
import { WARM_UPS } from './styles.ts'
import { withAttacks } from './withAttacks.ts'

/** A song on the way from its style to its blocks. */
export interface SongDraft extends Draft {
  stretch: Stretch
  index: number
  part: Part
  /** How much drive it has, where that is known. */
  energy?: Energy
  /** Its loud and quiet stretches where its work follows them. */
  form?: readonly Segment[]
}

interface Drafting {
  ride: Ride
  stretches: readonly Stretch[]
  arc: Arc
  aim: Aim
  rules: Constants
  plan: LevelPlan
  known: readonly SongDrive[]
  energies: readonly (Energy | undefined)[]
  random: Random
}

/** What songs of work before have been made of. */
interface Before {
  used: Used
  lessons: Lessons
  shapes: readonly string[]
  keys: ReadonlySet<string>
}

const NOTHING_BEFORE: Before = {
  used: { recipes: new Map(), styles: new Map(), before: null },
  lessons: new Map(),
  shapes: [],
  keys: new Set(),
}

/** Every open song planned in order, each song of work in another shape than the one before and with something new where it can have it. */
export function draftSongs(drafting: Drafting): SongDraft[] {
  const { ride, stretches, arc, rules, energies } = drafting
  // Drawn first and in order, so that every recipe is laid over the same forms, and a song knows how the next one begins.
  const forms = stretches.map(({ open, section }, index) =>
    open && section.song && isWork(arc.places[index]!) ? formOf(drafting, index) : null,
  )
  let before = NOTHING_BEFORE
  const drafts = stretches.flatMap((stretch, index): SongDraft[] => {
    const { song } = stretch.section
    if (!stretch.open || !song) return []
    const place = arc.places[index]!
    const energy = energies[index]
    const base = { stretch, index, intensity: place.intensity, eightSeconds: stretch.eightSeconds, ...(energy !== undefined && { energy }) }
    const easy = castEasy(song, place, rules, ride.level)
    if (easy) return [{ ...base, part: easy, planned: layEasySong(drafting, index, easy.style) }]
    const chosen = chooseWork(drafting, index, forms, before)
    before = chosen.before
    return [{ ...base, ...chosen.draft }]
  })
  const riding = stretches.reduce((sum, { one, to }) => sum + to - one, 0)
  const shared = keepToShare(drafts, riding, 0, ride.level, rules)
  return ride.level === 'beginner' ? shared : outOfTheSaddle(shared, drafting, riding)
}

const isWork = ({ role }: Place): boolean => role === 'work' || role === 'finish'

function layEasySong({ ride, stretches, arc }: Drafting, index: number, style: keyof typeof WARM_UPS | 'recover' | 'coolDown'): Planned[] {
  const { eights, eightSeconds, one } = stretches[index]!
  if (style === 'recover') return layRecovery(eights, ride.level !== 'beginner')
  if (style === 'coolDown') return layCoolDown(eights, eightSeconds, index === stretches.length - 1)
  const [at, warmUp] = [one - ride.briefingSeconds, arc.warmUpEnd - ride.briefingSeconds]
  return layWarmUp(WARM_UPS[style], eights, eightSeconds, at, warmUp, ride.level !== 'beginner')
}

type WorkDraft = Pick<SongDraft, 'part' | 'planned' | 'form'>

/** The best recipe whose shape is another than that of the song before, and no half of the songs have; one with something new goes before one without. */
function chooseWork(
  drafting: Drafting,
  index: number,
  forms: readonly (Form | null)[],
  before: Before,
): { draft: WorkDraft; before: Before } {
  const { arc, ride, aim, rules, random, energies, stretches } = drafting
  const place = arc.places[index]!
  const { song } = stretches[index]!.section
  const ranked = rankRecipes({ song: song!, place, ride, aim, rules, random, energy: energies[index], used: before.used })
  const form = forms[index]!
  const next = forms[index + 1] ?? null
  const easy = easyAfter(drafting, index, next)
  const lastMost = next && next.rest > 0 ? next.rest * stretches[index + 1]!.eightSeconds : Number.POSITIVE_INFINITY
  const songs = arc.places.filter(isWork).length
  // What brings riders down teaches nothing new, and rounds would ride past what is heard of a song.
  const eases = isAfterFinish(arc.places, index)
  const fitting = ranked.filter(({ recipe }) => !(eases && recipe.move) && !((eases || form.known === 'sound') && recipe.rounds))
  const tried = fitting.map(({ recipe, part }) => {
    const { planned, lessons } = laySong(drafting, index, recipe, form, { easy, lastMost }, before.lessons)
    const shape = shapeOfPlan(planned)
    const again = before.shapes.filter((other) => other === shape).length + 1
    const faults = Number(shape === before.shapes.at(-1)) * 4 + Number(again > 1 && 2 * again >= songs) * 2
    const isNew = [...keysOfPlan(planned)].some((key) => !before.keys.has(key))
    return { recipe, part, planned, lessons, shape, faults: faults + Number(!isNew) + missed(recipe, ride.level, before, songs) }
  })
  const best = tried.reduce((one, other) => (other.faults < one.faults ? other : one))
  return {
    draft: { part: best.part, planned: best.planned, ...(form.known === 'sound' && { form: form.segments }) },
    before: {
      used: usedNow(before.used, best.recipe),
      lessons: best.lessons,
      shapes: [...before.shapes, best.shape],
      keys: new Set([...before.keys, ...keysOfPlan(best.planned)]),
    },
  }
}

/** Moves a class of trained riders has at least, and songs of work from which on the first needs none of them (common practice). */
const MOVES_WANTED = 2
const MANY_SONGS = 4

/**
 * How much of what trained riders are still owed in a class a recipe leaves out, 0 to 1 (common practice): one long
 * stretch out of the saddle, a move or two, then the faster half of a move they were shown.
 */
function missed({ long, move }: Recipe, level: Ride['level'], { used, lessons }: Before, songs: number): number {
  if (level === 'beginner') return 0
  const stands = long === true && ![...used.recipes.keys()].some(isLong)
  if (used.before === null && songs >= MANY_SONGS) return level === 'advanced' && !stands ? 0.3 : 0
  if (stands && level === 'advanced' && songs > MANY_SONGS) return 0
  const teaches = move !== undefined && !lessons.has(move) && lessons.size < MOVES_WANTED
  if (teaches || stands) return lessons.size === 0 && !teaches ? 0.5 : 0.1
  if (move !== undefined && lessons.get(move) === 1) return lessons.size < MOVES_WANTED ? 0.5 : 0.1
  return lessons.size < MOVES_WANTED ? 0.9 : 0.5
}

function usedNow({ recipes, styles }: Used, recipe: Recipe): Used {
  return {
    recipes: new Map([...recipes, [recipe.id, (recipes.get(recipe.id) ?? 0) + 1]]),
    styles: new Map([...styles, [recipe.style, (styles.get(recipe.style) ?? 0) + 1]]),
    before: recipe,
  }
}

/** A song's form, and what of it is ridden easy: before a finish, and where the cool-down begins inside it. */
interface Form {
  opening: number
  rest: number
  segments: Segment[]
  tail: number
  known?: 'marks' | 'sound'
}

function formOf({ ride, stretches, arc, plan, rules, known, random }: Drafting, index: number): Form {
  const stretch = stretches[index]!
  const { eights, eightSeconds } = stretch
  // The cool-down may begin inside the song, at a phrase.
  const easy = Math.max(0, stretch.to - arc.coolDownStart)
  const wanted = easy > 1 ? Math.ceil(easy / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS : 0
  const tail = Math.max(0, Math.min(eights - PHRASE_EIGHTS, wanted))
  const { segments, known: by } = segmentsOf(
    stretch,
    eights - tail,
    { ...LEVEL_RANGES[ride.level].form, opening: plan.opening },
    random,
    known[index]!.loudness,
  )
  const form = { opening: 0, rest: 0, tail, ...(by && { known: by }) }
  const [{ role }, next] = [arc.places[index]!, arc.places[index + 1]?.role]
  if (role === 'finish' && ride.level !== 'beginner') {
    const finish = finishForm(segments, eightSeconds, plan.hardSeconds)
    if (finish) return { ...form, ...finish }
  }
  if (!plan.setsUp) return { ...form, segments }
  // Where riders come down for long after a song it may end in one long effort, if the song is not known to be another.
  const long = next !== 'recovery' ? restsFirst : by ? holdsThrough : endsLong
  const even = balanced(long(segments, eightSeconds, plan.hardSeconds), eightSeconds, plan.hardSeconds)
  return { ...form, segments: plan.attacks ? withAttacks(even, eightSeconds, by === 'sound', ride.level, rules) : even }
}

/** How much of what the music builds riders build with where they need its beginning to recover in: most of it. */
const BUILT = 0.6

function restsFirst(segments: readonly Segment[]): Segment[] {
  return segments.map((segment) => {
    const { build = 0 } = segment
    return build > PHRASE_EIGHTS ? { ...segment, build: Math.max(PHRASE_EIGHTS, Math.ceil(BUILT * build)) } : segment
  })
}

/** What riders are asked for between the finish and the cool-down, at most: it brings them down. */
const AFTER_FINISH: Effort = 5

function laySong(
  drafting: Drafting,
  index: number,
  recipe: Recipe,
  form: Form,
  after: { easy: Seconds; lastMost: Seconds },
  lessons: Lessons,
): { planned: Planned[]; lessons: Lessons } {
  const { ride, stretches, arc, rules, plan } = drafting
  const { opening, rest, segments, tail } = form
  const { eightSeconds, one, rest: odd } = stretches[index]!
  const laid = layWork({
    recipe,
    segments,
    intensity: arc.places[index]!.intensity,
    level: ride.level,
    plan,
    rules,
    lessons,
    eightSeconds,
    rest: tail > 0 ? 0 : odd,
    easyAfter: tail * eightSeconds + after.easy,
    lastMost: after.lastMost,
  })
  const work: Planned[] = isAfterFinish(arc.places, index) ? keptUnder(laid.planned, AFTER_FINISH) : laid.planned
  const rested: Planned[] = [
    { pattern: recipe.down, eights: opening, effort: plan.down },
    { pattern: 'recover', eights: rest, effort: 3.5 },
    ...work,
  ]
  const warmed = underCeiling(
    rested.filter((each) => eightsOf([each]) > 0),
    one,
    eightSeconds,
    arc.warmUpEnd,
    rules.warmUpEffort - 0.5,
  )
  const last = index === stretches.length - 1
  return { planned: tail > 0 ? [...warmed, ...layCoolDown(tail, eightSeconds, last)] : warmed, lessons: laid.lessons }
}

/** Seconds the next song is easy for from its start: all of one that recovers, cools down or comes after the finish, and the quiet stretch another begins with. */
function easyAfter({ arc: { places }, stretches }: Drafting, index: number, next: Form | null): Seconds {
  const [place, stretch] = [places[index + 1], stretches[index + 1]]
  if (!place || !stretch?.open) return 0
  if (!next || isAfterFinish(places, index + 1)) return stretch.to - stretch.one
  const [first] = next.segments
  const quiet = first && !first.up ? first.eights - (first.build ?? 0) : 0
  return (next.opening + next.rest + (next.rest > 0 ? 0 : quiet)) * stretch.eightSeconds
}

function isAfterFinish(places: readonly Place[], index: number): boolean {
  const finish = places.findIndex(({ role }) => role === 'finish')
  return finish >= 0 && index > finish
}

/** Nothing that begins before the warm-up is over is harder than the warm-up. */
function underCeiling(planned: readonly Planned[], one: number, eightSeconds: number, warmUpEnd: number, ceiling: number): Planned[] {
  let at = one
  return planned.flatMap((item) => {
    const early = at < warmUpEnd - 1e-6
    at += eightsOf([item]) * eightSeconds
    return early ? keptUnder([item], ceiling) : [item]
  })
}

function outOfTheSaddle(drafts: readonly SongDraft[], { ride, arc, plan, rules }: Drafting, riding: Seconds): SongDraft[] {
  const songs = drafts.map((draft) => {
    const { role } = arc.places[draft.index]!
    const { song } = draft.stretch.section
    const rpm = song?.grid && draft.part.strikes ? (tempoOf(song.grid) * draft.part.strikes) / 2 : null
    const standsLong = role === 'work' && rpm !== null && rpm >= rules.standingMinRpm && rpm <= rules.standingMaxRpm
    return { ...draft, one: draft.stretch.one, mayStand: role !== 'coolDown' && role !== 'finish', standsLong }
  })
  const stood = standUp(ride.level === 'advanced' ? standLong(songs, plan.standingSeconds) : songs, ride.briefingSeconds, riding)
  return stood.map(({ one: _, mayStand: __, standsLong: ___, ...draft }) => draft)
}
