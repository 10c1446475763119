import fc from 'fast-check'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { told } from '#tests/support/told.ts'

/** Rules about the plan itself. Those about words, riders and leaders are held to the same beside what they compute. */
const PLAN_RULES = new Set([
  'openTail',
  'beyondOut',
  'deepCrossfade',
  'outPastSong',
  'nothingRidden',
  'noSections',
  'noBlocks',
  'crookedBlock',
  'slotOverrun',
  'slotUnused',
  'warmUp',
  'coolDown',
  'workShare',
  'recoveryDebt',
  'recoveriesShrink',
  'longStanding',
  'knobLoose',
  'knobTight',
  'checkpointMissed',
  'checkpointLoose',
  'underBase',
  'allOff',
  'lightStanding',
  'lightPush',
  'lightMove',
  'fastLegs',
  'largestAdded',
  'easyTotal',
  'wideSpread',
  'endsHeavy',
  'cadenceBounds',
  'cadenceUnknown',
  'offBeatCadence',
  'footFlips',
  'noFootOnOne',
  'leadOpen',
  'leadUnset',
  'sideBalance',
  'handsForPosture',
  'walkMoment',
  'water',
  'hearing',
  'briefing',
])

it('every fix of the plan offered on any ride changes it, leaves one that opens, and takes its finding away or makes it smaller', () => {
  fc.assert(
    fc.property(arbitraryRide({ sections: 3, items: 4 }), (ride) => {
      for (const finding of computeRide(ride).findings.filter(({ rule }) => PLAN_RULES.has(rule))) {
        for (const { label, command } of finding.fixes) {
          const next = command.apply(ride)
          expect(next, `${finding.id}: “${told(label)}” changes nothing`).not.toBe(ride)
          expect(parseRide(next).ok, `${finding.id}: “${told(label)}” breaks the ride`).toBe(true)
          const left = computeRide(next).findings.find(({ id }) => id === finding.id)
          const rest =
            left && `${finding.id}: “${told(label)}” leaves ${left.amount} of ${finding.amount}: ${told(finding.text)} → ${told(left.text)}`
          if (left) expect(left.amount ?? 1, rest).toBeLessThan(finding.amount ?? 1)
        }
      }
    }),
    { numRuns: 60 },
  )
})
