import type { NewId } from '#plan/copies.ts'
import type { Move, Ride } from '#plan/model.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { blockFromPattern, moveNameOf, PATTERNS } from '#plan/patterns/patterns.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { LINE_MOVES, type LineMove } from './lexicon.ts'
import type { LineContext, LineFields } from './lineTypes.ts'
import type { Said } from './saidIn.ts'

/** The name a move is stored under in this ride. */
const storedMove = (move: LineMove, ride: Ride): string => moveNameOf(move, ride)

/** The move of a stored name that a line can say. */
export const lineMoveOf = (name: string, ride: Ride): LineMove | undefined => LINE_MOVES.find((move) => storedMove(move, ride) === name)

/** The pattern nearest to what is said: of that terrain, then that move, its counts, that posture; undefined where nothing names a kind of block. */
export function patternOf({ terrain, posture, move, moveCounts }: Said): BlockPattern | undefined {
  if (terrain === undefined && (move === undefined || move === 'none') && posture !== 'hovering') return undefined
  const wanted = move === 'none' ? undefined : move
  let best: { pattern: BlockPattern; fit: number } | undefined
  for (const pattern of PATTERNS) {
    if (terrain !== undefined && pattern.terrain !== terrain) continue
    if (terrain === undefined && wanted !== undefined && pattern.move?.name !== wanted) continue
    const fit =
      8 * Number(pattern.move?.name === wanted) +
      4 * Number(posture === undefined ? false : pattern.posture === posture) +
      2 * Number(moveCounts !== undefined && pattern.move?.counts === moveCounts)
    if (!best || fit > best.fit) best = { pattern, fit }
  }
  return best?.pattern
}

const NO_ID: NewId = () => 'line'

/**
 * All that a line says of a block, with what a pattern of that kind has where it says nothing: terrain, posture, hands,
 * cadence, and move. Length, resistance, and effort are only there where they are said. Null where nothing names a kind of block.
 */
export function resolved(said: Said, context: LineContext): LineFields | null {
  const pattern = patternOf(said)
  if (!pattern) return null
  const made = blockFromPattern(pattern, context.ride, context.section, NO_ID)
  const move = moveOf(said, made.move, context)
  const length = said.length ?? lengthOfTimes(said, move, context)
  const cadence = said.cadence === 'none' ? undefined : (said.cadence ?? made.cadence)
  return {
    terrain: said.terrain ?? made.terrain,
    posture: said.posture ?? made.posture,
    hands: said.hands ?? made.hands,
    ...(length && { length }),
    ...(said.resistance && { resistance: said.resistance }),
    ...(said.effort && { effort: said.effort }),
    ...(cadence !== undefined && { cadence }),
    ...(said.strikesPerBeat !== undefined && { strikesPerBeat: said.strikesPerBeat }),
    ...(said.lead && { lead: said.lead }),
    ...(move && { move }),
    ...(said.allOut && { allOut: true as const }),
    ...(said.water && { water: true as const }),
    ...(said.walk && { walk: true as const }),
  }
}

/** Counts of moves no pattern has, where none are said (common practice). */
const USUAL_COUNTS = 8

function moveOf(said: Said, made: Move | undefined, { ride }: LineContext): Move | undefined {
  const { move, moveCounts, side, then } = said
  if (move === 'none') return undefined
  const name = move === undefined ? made?.name : storedMove(move, ride)
  if (name === undefined) return undefined
  const asMade = made?.name === name ? made : undefined
  // Said sides take the place of the pattern's, both together.
  const kept: Pick<Said, 'side' | 'then'> = side || then || !asMade ? said : asMade
  return {
    name,
    counts: moveCounts ?? asMade?.counts ?? USUAL_COUNTS,
    ...(kept.side && { side: kept.side }),
    // biome-ignore lint/suspicious/noThenProperty: a word, never a function, so nothing takes a move for a promise
    ...(kept.then && { then: kept.then }),
  }
}

/** "x8": a move so often, a jump being up and down; without a move so many eights. */
function lengthOfTimes({ times, move }: Said, done: Move | undefined, { section, ride }: LineContext) {
  if (times === undefined) return undefined
  const eight = eightOf(section.song?.grid)
  const figure = done && move !== undefined ? done.counts * (done.name === storedMove('jump', ride) ? 2 : 1) : eight
  const counts = Math.round(times * figure)
  return counts >= 1 && counts <= 20_000 ? { counts } : undefined
}
