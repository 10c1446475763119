import { expect, it } from 'vitest'
import { keepHabits } from '#app/keptHabits.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'

it('a leader’s form points come back on the next visit', () => {
  const notes = memoryNotes()
  const first = aStore()
  keepHabits(first.store, notes)
  expect(first.state().formPoints).toBeNull()
  first.state().setFormPoints(['Heels quiet.', 'Eyes up.'])
  const next = aStore()
  keepHabits(next.store, notes)
  expect(next.state().formPoints).toEqual(['Heels quiet.', 'Eyes up.'])
})

it('those of the trade are offered again where one’s own are taken away', () => {
  const { store, state } = aStore()
  keepHabits(store, memoryNotes())
  state().setFormPoints(['Mine.'])
  state().setFormPoints([])
  expect(state().formPoints).toBeNull()
})

it('what was kept and makes no sense is left aside, and a storage that refuses is no failure', () => {
  for (const kept of ['no json', '7', '{"0":"x"}', '[]']) {
    const { store, state } = aStore()
    keepHabits(store, { getItem: () => kept, setItem: () => {} })
    expect(state().formPoints).toBeNull()
  }
  const { store, state } = aStore()
  keepHabits(store, {
    getItem: () => JSON.stringify(['Good.', 4, '', ' ', 'x'.repeat(301)]),
    setItem: () => {
      throw new Error('full')
    },
  })
  expect(state().formPoints).toEqual(['Good.'])
  expect(() => state().setFormPoints(['Another.'])).not.toThrow()
  keepHabits(aStore().store, null)
})
