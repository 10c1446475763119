import { type Counts, EIGHT } from '#units/units.ts'
import { formatEights } from './formatEights.ts'
import { parseDecimal } from './parseDecimal.ts'
import { type Parsed, parsed, refused } from './parsed.ts'

/**
 * A length in counts from eights and counts: "8", "8 eights", "8+4", "8 eights + 4",
 * "36 counts", "36c", "2 phrases", "8½" (half an eight is four counts). Always at least one
 * whole count. In three and six pass 6: a bare number is then sixes.
 */
export function parseEights(text: string, unit: Counts = EIGHT): Parsed<Counts> {
  const counts = readCounts(text.trim().toLowerCase().replace(/½/g, '.5'), unit)
  const name = unit === 6 ? 'sixes' : 'eights'
  if (counts === null) return refused(`Write ${name}, such as 8, or ${name} and counts, such as 8+4, or 36 counts.`)
  if (!Number.isInteger(counts)) {
    const below = formatEights(Math.floor(counts), unit)
    return refused(`A length is whole counts: the nearest are ${below} and ${formatEights(Math.ceil(counts), unit)}.`)
  }
  return counts < 1 ? refused('A length is at least one count.') : parsed(counts)
}

function readCounts(text: string, unit: Counts): number | null {
  const counts = /^([\d.,]+)\s*(?:c|cts?|counts?|beats?)$/.exec(text)
  if (counts) return parseDecimal(counts[1]!)
  const phrases = /^([\d.,]+)\s*phrases?$/.exec(text)
  if (phrases) return times(parseDecimal(phrases[1]!), unit * 4)
  const eights = /^([\d.,]+)\s*(?:×\s*[68]|eights?|sixes|six|8s|6s)?(?:\s*\+\s*(\d+)\s*(?:c|counts?|beats?)?)?$/.exec(text)
  if (!eights) return null
  const whole = times(parseDecimal(eights[1]!), unit)
  return whole === null ? null : whole + Number(eights[2] ?? 0)
}

const times = (value: number | null, factor: number): number | null => (value === null ? null : Number((value * factor).toFixed(6)))
