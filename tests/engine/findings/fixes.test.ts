import fc from 'fast-check'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/parseRide.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'

/** Rules about spoken words and about modelled riders are held to account beside what they compute, in cues/ and demand/. */
const ELSEWHERE = new Set([
  'intentAgainstDemand',
  'beyondCalibration',
  'breathlessWords',
  'cueCollisions',
  'cueLate',
  'cueNumbers',
  'cueRoom',
  'hardBoutWords',
  'moveWithoutForm',
  'quietKept',
  'resistanceFirst',
  'tooMuchTalk',
  'unannounced',
])

it('every fix offered on any ride changes it, leaves one that opens, and takes its finding away or makes it smaller', () => {
  fc.assert(
    fc.property(arbitraryRide({ sections: 3, items: 4 }), (ride) => {
      for (const finding of computeRide(ride).findings.filter(({ rule }) => !ELSEWHERE.has(rule) && !rule.startsWith('reserveRunsOut'))) {
        for (const { label, command } of finding.fixes) {
          const next = command.apply(ride)
          expect(next, `${finding.id}: “${label}” changes nothing`).not.toBe(ride)
          expect(parseRide(next).ok, `${finding.id}: “${label}” breaks the ride`).toBe(true)
          const left = computeRide(next).findings.find(({ id }) => id === finding.id)
          const told = left && `${finding.id}: “${label}” leaves ${left.amount} of ${finding.amount}: ${finding.text} → ${left.text}`
          if (left) expect(left.amount ?? 1, told).toBeLessThan(finding.amount ?? 1)
        }
      }
    }),
    { numRuns: 60 },
  )
})
