import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { sayDifference } from '#features/merging/words/sayDifference.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Ride } from '#plan/model.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { SEED } from '#tests/support/seed.ts'
import { told } from '#tests/support/told.ts'
import { type Chance, chanceOf } from './chance.ts'
import { RIDES } from './corpus.ts'
import { hostileLink } from './hostileLink.ts'

const MERGES = 60

it('a ride of a hostile link is merged into one that opens, with every difference in words, whatever is chosen', () => {
  const broken: { seed: number; what: string }[] = []
  let [merged, seed] = [0, SEED]
  for (; merged < MERGES; seed++) {
    const chance = chanceOf(seed)
    const theirs = decodeLink(hostileLink(chance))
    if (!theirs.ok) continue
    merged++
    try {
      mergeInto(theirs.ride, chance)
    } catch (error) {
      broken.push({ seed, what: error instanceof Error ? error.message : String(error) })
    }
  }
  expect(broken).toEqual([])
})

function mergeInto(theirs: Ride, chance: Chance): void {
  const mine = chance.pick(RIDES)
  const base = chance.oneIn(3) ? null : chance.pick(RIDES)
  const first = mergeRides(base, mine, theirs)
  const all = [...first.conflicts, ...first.taken, ...first.own]
  const choices = Object.fromEntries(all.map(({ id }) => [id, chance.oneIn(2) ? ('mine' as const) : ('theirs' as const)]))
  const merge = mergeRides(base, mine, theirs, choices)
  const parsed = parseRide(merge.merged)
  if (!parsed.ok) throw new Error(`It does not open: ${told(parsed.problems[0]!.text)}`)
  const reports = { mine: computeRide(mine), theirs: computeRide(theirs) }
  computeRide(merge.merged)
  for (const difference of [...merge.conflicts, ...merge.taken, ...merge.own]) {
    const said = sayDifference(difference, { base, mine, theirs, bike: merge.merged.bike, reports })
    if (said.what === '') throw new Error(`Nothing is said of ${difference.id}.`)
  }
}
