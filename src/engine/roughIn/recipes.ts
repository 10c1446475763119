import { plainMove } from '#engine/cadence/moves.ts'
import type { Level, Ride, Terrain } from '#plan/model.ts'
import type { Rpm } from '#units/units.ts'
import type { Style } from './styles.ts'

/** Moves a draft may teach, by the name they are avoided by. */
export type MoveName = 'jump' | 'side lean' | 'press' | 'corner' | 'travel-back'

/** What a louder stretch is ridden as: a pattern, or the song's move as far as it has been taught. */
type Up = string | 'move'

/**
 * How a song of work is put together: the pattern of its quieter stretches, and what its louder ones are ridden as, the
 * first, those between, and the last. Cadences are common practice inside the house rules' bounds; out of the saddle a song
 * that is too fast to stand on is left off the beat.
 */
export interface Recipe {
  id: string
  style: Style
  rpm: { from: Rpm; to: Rpm }
  down: string
  ups: readonly [first: Up, ...more: Up[]]
  /** The louder and quieter stretches are rounds of one length. */
  rounds?: true
  move?: MoveName
  /** What the move is ridden on where that is not its pattern's own terrain. */
  on?: Terrain
  /** Riders stay up from a louder stretch to the next, for as long as the level stands: easy between them. */
  long?: true
  /** Not for newcomers. */
  fromMixed?: true
  /** For the finish alone: its last figure is found in no other song. */
  finish?: true
}

/** As slow and as fast as the house rules let a song be ridden on its beat. */
const SLOW = { from: 0, to: 78 } as const
const STEADY = { from: 72, to: 85 } as const
const BRISK = { from: 80, to: Number.POSITIVE_INFINITY } as const
const FAST = { from: 85, to: Number.POSITIVE_INFINITY } as const

const MOVES: readonly MoveName[] = ['jump', 'side lean', 'press', 'corner', 'travel-back']
const styleOf = (move: MoveName, otherwise: Style): Style => (move === 'jump' ? 'jumps' : otherwise)

/** A hill with a move, and a flat with one: first plain, then with the move, then faster. */
const movesOnHills = MOVES.map(
  (move): Recipe => ({
    id: `hill with ${move}`,
    style: styleOf(move, 'climb'),
    rpm: SLOW,
    down: 'seated-hill',
    ups: ['standing-hill', 'move', 'move'],
    move,
    ...(move !== 'jump' && { on: 'hill' as const }),
  }),
)
const movesOnFlats = MOVES.map(
  (move): Recipe => ({
    id: `run with ${move}`,
    style: styleOf(move, 'run'),
    rpm: STEADY,
    down: 'flat',
    ups: ['run', 'move', 'move'],
    move,
  }),
)

const RECIPES: readonly Recipe[] = [
  { id: 'climb', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['seated-hill', 'standing-hill', 'standing-hill'] },
  { id: 'standing climb', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['standing-hill'], long: true },
  { id: 'held climb', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['hold', 'standing-hill'] },
  { id: 'hill with hovers', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['hover', 'standing-hill'], fromMixed: true },
  { id: 'hill attacks', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['standing-hill'], rounds: true, fromMixed: true },
  ...movesOnHills,
  { id: 'run', style: 'run', rpm: STEADY, down: 'flat', ups: ['run'] },
  { id: 'long run', style: 'run', rpm: STEADY, down: 'flat', ups: ['run'], long: true, fromMixed: true },
  { id: 'held run', style: 'run', rpm: STEADY, down: 'flat', ups: ['hold', 'run'] },
  ...movesOnFlats,
  { id: 'tempo with runs', style: 'run', rpm: { from: 78, to: 85 }, down: 'tempo', ups: ['run'] },
  { id: 'tempo', style: 'tempo', rpm: BRISK, down: 'tempo', ups: ['tempo'] },
  { id: 'held tempo', style: 'tempo', rpm: BRISK, down: 'flat', ups: ['hold', 'tempo'] },
  { id: 'tempo with presses', style: 'tempo', rpm: BRISK, down: 'flat', ups: ['tempo', 'move', 'move'], move: 'press' },
  { id: 'tempo with a climb', style: 'tempo', rpm: BRISK, down: 'tempo', ups: ['tempo', 'standing-hill'] },
  { id: 'flat with climbs', style: 'tempo', rpm: BRISK, down: 'flat', ups: ['standing-hill'] },
  { id: 'surges', style: 'surge', rpm: FAST, down: 'tempo', ups: ['surge'] },
  { id: 'surges and a climb', style: 'surge', rpm: FAST, down: 'flat', ups: ['surge', 'standing-hill'] },
  { id: 'pushes', style: 'push', rpm: FAST, down: 'flat', ups: ['push'], rounds: true },
  { id: 'long pushes', style: 'push', rpm: FAST, down: 'flat', ups: ['push'] },
  { id: 'surge and push', style: 'push', rpm: FAST, down: 'tempo', ups: ['surge', 'push'] },
  { id: 'last climb', style: 'climb', rpm: SLOW, down: 'seated-hill', ups: ['standing-hill', 'standing-surge'], finish: true },
  { id: 'last run', style: 'run', rpm: STEADY, down: 'flat', ups: ['run', 'standing-surge'], finish: true },
  { id: 'last push', style: 'push', rpm: { from: 78, to: BRISK.to }, down: 'flat', ups: ['push', 'standing-surge'], finish: true },
]

