import { type Counts, EIGHT } from '#units/units.ts'
import { parseDecimal } from './parseDecimal.ts'
import { type Parsed, parsed, refused } from './parsed.ts'

/**
 * A length in counts from eights and counts: "8", "8 eights", "8+4", "8 eights + 4",
 * "36 counts", "36 Zählzeiten", "36c", "2 phrases", "8½" (half an eight is four counts). Always at least one
 * whole count. In three and six pass 6: a bare number is then sixes.
 */
export function parseEights(text: string, unit: Counts = EIGHT): Parsed<Counts> {
  const counts = readCounts(text.trim().toLowerCase().replace(/½/g, '.5'), unit)
  if (counts === null) return refused({ kind: 'notEights', unit })
  if (!Number.isInteger(counts)) {
    return refused({ kind: 'partOfCount', below: Math.floor(counts), above: Math.ceil(counts), unit })
  }
  return counts < 1 ? refused({ kind: 'noCount' }) : parsed(counts)
}

function readCounts(text: string, unit: Counts): number | null {
  const counts = /^([\d.,]+)\s*(?:c|cts?|counts?|beats?|zählzeit(?:en)?)$/.exec(text)
  if (counts) return parseDecimal(counts[1]!)
  const phrases = /^([\d.,]+)\s*phrase[ns]?$/.exec(text)
  if (phrases) return times(parseDecimal(phrases[1]!), unit * 4)
  const eights =
    /^([\d.,]+)\s*(?:×\s*[68]|eights?|sixes|six|8s|6s|achter|sechser)?(?:\s*\+\s*(\d+)\s*(?:c|counts?|beats?|zählzeit(?:en)?)?)?$/.exec(
      text,
    )
  if (!eights) return null
  const whole = times(parseDecimal(eights[1]!), unit)
  return whole === null ? null : whole + Number(eights[2] ?? 0)
}

const times = (value: number | null, factor: number): number | null => (value === null ? null : Number((value * factor).toFixed(6)))
