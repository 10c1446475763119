// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { OtherLength } from '#features/drafting/proposals/OtherLength.tsx'
import { SlotFit } from '#features/drafting/proposals/SlotFit.tsx'
import { patchRide } from '#plan/commands/patchRide.ts'
import { revisionOf } from '#plan/document/revisionOf.ts'
import type { Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { countedIds } from '#tests/support/smallRide.ts'

let page: Rendered
const close = vi.fn()
const show = vi.fn()
function storeWith(ride: Ride) {
  const store = createAppStore({ newId: countedIds(), shelf: null })
  store.getState().openRide(ride)
  return store
}
afterEach(() => {
  page.close()
  vi.clearAllMocks()
})

describe('a ride fitted to its slot', () => {
  const openFit = (slotMinutes: number) => {
    const store = storeWith({ ...demoRide('ridge'), slotMinutes })
    page = rendered(store, <SlotFit onShow={show} onClose={close} />)
    return store
  }

  it('is shown on the stage at once, listed song by song, and taken as one step', () => {
    const store = openFit(43)
    const before = store.getState().ride
    expect(page.text()).toContain('43:43 planned, 43:00 class length, 43 s over')
    expect(store.getState().shownReport!.overall.slack).toBeGreaterThanOrEqual(0)
    expect(store.getState().shownReport!.overall.slack).toBeLessThanOrEqual(20)
    expect(page.host.querySelectorAll('.proposal-list li').length).toBeGreaterThan(0)
    page.press(page.host.querySelector<HTMLElement>('.proposal-list button')!)
    expect(show).toHaveBeenCalledOnce()
    page.press(page.find('button', 'use'))
    expect(close).toHaveBeenCalledOnce()
    expect(store.getState().past.map(({ ride }) => ride)).toEqual([before])
    expect(store.getState().report!.overall.slack).toBeLessThanOrEqual(20)
  })

  it('leaves everything as it was when it is left', () => {
    const store = openFit(43)
    const { ride } = store.getState()
    page.press(page.find('button', 'cancel'))
    expect(close).toHaveBeenCalledOnce()
    page.close()
    expect(store.getState()).toMatchObject({ ride, shown: ride, previewing: null, past: [] })
    page = rendered(store, null)
  })

  it('gives way to another preview and comes back after it, and follows a change of the ride', () => {
    const store = openFit(43)
    const proposed = store.getState().previewing
    act(() => store.getState().preview(patchRide({ level: 'beginner' })))
    expect(store.getState().previewing).not.toBe(proposed)
    act(() => store.getState().dropPreview())
    expect(store.getState().previewing).toBe(proposed)
    act(() => void store.getState().run(patchRide({ slotMinutes: 42 })))
    expect(store.getState().previewing).not.toBeNull()
    expect(store.getState().shownReport!.overall).toMatchObject({ slot: 42 * 60 })
    expect(store.getState().shownReport!.overall.slack).toBeGreaterThanOrEqual(0)
  })

  it('says why it cannot be, with the nearest on either side to choose from', () => {
    const store = openFit(20)
    expect(page.text()).toMatch(/no choice comes within|Nothing to adjust/)
    expect(store.getState().shownReport!.overall.total).toBeLessThan(demoTotal)
    expect(page.find('button', 'use')).toBeDefined()
  })

  it('has nothing to do where the ride ends in time', () => {
    const store = storeWith({ ...demoRide('ridge'), slotMinutes: 44, clearUpSeconds: 10 })
    page = rendered(store, <SlotFit onShow={show} onClose={close} />)
    expect(page.text()).toContain('Nothing to do: the ride ends 7 s under class length.')
    expect(store.getState().previewing).toBeNull()
    expect(page.host.querySelectorAll('.proposal-actions button')).toHaveLength(1)
  })

  it('is left by Escape', () => {
    openFit(43)
    page.key(page.host.querySelector('h2')!, 'Escape')
    expect(close).toHaveBeenCalledOnce()
  })

  const demoTotal = 43 * 60 + 43
})

describe('a class in another length', () => {
  const open = async (ride: Ride) => {
    const store = storeWith(ride)
    page = rendered(store, <OtherLength onClose={close} />)
    expect(page.text()).toContain('Working it out')
    await act(() => new Promise((resolve) => setTimeout(resolve, 60)))
    return store
  }

  it('is the next shorter one at first: what stays, what changes, on the stage; then a ride of its own', async () => {
    const parent = demoRide('ridge')
    const store = await open(parent)
    expect(page.host.querySelector<HTMLInputElement>('input:checked')!.value).toBe('30')
    expect(page.host.querySelector<HTMLInputElement>('input[value="45"]')!.disabled).toBe(true)
    expect(page.text()).toMatch(/what staysWarm-up .*what changes30 minutes instead of 45\./)
    expect(store.getState().ride).toBe(parent)
    expect(store.getState().shown!.slotMinutes).toBe(30)
    page.press(page.find('button', 'save as a new ride'))
    expect(close).toHaveBeenCalledOnce()
    expect(store.getState().ride).toMatchObject({
      title: 'Ridge and Return (30 min)',
      slotMinutes: 30,
      parent: { rideId: parent.id, revision: revisionOf(parent) },
    })
    expect(store.getState().ride!.id).not.toBe(parent.id)
    expect(store.getState().past).toEqual([])
  })

  it('can be any of the usual ones, and is worked out anew', async () => {
    const store = await open(demoRide('ridge'))
    page.press(page.host.querySelector<HTMLElement>('input[value="20"]')!)
    expect(store.getState().previewing).toBeNull()
    await act(() => new Promise((resolve) => setTimeout(resolve, 60)))
    expect(store.getState().shown!.slotMinutes).toBe(20)
  })

  it('cannot take the place of a ride that is kept nowhere', async () => {
    const store = await open(demoRide('ridge'))
    act(() => store.getState().setSaved('failed'))
    expect(page.find('button', 'save as a new ride')).toHaveProperty('disabled', true)
    expect(page.text()).toContain('Save the ride as a file before you open another')
  })
})
