import type { Decisions } from './decisions.ts'
import type { FieldDifference } from './difference.ts'
import type { Spread } from './spread.ts'
import { originOf } from './threeWay.ts'

/** The values of one thing in the three rides; no base where it is not known or had no such thing. */
interface Values {
  base: Spread | undefined
  mine: Spread
  theirs: Spread
}

/** Decides every field of one thing: what one side changed is taken, what both changed alike once, the rest is a conflict. */
export function mergeFields(
  { base = {}, mine, theirs }: Values,
  where: { id: string } & Pick<FieldDifference, 'of' | 'place'>,
  decisions: Decisions,
): Spread {
  const merged: Spread = {}
  for (const field of new Set([...Object.keys(mine), ...Object.keys(theirs), ...Object.keys(base)])) {
    const by = originOf(base[field], mine[field], theirs[field])
    const difference = {
      kind: 'field' as const,
      ...where,
      id: `${where.id} ${field}`,
      field,
      base: base[field],
      mine: mine[field],
      theirs: theirs[field],
    }
    if (by === 'both') decisions.note({ ...difference, by })
    const side = by === 'none' || by === 'both' ? 'mine' : decisions.decide({ ...difference, by })
    const value = (side === 'mine' ? mine : theirs)[field]
    if (value !== undefined) merged[field] = value
  }
  return merged
}
