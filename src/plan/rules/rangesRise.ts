import { RULES } from '#plan/document/messages.ts'
import { checkpointOf } from '#plan/ledger/applyCall.ts'
import type { Block, Section } from '#plan/model.ts'
import type { StepRange } from '#units/units.ts'
import { eachBlock, type Fault, type Path, type Rule } from './rule.ts'

/** Whatever runs from low to high, or from early to late, does so. */
export const rangesRise: Rule = (ride) => [
  ...ride.sections.flatMap((section, s) => stretchesOf(section, ['sections', s])),
  ...[...eachBlock(ride)].flatMap(({ block, path }) => rangesOf(block, path)),
]

function rangesOf({ resistance, minEights, maxEights }: Block, path: Path): Fault[] {
  const faults: Fault[] = []
  const at = [...path, 'resistance']
  const checkpoint = checkpointOf(resistance)
  if (checkpoint) faults.push(...crossed(checkpoint, [...at, 'checkpoint']))
  if (resistance.kind === 'byFeel') faults.push(...crossed(resistance, at))
  if (resistance.kind === 'total') {
    const { from, to, aim } = resistance
    faults.push(...crossed(resistance, at))
    if (from <= to && aim !== undefined && (aim < from || aim > to))
      faults.push({ path: [...at, 'aim'], predicate: RULES.aimOutside(from, to), found: aim })
  }
  if (minEights !== undefined && maxEights !== undefined && minEights > maxEights)
    faults.push({ path: [...path, 'maxEights'], predicate: RULES.eightsCrossed(minEights, maxEights) })
  return faults
}

function crossed({ from, to, orMore }: StepRange, path: Path): Fault[] {
  if (from > to) return [{ path: [...path, 'to'], predicate: RULES.lowAboveHigh(from, to) }]
  return orMore && from !== to ? [{ path: [...path, 'to'], predicate: RULES.endOfOpen(from, to) }] : []
}

function stretchesOf({ inCount = 0, outCount, song }: Section, path: Path): Fault[] {
  const faults: Fault[] = []
  if (outCount !== undefined && outCount <= inCount)
    faults.push({ path: [...path, 'outCount'], predicate: RULES.outBeforeIn(inCount, outCount) })
  for (const [q, stretch] of (song?.quiet ?? []).entries())
    if (stretch.to <= stretch.from) faults.push({ path: [...path, 'song', 'quiet', q, 'to'], predicate: RULES.emptyStretch })
  return faults
}
