/**
 * The number in a trimmed text, or null: digits with one decimal point or comma, an
 * optional sign that may be a hyphen, a true minus or a plus. No exponents, no thousands.
 */
export function parseDecimal(text: string): number | null {
  const match = /^([+\-−–]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)$/.exec(text.trim())
  if (!match) return null
  const size = Number(match[2]!.replace(',', '.'))
  if (!Number.isFinite(size)) return null
  return match[1] !== '' && match[1] !== '+' && size !== 0 ? -size : size
}
