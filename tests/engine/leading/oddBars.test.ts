import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { withOdd } from '#plan/songs/beatGrid.ts'
import type { OddPlace } from '#plan/songs/oddBeats.ts'
import { leadRide, leadStateAt, logOf, planOf } from '#tests/support/leading.ts'
import { aBlock } from '#tests/support/smallRide.ts'

/** The led ride with odd bars in its first song, at 120 a minute: a beat is half a second whatever count it is. */
function withOddBars(odd: OddPlace[]) {
  const ride = leadRide()
  const [first, ...others] = ride.sections
  const { song } = first!
  return { ...ride, sections: [{ ...first!, song: { ...song!, lengthSeconds: 110, grid: withOdd(song!.grid!, odd) } }, ...others] }
}

const countsFrom = (
  from: number,
  to: number,
  ride = withOddBars([
    [16, 2],
    [40, -3],
  ]),
) => {
  const led = ledClass(planOf(ride), logOf())
  return Array.from({ length: Math.round((to - from) * 2) }, (_, i) => stateOf(led, from + i / 2 + 0.1).beat)
}

it('the count goes on past eight while beats are over, and comes to one where the next eight begins', () => {
  const counts = countsFrom(4, 10)
  expect(counts.map((beat) => beat?.count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 1, 2])
  expect(counts.map((beat) => beat?.of)).toEqual([10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 8, 8])
  for (const beat of counts) expect(beat).toMatchObject({ unit: 8, passed: expect.closeTo(0.2, 6) })
})

it('an eight whose beats are missing is counted as far as it goes', () => {
  const counts = countsFrom(17, 20.5)
  expect(counts.map((beat) => beat?.count)).toEqual([1, 2, 3, 4, 5, 1, 2])
  expect(counts.map((beat) => beat?.of)).toEqual([5, 5, 5, 5, 5, 8, 8])
})

it('what is left is told in beats, and a foot lands on the other side after an odd number of them', () => {
  const ride = withOddBars([
    [16, 2],
    [40, -3],
  ])
  const report = computeRide(ride)
  expect(report.blocks[1]!.from).toBeCloseTo(63 / 2, 9)
  expect([report.blocks[0]!.foot, report.blocks[1]!.foot, report.blocks[2]!.foot]).toEqual(['left', 'right', 'right'])
  expect(leadStateAt(planOf(ride), logOf(), 0.1).countsLeft).toBe(63)
  expect(leadStateAt(planOf(ride), logOf(), 16.9).countsLeft).toBe(30)
})

it('a tap on the one after beats over is that one, and no sooner', () => {
  const plan = planOf(withOddBars([[32, 4]]))
  const on = leadStateAt(plan, logOf({ kind: 'one', at: 18 }), 18.1)
  expect(on).toMatchObject({ music: { eight: 5 }, behind: expect.closeTo(0, 6) })
})

it('words and count-ins come as many beats ahead of their change, over or not', () => {
  const ride = withOddBars([[64, 3]])
  const [first, ...others] = ride.sections
  const blocks = [
    aBlock('a'),
    aBlock('b', {
      cues: [
        { id: 'in', moment: 'countIn', lead: { counts: 0 }, text: '', count: 4 },
        { id: 'say', moment: 'announce', lead: { counts: 8 }, text: 'Next.' },
      ],
    }),
  ]
  const { cues, blocks: played } = computeRide({ ...ride, sections: [{ ...first!, blocks }, ...others] })
  const change = played[1]!.from
  expect(change).toBeCloseTo(67 / 2, 9)
  expect(cues.lines.find(({ cue }) => cue.id === 'in')).toMatchObject({
    from: expect.closeTo(change - 2, 9),
    to: expect.closeTo(change, 9),
  })
  expect(cues.lines.find(({ cue }) => cue.id === 'say')).toMatchObject({ to: expect.closeTo(change - 4, 9), lead: expect.closeTo(8, 9) })
})
