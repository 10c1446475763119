import { formatNumber } from '#units/formatNumber.ts'
import type { Bpm } from '#units/units.ts'

/** From where to where songs are counted; what is heard in a file is looked for between the same two (common practice). */
const USUAL: Readonly<{ from: Bpm; to: Bpm }> = { from: 48, to: 215 }

/**
 * What to think of a tempo few songs are counted at, in one sentence: it is often half or double
 * of what the legs follow. Null within the usual 48 to 215 beats a minute.
 */
export function sayTempo(bpm: Bpm): string | null {
  const [than, factor] = bpm < USUAL.from ? ['slower', 2] : ['faster', 0.5]
  if (bpm >= USUAL.from && bpm <= USUAL.to) return null
  const other = bpm * factor
  const meant = other >= USUAL.from && other <= USUAL.to ? `; is it ${formatNumber(other, 2)}?` : '.'
  return `${formatNumber(bpm, 2)} is ${than} than songs are counted, ${USUAL.from} to ${USUAL.to} bpm${meant}`
}
