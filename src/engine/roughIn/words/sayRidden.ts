import { isJump, plainMove } from '#engine/cadence/moves.ts'
import { type Block, isSet, type Section } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'
import { type Kind, kindOf } from './passage.ts'

/** What a song rests on. */
type Ground =
  | 'climb'
  | 'seatedClimb'
  | 'tempo'
  | 'rollOut'
  | 'rollOutAndStretch'
  | 'recovery'
  | 'recoveryWithFlat'
  | 'flat'
  | 'hold'
  | 'stretch'

/**
 * What a song is ridden as, from its own blocks and so never otherwise than they are: "climb, seated and standing",
 * "flat with standing runs and side leans", "pushes with recoveries".
 */
export function sayRidden(section: Pick<Section, 'blocks'>): Text {
  const blocks = section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))
  const kinds = new Set(blocks.map(kindOf))
  const extras = [
    ...EXTRAS.filter((kind) => kinds.has(kind) && !(kind === 'tallClimb' && kinds.has('climb') && !kinds.has('push'))).map((kind) =>
      say('drafts.extra', { kind }),
    ),
    ...movesIn(section).map(sayMove),
  ]
  const ground = groundOf(kinds)
  return say('drafts.ridden', { ground: ground ?? (extras.length > 0 ? null : 'recovery'), extras })
}

/** What a song rests on, the strongest first; a climb says how it is ridden, and one in a song of flats is an extra. */
function groundOf(kinds: ReadonlySet<Kind>): Ground | null {
  if (kinds.has('push')) return null
  if (kinds.has('climb')) return kinds.has('tallClimb') ? 'climb' : 'seatedClimb'
  if (kinds.has('tempo')) return 'tempo'
  if (kinds.has('flush') && !kinds.has('recover')) return kinds.has('stretch') ? 'rollOutAndStretch' : 'rollOut'
  if (kinds.has('recover') && ![...kinds].some((kind) => WORK.has(kind))) return kinds.has('flat') ? 'recoveryWithFlat' : 'recovery'
  if (kinds.has('flat') || kinds.has('hold')) return kinds.has('flat') ? 'flat' : 'hold'
  return kinds.has('stretch') ? 'stretch' : null
}

const WORK: ReadonlySet<Kind> = new Set(['run', 'jumps', 'move', 'surge', 'push', 'tallFlat', 'tallClimb'])

const EXTRAS = ['push', 'surge', 'tallClimb', 'run', 'tallFlat'] as const

/** The moves of a section, each once, by what they are looked up by. */
export const movesIn = ({ blocks }: Pick<Section, 'blocks'>): string[] => [
  ...new Set(blocks.flatMap((item) => (isSet(item) ? item.parts : [item])).flatMap(movesOf)),
]

function movesOf(block: Block): string[] {
  if (!block.move) return kindOf(block) === 'jumps' ? ['jump'] : []
  return [isJump(block.move.name) ? 'jump' : plainMove(block.move.name)]
}

/** A move as the page has it: "jumps", "side leans". */
export const sayMove = (move: string): Text => say('drafts.moves', { move })
