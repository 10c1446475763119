import { describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { keptOf } from '#store/leadSlice.ts'
import { frozen } from '#tests/support/frozen.ts'
import { leadRide } from '#tests/support/leading.ts'
import { countedIds } from '#tests/support/smallRide.ts'

/** An evening, milliseconds since 1970. */
const T = 1_780_000_000_000
const ride = frozen({ ...leadRide(), briefingSeconds: 20 })

function aClass() {
  const compute = vi.fn(computeRide)
  const store = createAppStore({ compute, newId: countedIds(), shelf: null })
  const state = () => store.getState()
  state().openRide(ride)
  state().readyClass(T)
  return { store, state, compute, led: () => state().leading!.led! }
}

describe('a class', () => {
  it('waits for its first one, which is the ride’s first one', () => {
    const { state, led } = aClass()
    expect(state().leading).toMatchObject({ log: null, led: null, slotFrom: null })
    state().lead({ kind: 'next' }, T)
    expect(state().leading!.log).toBeNull()
    state().startClass(T + 500, null)
    expect(state().leading!.log).toEqual({ startedAt: T + 500 - 20_000, slotFrom: T + 500 - 20_000, events: [] })
    expect(led().ride).toBe(ride)
    state().startClass(T + 900, null)
    expect(state().leading!.log!.startedAt).toBe(T - 19_500)
  })

  it('is late by what its slot began before: as it was said, else as it was booked', () => {
    const booked = aClass()
    booked.state().startClass(T, T - 60_000)
    expect(booked.led().late).toBe(40)
    const said = aClass()
    said.state().beginSlot(T - 30_000)
    said.state().startClass(T, T - 60_000)
    expect(said.led().late).toBe(10)
    said.state().beginSlot(T)
    expect(said.state().leading!.slotFrom).toBe(T - 30_000)
  })

  it('takes every press at its own instant, in the order of time', () => {
    const { state, led } = aClass()
    state().startClass(T, null)
    state().lead({ kind: 'next' }, T + 13_000)
    state().lead({ kind: 'hold' }, T + 12_990)
    expect(state().leading!.log!.events).toEqual([
      { kind: 'next', at: 33 },
      { kind: 'hold', at: 33 },
    ])
    expect(led().report.blocks[0]!.to).toBe(32)
    expect(led().led.hold).toBeDefined()
  })

  it('takes presses back one by one', () => {
    const { state, led } = aClass()
    state().startClass(T, null)
    state().lead({ kind: 'next' }, T + 13_000)
    expect(state().takeBack()).toBe(true)
    expect(led().ride).toBe(ride)
    expect(state().takeBack()).toBe(false)
  })

  it('computes nothing for frames, and once for a press', () => {
    const { state, compute } = aClass()
    expect(compute).toHaveBeenCalledTimes(1)
    state().startClass(T, null)
    expect(compute).toHaveBeenCalledTimes(1)
  })

  it('keeps the ride it began with, whatever is drafted meanwhile; the next class has the new one', () => {
    const { state } = aClass()
    state().startClass(T, null)
    state().run(setSong(state().ride!, { sectionId: 'one', song: null }))
    expect(state().ride).not.toBe(ride)
    state().readyClass(T + 60_000)
    expect(state().leading!.plan.ride).toBe(ride)
    state().endClass()
    state().readyClass(T + 60_000)
    expect(state().leading!.plan.ride).toBe(state().ride)
  })

  it('of another ride is not lost by opening one', () => {
    const { state } = aClass()
    state().startClass(T, null)
    state().openRide({ ...ride, id: 'other' })
    state().readyClass(T + 60_000)
    expect(state().leading!.plan.ride.id).toBe('ride')
    state().endClass()
    state().readyClass(T + 60_000)
    expect(state().leading).toMatchObject({ plan: { ride: { id: 'other' } }, log: null })
  })

  it('nobody ended is over half an hour after its end', () => {
    const { state } = aClass()
    state().startClass(T, null)
    state().readyClass(T + (286 + 1700) * 1000)
    expect(state().leading!.log).not.toBeNull()
    state().readyClass(T + (286 + 1801) * 1000)
    expect(state().leading!.log).toBeNull()
  })

  it('begins again from its card', () => {
    const { state } = aClass()
    state().startClass(T, null)
    state().restartClass()
    expect(state().leading).toMatchObject({ log: null, led: null, slotFrom: null })
  })

  it('comes back from what is kept of it', () => {
    const { state } = aClass()
    expect(keptOf(state().leading)).toBeNull()
    state().startClass(T, T - 60_000)
    state().lead({ kind: 'next' }, T + 13_000)
    const kept = JSON.parse(JSON.stringify(keptOf(state().leading)))
    const other = createAppStore({ newId: countedIds(), shelf: null })
    other.getState().restoreClass(kept)
    expect(other.getState().leading!.log).toEqual(state().leading!.log)
    expect(other.getState().leading!.led!.report.overall).toEqual(state().leading!.led!.report.overall)
  })
})
