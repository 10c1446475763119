import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { patchBlocks } from '#plan/commands/patchBlocks.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { keptOf } from '#store/leadSlice.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { countedIds } from '#tests/support/smallRide.ts'

const ride = demoRide('spark')
const totalsOf = (report: ReturnType<typeof computeRide> | null | undefined) => report?.blocks.map(({ ledger }) => ledger.total)

function open() {
  let computed = 0
  const compute = (of: typeof ride) => {
    computed += 1
    return computeRide(of)
  }
  const store = createAppStore({ compute, newId: countedIds(), shelf: null })
  store.getState().openRide(ride)
  return { state: () => store.getState(), computed: () => computed }
}

describe('another bike', () => {
  it('words what is open, keeps wording what changes, and gives way again, with no computation of its own', () => {
    const { state, computed } = open()
    const own = state().shownReport
    state().showOn(LEVELS_BIKE)
    expect(computed()).toBe(1)
    expect(state().shownReport!.shownOn!.bike).toBe(LEVELS_BIKE)
    expect(totalsOf(state().shownReport)).not.toEqual(totalsOf(own))
    expect(state().report).toBe(state().shownReport)
    const blockId = ride.sections[0]!.blocks[0]!.id
    state().run(patchBlocks(ride, { blockIds: [blockId], patch: { effort: { from: 3, to: 3 } } }))
    expect(state().shownReport!.shownOn!.bike).toBe(LEVELS_BIKE)
    state().undo()
    state().showOn(null)
    expect(state().shownReport).toBe(own)
    expect(computed()).toBe(2)
  })

  it('changes nothing of the ride, and is no step to undo', () => {
    const { state } = open()
    state().showOn(LEVELS_BIKE)
    expect(state().ride).toBe(ride)
    expect(state().past).toEqual([])
  })

  it('words a received ride too, and one on that very bike as it is', () => {
    const { state } = open()
    state().showOn(LEVELS_BIKE)
    state().receiveRide({ ...ride, id: 'theirs' })
    expect(state().shownReport!.shownOn!.bike).toBe(LEVELS_BIKE)
    state().showOn(structuredClone(ride.bike))
    expect(state().received!.report.shownOn).toBeUndefined()
    state().showOn(DEFAULT_BIKE)
    expect(state().shownReport).toBe(state().received!.report)
  })

  it('words a class that is being led, before it begins, under way and after a block is left out', () => {
    const { state } = open()
    state().readyClass(0)
    state().showOn(LEVELS_BIKE)
    expect(state().leading!.plan.report.shownOn!.bike).toBe(LEVELS_BIKE)
    state().startClass(1000, null)
    expect(state().leading!.led!.report.shownOn!.bike).toBe(LEVELS_BIKE)
    state().lead({ kind: 'next' }, 60_000)
    const { led } = state().leading!
    expect(led!.report.shownOn!.bike).toBe(LEVELS_BIKE)
    state().showOn(null)
    expect(state().leading!.led!.report.shownOn).toBeUndefined()
    expect(state().leading!.led!.said).toStrictEqual(led!.said)
    expect(keptOf(state().leading)!.ride).toBe(ride)
  })
})
