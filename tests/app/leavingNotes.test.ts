import { describe, expect, it, vi } from 'vitest'
import { askOnLeaving, noteOnLeaving, saveNoted } from '#app/leavingNotes.ts'
import type { Ride } from '#plan/model.ts'
import type { SaveOutcome } from '#storage/openStorage.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const ride = smallRide()

function leaving() {
  const { state, store } = aStore()
  const notes = memoryNotes()
  let leave = () => {}
  noteOnLeaving(store, notes, () => 1000, {
    onLeaving: (run) => {
      leave = run
      return () => {}
    },
  })
  return { state, notes, leave: () => leave() }
}

function shelf(saved: { id: string; title: string; updated: number }[] = []) {
  return {
    list: vi.fn(async () => saved),
    save: vi.fn(
      async (stored: Ride): Promise<SaveOutcome> => ({ deleted: false, updated: 2000, stored, merged: null, copies: 2, wasCleared: false }),
    ),
  }
}

describe('notes on leaving', () => {
  it('hold the open ride when its last change is not saved yet, and nothing else', () => {
    const { state, notes, leave } = leaving()
    leave()
    state().openRide(ride)
    leave()
    expect(notes.length).toBe(0)
    state().setSaved('saving')
    leave()
    expect(notes.length).toBe(1)
    state().setSaved('saved')
    expect(notes.length).toBe(0)
  })

  it('hold no demo ride that nobody has changed', () => {
    const { state, notes, leave } = leaving()
    state().setSaved('saving')
    state().openDemo({ ...ride, id: 'spark' })
    leave()
    expect(notes.length).toBe(0)
  })

  it('are saved at the next start and cleared', async () => {
    const { state, notes, leave } = leaving()
    state().openRide(ride)
    state().setSaved('failed')
    leave()
    const storage = shelf([{ id: ride.id, title: ride.title, updated: 999 }])
    await saveNoted(notes, storage)
    expect(storage.save).toHaveBeenCalledExactlyOnceWith(ride, undefined)
    expect(notes.length).toBe(0)
  })

  it('give way to what was saved after them', async () => {
    const { state, notes, leave } = leaving()
    state().openRide(ride)
    state().setSaved('saving')
    leave()
    const storage = shelf([{ id: ride.id, title: ride.title, updated: 1001 }])
    await saveNoted(notes, storage)
    expect(storage.save).not.toHaveBeenCalled()
    expect(notes.length).toBe(0)
  })

  it('stay when they cannot be saved, and go when they are no rides', async () => {
    const notes = memoryNotes({
      'ridewright.left.ride': JSON.stringify({ at: 1, ride }),
      'ridewright.left.bad': '{"at":1,"ride":{}}',
      'ridewright.left.half': '{"at":',
      another: 'mine',
    })
    const storage = shelf()
    storage.save.mockRejectedValueOnce(new Error('full'))
    await saveNoted(notes, storage)
    expect(notes.getItem('ridewright.left.ride')).not.toBeNull()
    expect(notes.getItem('another')).toBe('mine')
    expect(notes.length).toBe(2)
  })

  it('never keep the page from starting', async () => {
    const refusing = {
      ...memoryNotes(),
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError')
      },
    }
    const { state, store } = aStore()
    noteOnLeaving(store, refusing, () => 0, {
      onLeaving: (run) => {
        state().openRide(ride)
        state().setSaved('saving')
        expect(run).not.toThrow()
        return () => {}
      },
    })
    const storage = { ...shelf(), list: () => Promise.reject(new Error('gone')) }
    await expect(saveNoted(memoryNotes({ 'ridewright.left.ride': JSON.stringify({ at: 1, ride }) }), storage)).resolves.toBeUndefined()
  })
})

describe('asking on leaving', () => {
  it('asks only where changes can be kept nowhere', () => {
    const { state, store } = aStore()
    const page = new EventTarget() as Window
    askOnLeaving(store, page)
    const asks = () => !page.dispatchEvent(new Event('beforeunload', { cancelable: true }))
    expect(asks()).toBe(false)
    state().openRide(ride)
    state().setSaved('failed')
    expect(asks()).toBe(false)
    state().run({ label: 'Renamed', apply: (old) => ({ ...old, title: 'renamed' }) })
    expect(asks()).toBe(true)
    state().setSaved('saved')
    expect(asks()).toBe(false)
  })
})
