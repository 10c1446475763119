/**
 * A plain number for reading and for typing again: at most `decimals` places, no trailing
 * zeros, a true minus. 127.60 → "127.6"; −2 → "−2".
 */
export function formatNumber(value: number, decimals = 2): string {
  const rounded = Number(value.toFixed(decimals))
  return `${rounded < 0 ? '−' : ''}${Math.abs(rounded)}`
}
