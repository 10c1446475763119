import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { arbitraryRecipes, commandOf } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aStore } from '#tests/support/aStore.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds, layout, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = frozen(smallRide())
const toFront = (itemId: string) => moveItem(ride, { itemId, sectionId: 'song', index: 0 })
const nothing = moveItem(ride, { itemId: 'a', sectionId: 'song', index: 0 })

function open() {
  const made = aStore()
  made.store.getState().openRide(ride)
  return made
}

describe('running a command', () => {
  it('replaces the ride, announces it and computes it once', () => {
    const { state, compute } = open()
    expect(state().run(toFront('c'))).toBe(true)
    expect(layout(state().ride!, 'song')).toBe('c a b')
    expect(state().shown).toBe(state().ride)
    expect(state().shownReport).toBe(state().report)
    expect(state().announcement).toBe('Moved c before a in first')
    expect(compute.mock.calls.map(([computed]) => computed)).toEqual([ride, state().ride])
  })

  it('plans with the engine unless told otherwise', () => {
    const { getState } = createAppStore({ newId: countedIds(), shelf: null })
    getState().openRide(ride)
    expect(getState().shownReport!.overall).toEqual(computeRide(ride).overall)
  })

  it('does nothing at all when the command does nothing', () => {
    const { state, compute } = open()
    const before = state()
    expect(state().run(nothing)).toBe(false)
    expect(state()).toBe(before)
    expect(compute).toHaveBeenCalledTimes(1)
  })

  it('does nothing without a ride', () => {
    const { state } = aStore()
    expect(state().run(toFront('c'))).toBe(false)
    state().preview(toFront('c'))
    expect(state().shown).toBeNull()
    expect([state().commitPreview(), state().undo(), state().redo()]).toEqual([false, false, false])
  })
})

describe('a drag', () => {
  it('is one undo step, computed once a move and not again when it is dropped', () => {
    const { state, compute } = open()
    for (const index of [1, 0, 1, 2, 0]) state().preview(moveItem(ride, { itemId: 'c', sectionId: 'song', index }))
    expect(state().ride).toBe(ride)
    expect(state().report).not.toBe(state().shownReport)
    expect(layout(state().shown!, 'song')).toBe('c a b')
    // Index 2 is where c stands: the ride itself, computed already.
    expect(compute).toHaveBeenCalledTimes(1 + 4)
    const { shown } = state()
    expect(state().commitPreview()).toBe(true)
    expect(compute).toHaveBeenCalledTimes(1 + 4)
    expect(state().ride).toBe(shown)
    expect(state().past).toHaveLength(1)
    expect(state().previewing).toBeNull()
    state().undo()
    expect(state().ride).toBe(ride)
  })

  it('always starts from the committed ride', () => {
    const { state } = open()
    state().preview(toFront('b'))
    state().preview(toFront('c'))
    expect(layout(state().shown!, 'song')).toBe('c a b')
  })

  it('leaves no trace when it is dropped outside', () => {
    const { state } = open()
    const before = state()
    state().preview(toFront('c'))
    expect(told(state().previewing!)).toBe('Moved c before a in first')
    state().dropPreview()
    expect(state()).toEqual(before)
    expect(state().shown).toBe(ride)
    expect(state().shownReport).toBe(before.report)
    expect(state().commitPreview()).toBe(false)
  })

  it('is over when it comes back to where it began', () => {
    const { state } = open()
    state().preview(toFront('c'))
    state().preview(nothing)
    expect(state().previewing).toBeNull()
    expect(state().shown).toBe(ride)
    expect(state().commitPreview()).toBe(false)
    expect(state().past).toHaveLength(0)
  })

  it('is dropped by a command, an undo or a change of place', () => {
    const { state } = open()
    state().preview(toFront('c'))
    state().run(toFront('b'))
    expect(layout(state().ride!, 'song')).toBe('b a c')
    state().preview(toFront('c'))
    state().undo()
    expect([state().previewing, state().shown]).toEqual([null, ride])
    state().preview(toFront('c'))
    state().setPlace('sheet')
    expect([state().previewing, state().shown]).toEqual([null, ride])
  })
})

