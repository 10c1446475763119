/**
 * Two lineages as one that keeps the order of both. Where they tell nothing of each other's
 * entries, the first one's go first.
 */
export function joinLineages(first: readonly string[], second: readonly string[]): string[] {
  const joined: string[] = []
  const [a, b] = [[...new Set(first)], [...new Set(second)]]
  while (a.length > 0 || b.length > 0) {
    // An entry the other list has further down comes after what stands there before it.
    const next = a.length > 0 && !b.slice(1).includes(a[0]!) ? a[0]! : b.length > 0 && !a.slice(1).includes(b[0]!) ? b[0]! : (a[0] ?? b[0])!
    joined.push(next)
    for (const list of [a, b]) if (list.includes(next)) list.splice(list.indexOf(next), 1)
  }
  return joined
}
