import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { rideInText } from '#plan/link/rideInText.ts'
import { shareable } from '#plan/link/shareable.ts'
import { chanceOf } from '#tests/fuzz/chance.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { JOURNEYS } from '#tests/support/journeys.ts'
import { told } from '#tests/support/told.ts'

const ADDRESS = 'https://rides.example/app/#'

const rideAndSeed = () => fc.tuple(arbitraryRide(), fc.nat())

describe('a link that was sent', () => {
  it.each(JOURNEYS)('opens: $name', ({ send }) => {
    fc.assert(
      fc.property(rideAndSeed(), ([ride, seed]) => {
        const link = encodeLink(ride)
        expect(rideInText(send(ADDRESS + link, chanceOf(seed)))).toStrictEqual({ ok: true, ride: shareable(ride), link, others: 0 })
      }),
      { numRuns: 30 },
    )
  })

  it.each(JOURNEYS)('opens after any other journey: $name', ({ send }) => {
    fc.assert(
      fc.property(rideAndSeed(), fc.constantFrom(...JOURNEYS), ([ride, seed], before) => {
        const chance = chanceOf(seed)
        const text = send(before.send(ADDRESS + encodeLink(ride), chance), chance)
        const read = rideInText(text)
        if (!read.ok) throw new Error(`${before.name}: ${told(read.problems[0]!.text)}\n${text}`)
        expect(read.ride).toStrictEqual(shareable(ride))
      }),
      { numRuns: 60, endOnFailure: true },
    )
  })

  it.each(JOURNEYS)('is said to be cut where it was: $name', ({ send }) => {
    fc.assert(
      fc.property(rideAndSeed(), fc.constantFrom(...JOURNEYS), ([ride, seed], after) => {
        const chance = chanceOf(seed)
        const link = encodeLink(ride)
        const cut = link.slice(0, Math.floor((link.length * (15 + chance.below(70))) / 100))
        for (const text of [send(ADDRESS + cut, chance), after.send(send(ADDRESS + cut, chance), chance)]) {
          const read = rideInText(text)
          if (read.ok || read.fault !== 'truncated') throw new Error(`${after.name}: ${read.ok || read.fault}\n${text}`)
        }
      }),
      { numRuns: 40, endOnFailure: true },
    )
  })
})
