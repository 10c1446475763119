/**
 * The longest common subsequence of two lists without repeats; of several as long, the one
 * that comes first when compared entry by entry. It is therefore the same whichever list is
 * named first. Time and room: the product of the lengths, which are at most 400.
 */
export function longestCommon(a: readonly string[], b: readonly string[]): string[] {
  const inB = new Map(b.map((entry, index) => [entry, index]))
  const common = a.flatMap((entry, index) => {
    const at = inB.get(entry)
    return at === undefined ? [] : [{ entry, index, at }]
  })
  // Length of the longest run of common entries that starts with each one.
  const lengths = new Array<number>(common.length).fill(1)
  for (let i = common.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < common.length; j++) {
      if (common[j]!.at > common[i]!.at) lengths[i] = Math.max(lengths[i]!, lengths[j]! + 1)
    }
  }
  const found: string[] = []
  let last = { index: -1, at: -1 }
  for (let left = Math.max(0, ...lengths); left > 0; left--) {
    const next = common
      .filter(({ index, at }, i) => lengths[i] === left && index > last.index && at > last.at)
      .reduce((first, other) => (other.entry < first.entry ? other : first))
    found.push(next.entry)
    last = next
  }
  return found
}
