import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Ride } from '#plan/model.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const OF_THE_END = ['endsHeavy', 'endsOffPedals', 'coolDown']

it('judges how a class ends once its last section has a block', () => {
  const hard = aBlock('a', { ...inSeconds(600), resistance: { kind: 'total', from: 8, to: 8 }, effort: { from: 8, to: 8 } })
  const ride = (last: Ride['sections'][number]): Ride => ({
    ...smallRide(),
    room: 'online',
    sections: [aSection('s', { blocks: [hard] }), last],
  })
  const said = (of: Ride) => OF_THE_END.filter((rule) => computeRide(of).findings.some((finding) => finding.rule === rule))
  expect(said(ride(aSection('t', { blocks: [] })))).toEqual([])
  expect(said(ride(aSection('t', { blocks: [{ ...hard, id: 'b' }] })))).toEqual(OF_THE_END)
})