describe('undo and redo', () => {
  it('go back to the very ride and its very report, and forth again', () => {
    const { state, compute } = open()
    const reports = [state().report]
    const rides = [state().ride]
    for (const id of ['b', 'c']) {
      state().run(moveItem(state().ride!, { itemId: id, sectionId: 'song', index: 0 }))
      rides.push(state().ride)
      reports.push(state().report)
    }
    const computed = compute.mock.calls.length
    state().undo()
    expect(state().ride).toBe(rides[1])
    expect(state().report).toBe(reports[1])
    expect(state().announcement).toBe('Undone: Moved c before b in first')
    state().undo()
    expect(state().ride).toBe(rides[0])
    expect(state().report).toBe(reports[0])
    expect(state().undo()).toBe(false)
    state().redo()
    expect(state().ride).toBe(rides[1])
    expect(state().announcement).toBe('Redone: Moved b before a in first')
    state().redo()
    expect(state().ride).toBe(rides[2])
    expect(state().redo()).toBe(false)
    expect(compute).toHaveBeenCalledTimes(computed)
  })

  it('forget the way forth when something else is done', () => {
    const { state } = open()
    state().run(toFront('c'))
    state().undo()
    state().run(toFront('b'))
    expect(state().future).toEqual([])
    expect(state().redo()).toBe(false)
  })

  it('keep 200 steps', () => {
    const { state } = open()
    for (let counts = 1; counts <= 205; counts++) state().run(resizeBlock(ride, { blockId: 'a', length: { counts } }))
    // One of them is the length the block has already.
    expect(state().past).toHaveLength(200)
    while (state().undo());
    expect(state().future).toHaveLength(200)
    expect(state().ride).not.toBe(ride)
  })

  it('announce the same words twice as two announcements', () => {
    const { state } = open()
    state().run(patchRide({ slotMinutes: 30 }))
    const first = state().announcementTurn
    state().run(patchRide({ slotMinutes: 60 }))
    expect(state().announcementTurn).toBe(first + 1)
  })

  it('restore any ride after any commands, and drop any preview', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryRecipes(), (start, recipes) => {
        const { state, compute } = aStore()
        const newId = countedIds('id')
        state().openRide(frozen(start))
        const rides = [state().ride!]
        for (const [turn, recipe] of recipes.entries()) {
          const command = commandOf(recipe, state().ride!, newId)
          const before = state().ride
          state().preview(command)
          if (turn % 3 === 0) {
            state().dropPreview()
            expect(state().shown).toBe(before)
            state().run(command)
          } else state().commitPreview()
          if (state().ride !== rides.at(-1)) rides.push(state().ride!)
          expect(parseRide(state().ride)).toMatchObject({ ok: true })
        }
        for (const earlier of rides.toReversed().slice(1)) {
          state().undo()
          expect(state().ride).toBe(earlier)
        }
        expect(state().undo()).toBe(false)
        for (const later of rides.slice(1)) {
          state().redo()
          expect(state().ride).toBe(later)
        }
        const computed = compute.mock.calls.map(([one]) => one)
        expect(new Set(computed).size).toBe(computed.length)
      }),
      { numRuns: 60 },
    )
  })
})

