import { describe, expect, it, vi } from 'vitest'
import { moveItem } from '#plan/commands/moveItem.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { revisionOf } from '#plan/document/revisionOf.ts'
import { editionOf } from '#plan/merge/lineage.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import { frozen } from '#tests/support/frozen.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const mine = frozen({ ...smallRide(), id: 'mine', title: 'mine' })
const theirs = frozen({ ...smallRide(), id: 'theirs', title: 'theirs' })
const change = moveItem(mine, { itemId: 'c', sectionId: 'song', index: 0 })

describe('opening a ride', () => {
  it('starts anew: no way back, nothing chosen, shown whole', () => {
    const { state } = aStore()
    state().openRide(mine)
    state().run(change)
    state().selectItem('a')
    state().setView({ fromSeconds: 10, toSeconds: 20 })
    state().openRide(theirs, 'sheet')
    expect(state()).toMatchObject({ ride: theirs, shown: theirs, past: [], future: [], view: null, place: 'sheet', previewing: null })
    expect(state().selection.ids).toEqual([])
    state().closeRide()
    expect(state()).toMatchObject({ ride: null, report: null, shown: null, shownReport: null, place: 'start' })
  })
})

describe('a demo ride', () => {
  const demo = frozen({ ...smallRide(), id: 'spark', title: 'Spark' })
  const other = frozen({ ...smallRide(), id: 'ridge', title: 'Ridge' })

  it('is a copy that is no ride of one’s own until something in it is changed, and then stays one', () => {
    const { state } = aStore()
    state().openDemo(demo)
    expect(state()).toMatchObject({ isDemo: true, place: 'draft', ride: { title: 'Spark', parent: { rideId: 'spark' } } })
    expect(parseRide(state().ride).ok).toBe(true)
    const { id } = state().ride!
    state().preview(change)
    state().dropPreview()
    expect(state().isDemo).toBe(true)
    state().run(change)
    expect(state()).toMatchObject({ isDemo: false, ride: { id } })
    state().undo()
    expect(state()).toMatchObject({ isDemo: false, ride: { id } })
  })

  it('is gone back to while it is unchanged, and opened again where it is not, or another was', () => {
    const { state } = aStore()
    state().openDemo(demo)
    const first = state().ride
    state().setPlace('start')
    state().openDemo(demo)
    expect(state()).toMatchObject({ ride: first, place: 'draft' })
    state().receiveRide(theirs)
    state().openDemo(demo)
    expect(state()).toMatchObject({ ride: first, received: null, place: 'draft' })
    state().openDemo(other)
    expect(state()).toMatchObject({ isDemo: true, ride: { title: 'Ridge' } })
    state().openDemo(demo)
    state().run(change)
    const changed = state().ride!
    state().openDemo(demo)
    expect(state()).toMatchObject({ isDemo: true, past: [], ride: { title: 'Spark' } })
    expect(new Set([first!.id, changed.id, state().ride!.id]).size).toBe(3)
    state().openRide(mine)
    expect(state().isDemo).toBe(false)
  })

  it('is found again by the id of its copy, unless a ride of one’s own has that or had it', async () => {
    const demoRide = vi.fn(async (id: string) => (id === 'spark' ? demo : null))
    let held = [mine]
    const shelf: RideShelf = {
      list: async () => held.map(({ id, title }) => ({ id, title, updated: 0 })),
      load: async (id) => {
        const ride = held.find((one) => one.id === id)
        return ride ? { ok: true, ride } : { ok: false, sentence: 'Not here.', details: [] }
      },
      save: async () => undefined,
      remove: async (id) => {
        held = held.filter((one) => one.id !== id)
      },
    }
    const { state } = aStore(shelf, demoRide)
    state().openDemo(demo)
    const copy = state().ride!
    state().openRide(mine)
    expect(await state().openSaved(copy.id)).toBe(true)
    expect(state()).toMatchObject({ ride: copy, isDemo: true })

    held = [mine, { ...copy, title: 'Changed' }]
    expect(await state().openSaved(copy.id)).toBe(true)
    expect(state()).toMatchObject({ ride: { title: 'Changed' }, isDemo: false })
    await state().removeSaved(copy.id)
    expect(await state().openSaved(copy.id)).toBe(false)
    expect(state().notice?.sentence).toBe('Not here.')
    for (const id of ['spark', 'nothing', 'nothing.new1']) expect(await state().openSaved(id)).toBe(false)
    // It also opens where nothing can be kept.
    const without = aStore(null, demoRide)
    expect(await without.state().openSaved(copy.id)).toBe(true)
    expect(without.state().ride).toEqual(copy)
  })

  it('that is kept and cannot be read is not opened as if it were new', async () => {
    const shelf: RideShelf = {
      list: async () => [{ id: 'spark.new1', title: 'Spark', updated: 0, problem: 'It cannot be read.' }],
      load: async () => ({ ok: false, sentence: 'It cannot be read.', details: [] }),
      save: async () => undefined,
      remove: async () => undefined,
    }
    const { state } = aStore(shelf, async () => demo)
    expect(await state().openSaved('spark.new1')).toBe(false)
    expect(state().notice?.sentence).toBe('It cannot be read.')
  })
})

