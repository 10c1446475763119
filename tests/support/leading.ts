import fc from 'fast-check'
import { computeRide } from '#engine/computeRide.ts'
import { type Proposal, weighCuts } from '#engine/leading/cuts/weighCuts.ts'
import type { LeadAct, LeadEvent, LeadLog } from '#engine/leading/leadLog.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { Plan } from '#engine/leading/led.ts'
import { type LedClass, ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import type { Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { finished } from './finished.ts'
import { aBlock, aSection, aSet, aSong, inSeconds } from './smallRide.ts'

export const planOf = (ride: Ride): Plan => ({ ride, report: computeRide(ride) })

/** A class that began on time, with these acts. */
export const logOf = (...events: LeadEvent[]): LeadLog => ({ slotFrom: 0, startedAt: 0, events })

/** A class that began so many seconds late. */
export const lateLog = (late: number, ...events: LeadEvent[]): LeadLog => ({ slotFrom: 0, startedAt: late * 1000, events })

/** The state of a class at a time, from its log: what had happened by then decides, nothing later. */
export const leadStateAt = (plan: Plan, log: LeadLog, at: number): LeadState => stateOf(ledClass(plan, log, at), at)

/** What to leave out, all steps of weighing it at once. */
export const proposeCuts = (led: LedClass, at: number): Proposal[] => finished(weighCuts(led, at))

/**
 * Four sections at 120 beats a minute, an eight in four seconds: "one" (0–96 s: a, b, c of 8 eights), two seconds of
 * lead-in, "set" (98–194 s: 3 rounds of push 4 and ease 4 eights), "clock" without music (194–254 s: x, y of 30 s), and
 * "last" (254–286 s: z of 8 eights).
 */
export function leadRide(): Ride {
  const counts = (eights: number) => ({ length: { counts: eights * 8 } })
  const song = (id: string, eights: number) => aSong(id, { grid: gridOfTempo(120), lengthSeconds: eights * 4 })
  return {
    ...blankRide({ newId: () => 'ride', title: 'led ride' }),
    slotMinutes: 5,
    sections: [
      aSection('one', { song: song('first', 24), lead: 'left', blocks: [aBlock('a'), aBlock('b'), aBlock('c')] }),
      aSection('set', {
        song: song('second', 24),
        leadInSeconds: 2,
        blocks: [aSet('waves', [aBlock('push', counts(4)), aBlock('ease', counts(4))])],
      }),
      aSection('clock', { blocks: [aBlock('x', inSeconds(30)), aBlock('y', inSeconds(30))] }),
      aSection('last', { song: song('third', 8), blocks: [aBlock('z')] }),
    ],
  }
}

const plainActs: LeadAct[] = [
  { kind: 'one' },
  { kind: 'next' },
  { kind: 'back' },
  { kind: 'again' },
  { kind: 'hold' },
  { kind: 'go' },
  { kind: 'skipSong' },
  { kind: 'breakOff' },
]

const arbitraryCut = fc.oneof(
  fc.record({ kind: fc.constant('song' as const), section: fc.nat(4) }),
  fc.record({ kind: fc.constant('outro' as const), section: fc.nat(4), counts: fc.constantFrom(8, 32) }),
  fc.record({ kind: fc.constant('phrase' as const), section: fc.nat(4), block: fc.nat(20), counts: fc.constantFrom(8, 32) }),
)

/** Presses as they may come: at any time, in their order, sensible or not. */
export const arbitraryEvents = (until: number): fc.Arbitrary<LeadEvent[]> =>
  fc
    .array(
      fc.record({
        at: fc.double({ min: 0, max: until, noNaN: true }),
        act: fc.oneof(
          { weight: 4, arbitrary: fc.constantFrom(...plainActs) },
          { weight: 1, arbitrary: arbitraryCut.map((cut): LeadAct => ({ kind: 'cut', cuts: [cut] })) },
        ),
      }),
      { maxLength: 12 },
    )
    .map((presses) => presses.sort((a, b) => a.at - b.at).map(({ at, act }) => ({ ...act, at })))
