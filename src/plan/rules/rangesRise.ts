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
      faults.push({ path: [...at, 'aim'], wrong: { problem: 'aimOutside', low: from, high: to }, found: aim })
  }
  if (minEights !== undefined && maxEights !== undefined && minEights > maxEights)
    faults.push({ path: [...path, 'maxEights'], wrong: { problem: 'eightsCrossed', low: minEights, high: maxEights } })
  return faults
}

function crossed({ from, to, orMore }: StepRange, path: Path): Fault[] {
  if (from > to) return [{ path: [...path, 'to'], wrong: { problem: 'lowAboveHigh', low: from, high: to } }]
  return orMore && from !== to ? [{ path: [...path, 'to'], wrong: { problem: 'endOfOpen', low: from, high: to } }] : []
}

function stretchesOf({ inCount = 0, outCount, song }: Section, path: Path): Fault[] {
  const faults: Fault[] = []
  if (outCount !== undefined && outCount <= inCount)
    faults.push({ path: [...path, 'outCount'], wrong: { problem: 'outBeforeIn', from: inCount, to: outCount } })
  for (const [q, stretch] of (song?.quiet ?? []).entries())
    if (stretch.to <= stretch.from) faults.push({ path: [...path, 'song', 'quiet', q, 'to'], wrong: { problem: 'emptyStretch' } })
  return faults
}
