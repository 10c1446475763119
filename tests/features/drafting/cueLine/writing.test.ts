import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import {
  type At,
  afterKeeping,
  cueAt,
  cueMoved,
  momentOf,
  nextBlock,
  opening,
  placeOfWords,
  sameMoment,
  stepOn,
  wordsMoved,
} from '#features/drafting/cueLine/writing.ts'
import { startLead } from '#plan/cueStart.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'

const cue = (id: string, moment: Cue['moment'], lead: Cue['lead'], text = 'Now.'): Cue => ({ id, moment, lead, text })
const planWith = (cues: readonly Cue[]) => {
  const ride: Ride = {
    ...smallRide(),
    briefingSeconds: 0,
    sections: [
      aSection('s', { song: aSong('tune'), blocks: [aBlock('a'), aBlock('b', { cues }), aSet('set', [aBlock('p'), aBlock('q')])] }),
    ],
  }
  return { ride, report: computeRide(ride) }
}
const nameOf = (plan: ReturnType<typeof planWith>, at: At, index = 1) => ('cueId' in at ? at.cueId : momentOf(plan, index, at.place).name)

describe('where the line goes', () => {
  it('opens ahead of the change, or at the next moment that nothing is said at', () => {
    expect(nameOf(planWith([]), opening(planWith([]), 1))).toBe('before')
    const called = planWith([cue('call', 'announce', { counts: 8 })])
    expect(nameOf(called, opening(called, 1))).toBe('start')
    expect(nameOf(called, opening(called, 0), 0)).toBe('start')
  })

  it('goes through every moment and every cue in the order of time, and stays at the ends', () => {
    const plan = planWith([
      cue('call', 'announce', { counts: 8 }),
      cue('byHand', 'form', { counts: 20 }),
      cue('again', 'announce', { counts: 8 }),
    ])
    const seen: string[] = []
    let at: At = opening(plan, 1)
    for (let step = 0; step < 12; step++) at = stepOn(plan, 1, at, -1)
    for (let step = 0; step < 14; step++) {
      seen.push(nameOf(plan, at))
      at = stepOn(plan, 1, at, 1)
    }
    const way = ['preview', 'call', 'again', 'countIn', 'change', 'start', 'middle', 'byHand', 'lastTwo', 'lastOne', 'end']
    expect(seen).toEqual([...way, 'end', 'end', 'end'])
  })

  it('goes on to the next moment without words once a cue is kept, and else to a further one at the same', () => {
    const plan = planWith([cue('call', 'announce', { counts: 8 }), cue('last', 'form', { counts: 0 })])
    expect(nameOf(plan, afterKeeping(plan, 1, cue('call', 'announce', { counts: 8 })))).toBe('start')
    expect(nameOf(plan, afterKeeping(plan, 1, cue('last', 'form', { counts: 0 })))).toBe('end')
  })

  it('goes to the same moment of the next block that is played, and to what is said there', () => {
    const plan = planWith([cue('call', 'announce', { counts: 8 })])
    expect(nextBlock(plan, 'a', 1)).toBe('b')
    expect(nextBlock(plan, 'p', 1)).toBe('q')
    expect([nextBlock(plan, 'a', -1), nextBlock(plan, 'q', 1)]).toEqual([undefined, undefined])
    expect(sameMoment(plan, 1, 'before')).toEqual({ cueId: 'call' })
    expect(nameOf(plan, sameMoment(plan, 1, 'lastOne'))).toBe('lastOne')
    expect(nameOf(plan, sameMoment(plan, 0, 'before'), 0)).toBe('start')
  })
})

describe('words', () => {
  it('bring their moment along where nobody chose one', () => {
    const plan = planWith([])
    const before = { moment: 'announce', lead: { counts: 8 } } as const
    expect(placeOfWords(plan, 1, 'Light hands.', 'form', before)).toEqual({ moment: 'form', lead: startLead('counts') })
    expect(momentOf(plan, 1, placeOfWords(plan, 1, '', 'countIn', before)).name).toBe('countIn')
    const end = { moment: 'form', lead: { counts: 0 } } as const
    expect(placeOfWords(plan, 1, 'Story.', 'story', end)).toBe(end)
    expect(placeOfWords(plan, 0, '', 'preview', end)).toBe(end)
  })

  it('go to the next moment, kept or not, also from between two', () => {
    const plan = planWith([cue('byHand', 'form', { counts: 20 })])
    expect(wordsMoved(plan, 1, { moment: 'announce', lead: { counts: 8 } }, 1)).toMatchObject({
      place: { moment: 'countIn' },
      chosen: true,
    })
    expect(cueMoved(plan, 1, cue('byHand', 'form', { counts: 20 }), 1).lead).toEqual({ counts: 16 })
    expect(cueAt(plan, 'x', { moment: 'countIn', lead: { counts: 0 } }, '').count).toBe(4)
    expect(cueAt(plan, 'x', { moment: 'countIn', lead: { counts: 0 } }, '', 8).count).toBe(8)
  })

  it('reach every cue of any ride, forwards and backwards', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const plan = { ride, report: computeRide(ride) }
        for (const { index, block, from, to } of plan.report.blocks) {
          if (to <= from) continue
          const seen = new Set<string>()
          let at = opening(plan, index)
          for (const step of [-1, 1, -1] as const)
            for (let times = 0; times < block.cues.length + 12; times++) {
              if ('cueId' in at) seen.add(at.cueId)
              at = stepOn(plan, index, at, step)
            }
          expect([...seen].sort()).toEqual(block.cues.map(({ id }) => id).sort())
        }
      }),
      { numRuns: 40 },
    )
  })
})