/**
 * Counts on which a level meets a move, slowest first (common practice). Presses, corners and travel-backs are advised
 * against by one training body at least and kept from newcomers; a room that does not do a move says so in its own list.
 */
const COUNTS: Record<Level, Partial<Record<MoveName, readonly number[]>>> = {
  beginner: { jump: [16] },
  mixed: { jump: [16, 8], 'side lean': [8], press: [8], corner: [16, 8] },
  advanced: { jump: [8, 4], 'side lean': [8, 4], press: [8, 4], corner: [16, 8], 'travel-back': [8, 4] },
}

const PATTERN_OF: Record<Exclude<MoveName, 'jump'>, string> = {
  'side lean': 'leans',
  press: 'presses',
  corner: 'corners',
  'travel-back': 'travel-backs',
}

/** What a level rides of a move at a lesson, counted from 0: its pattern, and the counts. */
export function lessonOf(move: MoveName, level: Level, lesson: number): { pattern: string; counts: number } {
  const counts = COUNTS[level][move]!
  const on = counts[Math.min(lesson, counts.length - 1)]!
  return { pattern: move === 'jump' ? `jumps-${on}` : PATTERN_OF[move], counts: on }
}

/**
 * The recipes a level and a room ride at a cadence; without one, off the beat, those without moves. Those for the finish
 * are asked for apart, and whatever they end with is in none of the others.
 */
export function recipesFor(
  rpm: Rpm | null,
  { level, avoidMoves = [] }: Pick<Ride, 'level' | 'avoidMoves'>,
  counted: boolean,
  finish: boolean,
): Recipe[] {
  const avoided = new Set(avoidMoves.map(plainMove))
  const does = (move: MoveName) =>
    COUNTS[level][move] !== undefined && !avoided.has(plainMove(move)) && !(move === 'side lean' && avoided.has('lean'))
  const hovers = !avoided.has('hover') && !avoided.has('hovering')
  return RECIPES.filter(
    (recipe) =>
      (recipe.finish === true) === finish &&
      (rpm === null || (rpm >= recipe.rpm.from - 1e-6 && rpm <= recipe.rpm.to + 1e-6)) &&
      (!recipe.fromMixed || level !== 'beginner') &&
      (!recipe.move || (does(recipe.move) && rpm !== null && counted)) &&
      (hovers || !recipe.ups.includes('hover')),
  )
}

/** Whether riders stay up from one louder stretch to the next in a recipe. */
export const isLong = (id: string): boolean => RECIPES.some((recipe) => recipe.id === id && recipe.long === true)

/** What the louder stretch at a place of so many is ridden as. */
export function upAt({ ups }: Recipe, place: number, of: number): Up {
  if (place === of - 1) return ups.at(-1)!
  return ups[Math.min(place, Math.max(0, ups.length - 2))]!
}