describe('a ride from elsewhere', () => {
  it('is shown in place of the open one and cannot be changed', () => {
    const { state } = aStore()
    state().openRide(mine)
    state().preview(change)
    state().receiveRide(theirs)
    const shown = state()
    expect(shown).toMatchObject({ ride: mine, shown: theirs, previewing: null })
    expect(shown.shownReport).toBe(shown.received!.report)
    expect(state().run(change)).toBe(false)
    state().preview(change)
    expect([state().undo(), state().redo(), state().commitPreview()]).toEqual([false, false, false])
    expect(state()).toBe(shown)
  })

  it('becomes one of the user’s own as a copy that knows where it came from', () => {
    const { state } = aStore()
    state().openRide(mine)
    state().receiveRide(theirs)
    state().keepCopy()
    const parent = { rideId: 'theirs', revision: revisionOf(theirs) }
    expect(state().ride).toEqual({ ...theirs, id: 'new1', parent, ancestors: [editionOf(theirs)] })
    expect(parseRide(state().ride).ok).toBe(true)
    expect(state()).toMatchObject({ received: null, place: 'draft' })
    expect(state().run(moveItem(theirs, { itemId: 'c', sectionId: 'song', index: 0 }))).toBe(true)
  })

  it('goes away and leaves the open ride as it was, its way back included', () => {
    const { state } = aStore()
    state().openRide(mine)
    state().run(change)
    const { ride, past } = state()
    state().receiveRide(theirs)
    state().dismissReceived()
    expect(state()).toMatchObject({ ride, shown: ride, received: null, place: 'draft' })
    expect(state().past).toBe(past)
  })

  it('goes away to the start where nothing was open', () => {
    const { state } = aStore()
    state().receiveRide(theirs)
    state().dismissReceived()
    expect(state()).toMatchObject({ ride: null, shown: null, place: 'start' })
  })
})

describe('revisionOf', () => {
  it('is the same for the same content in any order of fields, and another for any change', () => {
    const { title, ...rest } = theirs
    expect(revisionOf({ ...rest, title })).toBe(revisionOf(theirs))
    expect(revisionOf({ ...theirs, aim: undefined })).toBe(revisionOf(theirs))
    expect(revisionOf({ ...theirs, title: 'theirs.' })).not.toBe(revisionOf(theirs))
    expect(revisionOf(theirs)).toMatch(/^[0-9a-f]{16}$/)
  })
})

describe('the shelf', () => {
  const entry = { id: 'mine', title: 'mine', updated: 5 }
  const shelf = (change: Partial<RideShelf> = {}): RideShelf => ({
    list: async () => [entry],
    load: async () => ({ ok: true, ride: mine }),
    save: async () => undefined,
    remove: async () => undefined,
    ...change,
  })

  it('opens a saved ride, and says why it cannot', async () => {
    const { state } = aStore(shelf())
    expect(await state().openSaved('mine')).toBe(true)
    expect(state().ride).toBe(mine)
    const refusing = aStore(shelf({ load: async () => ({ ok: false, sentence: 'It cannot be read.', details: ['No title.'] }) }))
    refusing.state().openRide(theirs)
    expect(await refusing.state().openSaved('mine')).toBe(false)
    expect(refusing.state().notice).toEqual({ kind: 'problem', sentence: 'It cannot be read.', details: ['No title.'] })
    expect(refusing.state().ride).toBe(theirs)
    refusing.state().dismissNotice()
    expect(refusing.state().notice).toBeNull()
  })

  it('says so when the shelf fails, and keeps what is open', async () => {
    const broken = async () => Promise.reject(new Error('disk gone'))
    const { state } = aStore(shelf({ list: broken, load: broken, remove: broken }))
    state().openRide(theirs)
    for (const act of [() => state().openSaved('mine'), () => state().removeSaved('mine'), () => state().refreshSavedRides()]) {
      state().dismissNotice()
      await act()
      expect(state().notice).toMatchObject({ kind: 'problem', details: ['disk gone'] })
    }
    expect(state().ride).toBe(theirs)
  })

  it('closes the open ride before it is deleted, and can put it back', async () => {
    const remove = vi.fn(async () => undefined)
    const save = vi.fn(async () => undefined)
    const { state } = aStore(shelf({ remove, save }))
    state().openRide(mine)
    await state().removeSaved('mine')
    expect(state()).toMatchObject({ ride: null, place: 'start', removed: [mine] })
    expect(remove).toHaveBeenCalledWith('mine')
    await state().restoreRemoved(mine.id)
    expect(save).toHaveBeenCalledWith(mine)
    expect(state().removed).toEqual([])
  })

  it('lists newest first, and a ride saved in its place', async () => {
    const { state } = aStore(shelf())
    await state().refreshSavedRides()
    state().noteSaved({ id: 'theirs', title: 'theirs', updated: 9 })
    state().noteSaved({ id: 'mine', title: 'mine, later', updated: 7 })
    expect(state().savedRides.map(({ title }) => title)).toEqual(['theirs', 'mine, later'])
  })
})

describe('the view', () => {
  it('is a stretch of time or the whole ride', () => {
    const { state } = aStore()
    state().setView({ fromSeconds: 10, toSeconds: 20 })
    expect(state().view).toEqual({ fromSeconds: 10, toSeconds: 20 })
    for (const empty of [
      { fromSeconds: 20, toSeconds: 20 },
      { fromSeconds: 20, toSeconds: 10 },
      { fromSeconds: 0, toSeconds: Number.NaN },
    ]) {
      state().setView(empty)
      expect(state().view).toBeNull()
    }
    state().setTheme('dark')
    expect(state().theme).toBe('dark')
  })
})