describe('the selection', () => {
  const select = (...ids: string[]) => {
    const made = open()
    made.state().selectItems(ids)
    return made
  }

  it('keeps only what is still there', () => {
    const { state } = select('a', 'push', 'z')
    state().run(deleteItems(ride, ['push', 'z']))
    expect(state().selection).toEqual({ sectionId: 'song', ids: ['a'], anchor: 'a' })
    state().run(deleteItems(ride, ['a']))
    expect(state().selection).toEqual({ sectionId: 'song', ids: [], anchor: null })
  })

  it('stays on undo where the undone step was about nothing chosen', () => {
    const { state } = open()
    state().run(toFront('c'))
    state().selectItem('c')
    state().undo()
    expect(state().selection.ids).toEqual(['c'])
  })

  it('goes back with undo and redo to what the step was about', () => {
    const { state } = select('a', 'b')
    state().run(deleteItems(ride, ['a', 'b']))
    state().selectItem('z')
    state().undo()
    expect(state().selection.ids).toEqual(['a', 'b'])
    state().selectItem('x')
    state().redo()
    expect(state().selection.ids).toEqual(['z'])
  })

  it('follows an item into another section', () => {
    const { state } = select('a')
    state().run(moveItem(ride, { itemId: 'a', sectionId: 'clock', index: 0 }))
    expect(state().selection).toMatchObject({ sectionId: 'clock', ids: ['a'] })
  })

  it('is the same object while it stays the same', () => {
    const { state } = select('a')
    const { selection } = state()
    state().run(toFront('c'))
    expect(state().selection).toBe(selection)
  })

  it('toggles, and reaches from the anchor in the order of the ride', () => {
    const { state } = open()
    state().selectItem('b')
    state().toggleItem('x')
    expect(state().selection).toMatchObject({ sectionId: 'clock', ids: ['b', 'x'] })
    state().toggleItem('b')
    expect(state().selection.ids).toEqual(['x'])
    state().selectItem('c')
    state().selectRange('set')
    expect(state().selection).toMatchObject({ ids: ['c', 'x', 'y', 'set'], anchor: 'c', sectionId: 'waves' })
    state().selectRange('a')
    expect(state().selection).toMatchObject({ ids: ['a', 'b', 'c'], anchor: 'c' })
  })

  it('reaches over parts inside one set, and over whole items across its edge', () => {
    const { state } = open()
    state().selectItem('push')
    state().selectRange('ease')
    expect(state().selection.ids).toEqual(['push', 'ease'])
    state().selectRange('z')
    expect(state().selection.ids).toEqual(['set', 'z'])
  })

  it('takes nothing that is not there, and a section whole', () => {
    const { state } = open()
    state().selectItem('nobody')
    expect(state().selection).toEqual({ sectionId: null, ids: [], anchor: null })
    state().selectSection('clock')
    expect(state().selection).toEqual({ sectionId: 'clock', ids: [], anchor: null })
    state().selectSection('nowhere')
    expect(state().selection.sectionId).toBe('clock')
    state().clearSelection()
    expect(state().selection.sectionId).toBeNull()
  })
})

describe('a jump', () => {
  const ids = ['c', 'b', 'c', 'a', 'b']
  const opened = (now?: () => number) => {
    const compute = vi.fn(computeRide)
    const store = createAppStore({ newId: countedIds(), shelf: null, compute, ...(now && { now }) })
    store.getState().openRide(ride)
    for (const itemId of ids) store.getState().run(moveItem(store.getState().ride!, { itemId, sectionId: 'song', index: 0 }))
    return { state: store.getState, compute }
  }

  it('comes to the very ride that as many single steps do, and plans once at most', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -6, max: 6 }), { maxLength: 6 }), (jumps) => {
        const { state, compute } = opened()
        const single = opened()
        for (const by of jumps) {
          const calls = compute.mock.calls.length
          const went = state().travelBy(by)
          expect(compute.mock.calls.length - calls).toBeLessThanOrEqual(1)
          const { past, future } = single.state()
          expect(went).toBe(by !== 0 && (by > 0 ? past : future).length >= Math.abs(by))
          if (went) for (let step = 0; step < Math.abs(by); step++) by > 0 ? single.state().undo() : single.state().redo()
          expect(state().ride).toEqual(single.state().ride)
          expect(state().selection).toEqual(single.state().selection)
          expect(state().past.map(({ label }) => told(label))).toEqual(single.state().past.map(({ label }) => told(label)))
          expect(state().future.map(({ label }) => told(label))).toEqual(single.state().future.map(({ label }) => told(label)))
        }
      }),
      { numRuns: 60 },
    )
  })

  it('is one update, and says how many changes it took back', () => {
    const { state } = opened()
    const turn = state().announcementTurn
    expect(state().travelBy(4)).toBe(true)
    expect([state().announcement, state().announcementTurn]).toEqual(['Undid 4 changes', turn + 1])
    expect([state().past.length, state().future.length]).toEqual([1, 4])
    expect(state().travelBy(-2)).toBe(true)
    expect(state().announcement).toBe('Redid 2 changes')
    expect(state().travelBy(-1)).toBe(true)
    expect(state().announcement).toMatch(/^Redone: Moved a/)
  })

  it('goes nowhere there is nothing, and not by halves', () => {
    const { state } = opened()
    const before = state().ride
    for (const by of [6, -1, 0, 1.5, Number.NaN]) expect(state().travelBy(by)).toBe(false)
    expect(state().ride).toBe(before)
  })

  it('knows when each change was made, also after it was taken back', () => {
    let clock = 0
    const { state } = opened(() => ++clock)
    state().travelBy(3)
    expect(state().past.map(({ at }) => at)).toEqual([1, 2])
    expect(state().future.map(({ at }) => at)).toEqual([5, 4, 3])
  })
})
