/** Whether two plain values hold the same, whatever the order of their keys; a key given as undefined is no key. */
export function same(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [left, right] = [a, b] as [Record<string, unknown>, Record<string, unknown>]
  return [...new Set([...Object.keys(left), ...Object.keys(right)])].every((key) => same(left[key], right[key]))
}
