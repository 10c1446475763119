import { isJump, plainMove } from '#engine/cadence/moves.ts'
import { type Block, isSet, type Section } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { type Kind, kindOf } from './passage.ts'

/**
 * What a song is ridden as, from its own blocks and so never otherwise than they are: "climb, seated and standing",
 * "flat with standing runs and side leans", "pushes with recoveries".
 */
export function sayRidden(section: Pick<Section, 'blocks'>): string {
  const blocks = section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))
  const kinds = new Set(blocks.map(kindOf))
  const extras = [
    ...new Set([
      ...EXTRAS.filter(([kind]) => kinds.has(kind) && !(kind === 'tallClimb' && kinds.has('climb') && !kinds.has('push'))).map(
        ([, words]) => words,
      ),
      ...movesIn(section),
    ]),
  ]
  const ground = groundOf(kinds)
  if (ground === null) return extras.length > 0 ? joinWords(extras) : 'recovery'
  return extras.length > 0 ? `${ground} with ${joinWords(extras)}` : ground
}

/** What a song rests on, the strongest first; a climb says how it is ridden, and one in a song of flats is an extra. */
function groundOf(kinds: ReadonlySet<Kind>): string | null {
  if (kinds.has('push')) return null
  if (kinds.has('climb')) return kinds.has('tallClimb') ? 'seated and standing climb' : 'seated climb'
  if (kinds.has('tempo')) return 'tempo'
  if (kinds.has('flush') && !kinds.has('recover')) return kinds.has('stretch') ? 'roll-out and stretch' : 'roll-out'
  if (kinds.has('recover') && ![...kinds].some((kind) => WORK.has(kind)))
    return kinds.has('flat') ? 'recovery, with an easy flat' : 'recovery'
  if (kinds.has('flat') || kinds.has('hold')) return kinds.has('flat') ? 'flat' : 'seated hold'
  return kinds.has('stretch') ? 'stretch' : null
}

const WORK: ReadonlySet<Kind> = new Set(['run', 'jumps', 'move', 'surge', 'push', 'tallFlat', 'tallClimb'])

const EXTRAS: readonly (readonly [Kind, string])[] = [
  ['push', 'pushes'],
  ['surge', 'surges'],
  ['tallClimb', 'standing climbs'],
  ['run', 'standing runs'],
  ['tallFlat', 'standing flats'],
]

/** The moves of a section, each once, as they are called: "jumps", "side leans". */
export const movesIn = ({ blocks }: Pick<Section, 'blocks'>): string[] => [
  ...new Set(blocks.flatMap((item) => (isSet(item) ? item.parts : [item])).flatMap(movesOf)),
]

function movesOf(block: Block): string[] {
  if (!block.move) return kindOf(block) === 'jumps' ? ['jumps'] : []
  const name = plainMove(block.move.name)
  return [isJump(block.move.name) ? 'jumps' : /(?:s|sh|ch|x)$/.test(name) ? `${name}es` : `${name}s`]
}
