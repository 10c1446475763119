import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { handbookRest } from '#engine/recovery/handbookRest.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  work_s: number
  rest_s: number
}

interface Row {
  time_s: [number, number | null]
  rest_per_work: [number, number]
}

/** Rest for each second of work, lowest and highest. */
function restPerWork(work: number): [number, number] {
  const { low, high } = handbookRest(work)!
  return [low / work, high / work]
}

/** The table read at the ends of a row and in its middle; the longest row has no end, and three minutes belong to the one before it. */
function rowOf(_: Inputs, { expected }: { expected: unknown }): Row {
  const { time_s, rest_per_work } = expected as Row
  const [from, to] = [time_s[0], time_s[1] ?? 3600]
  const inside = [time_s[1] === null ? from + 1 : from, (from + to) / 2, to]
  for (const work of inside) for (const i of [0, 1]) expect(restPerWork(work)[i]).toBeCloseTo(rest_per_work[i]!, 12)
  // Outside it the table says something else, or nothing.
  if (handbookRest(from - 1)) expect(restPerWork(from - 1)).not.toEqual(rest_per_work)
  if (time_s[1] !== null) expect(restPerWork(to + 1)).not.toEqual(rest_per_work)
  return { time_s, rest_per_work }
}

/** A set of eight rounds of work and rest, as a class plays it. */
function ratioOf({ work_s, rest_s }: Inputs): number | null {
  const parts = [
    aBlock('work', { ...inSeconds(work_s), effort: { from: 9, to: 9 } }),
    aBlock('rest', { ...inSeconds(rest_s), effort: { from: 3, to: 3 } }),
  ]
  return computeRide({ ...smallRide(), sections: [aSection('s', { blocks: [aSet('set', parts, { rounds: 8 })] })] }).sets[0]!.ratio
}

checkRows('work to rest', rows, {
  'nsca.rest': ({ work_s }: Inputs) => {
    const rest = handbookRest(work_s)!
    return [rest.low, rest.high]
  },
  'nsca.': rowOf,
  'ratio.': ratioOf,
})

describe('a class', () => {
  it.each([10, 30, 45, 120])('asks for the least rest of the handbook after %d seconds all out', (work) => {
    const hard = { ...inSeconds(work), effort: { from: 10, to: 10 }, allOut: true }
    const { bouts } = computeRide(blocksOnly([hard, inSeconds(600)])).recovery
    expect(bouts[0]!.need).toBeCloseTo(handbookRest(work)!.low, 9)
  })
})
