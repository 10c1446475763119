import { expect, it } from 'vitest'
import { keepReadOn } from '#app/keptReadOn.ts'
import { aStore } from '#tests/support/aStore.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'

it('the bike rides are read on is there at the next visit, until rides are on their own again', () => {
  const notes = memoryNotes()
  const first = aStore()
  keepReadOn(first.store, notes)
  first.state().showOn(LEVELS_BIKE)

  const second = aStore()
  keepReadOn(second.store, notes)
  expect(second.state().readOn).toEqual(LEVELS_BIKE)
  second.state().showOn(null)

  const third = aStore()
  keepReadOn(third.store, notes)
  expect(third.state().readOn).toBeNull()
})

it('what makes no sense is no bike, and storage that refuses costs nothing but the memory', () => {
  for (const text of ['', '{', '{"profile":1,"kind":"bike"}', '[[[']) {
    const { store, state } = aStore()
    keepReadOn(store, { getItem: () => text, setItem: () => undefined, removeItem: () => undefined })
    expect(state().readOn).toBeNull()
  }
  const refuse = () => {
    throw new Error('refused')
  }
  const { store, state } = aStore()
  keepReadOn(store, { getItem: refuse, setItem: refuse, removeItem: refuse })
  state().showOn(LEVELS_BIKE)
  expect(state().readOn).toBe(LEVELS_BIKE)
  keepReadOn(aStore().store, null)
})
