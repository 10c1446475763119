import { plainMove } from '#engine/cadence/moves.ts'
import { type Block, type Item, isSet, type Terrain } from '#plan/model.ts'
import type { FigureName } from '#ui/figures/Figure.tsx'

/** Figures of moves, by the trade's name for them. */
const MOVES: Record<string, FigureName> = {
  jump: 'jumps',
  lean: 'lean',
  'side lean': 'lean',
  'travel-back': 'travelBack',
  press: 'press',
  pulse: 'pulse',
  corner: 'corner',
}

const SEATED: Record<Terrain, FigureName> = {
  flat: 'flat',
  tempo: 'tempo',
  hill: 'hill',
  run: 'run',
  jumps: 'jumps',
  surge: 'surge',
  push: 'push',
  recover: 'recover',
  flush: 'flush',
  stretch: 'stretch',
  hold: 'hold',
}

/** The one figure that tells a block apart at a glance: its move, else how the body is when it is up, else its terrain. */
export function blockFigure({ move, terrain, posture }: Pick<Block, 'move' | 'terrain' | 'posture'>): FigureName {
  const moving = move && MOVES[plainMove(move.name)]
  if (moving) return moving
  if (posture === 'seated') return SEATED[terrain]
  return posture === 'standing' && terrain === 'run' ? 'run' : posture
}

/** Of the hardest block among them. */
export function figureOfItems(items: readonly Item[]): FigureName {
  const blocks = items.flatMap((item) => (isSet(item) ? item.parts : [item]))
  return blockFigure(blocks.reduce((hardest, block) => (block.effort.to > hardest.effort.to ? block : hardest)))
}
