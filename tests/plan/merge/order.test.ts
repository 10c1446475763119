import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { longestCommon } from '#plan/merge/longestCommon.ts'

const list = fc.shuffledSubarray(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'])

const isWithin = (part: readonly string[], whole: readonly string[]): boolean => {
  const places = part.map((entry) => whole.indexOf(entry))
  return places.every((place, index) => place > (places[index - 1] ?? -1))
}

/** Every part of a list that keeps its order. */
function parts(whole: readonly string[]): string[][] {
  const found: string[][] = [[]]
  for (const entry of whole) found.push(...found.map((part) => [...part, entry]))
  return found
}

describe('the longest common subsequence', () => {
  it('is the longest, the first of as long ones, and the same from either side, against trying every one', () => {
    fc.assert(
      fc.property(list, list, (a, b) => {
        const found = longestCommon(a, b)
        const common = parts(a).filter((part) => isWithin(part, b))
        const longest = Math.max(...common.map(({ length }) => length))
        const first = common
          .filter(({ length }) => length === longest)
          .map((part) => part.join(''))
          .toSorted()[0]
        expect(found.join('')).toBe(first)
        expect(longestCommon(b, a)).toEqual(found)
      }),
      { numRuns: 300 },
    )
  })
})
