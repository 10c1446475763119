import { expect, it } from 'vitest'
import { keepRehearsing } from '#app/keptRehearsing.ts'
import { NEW_TO_REHEARSING } from '#store/rehearsalSlice.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'

it('how a leader likes to rehearse comes back on the next visit', () => {
  const notes = memoryNotes()
  const first = aStore()
  keepRehearsing(first.store, notes)
  expect(first.state().rehearsalHabits).toEqual(NEW_TO_REHEARSING)
  first.state().setRehearsalHabits({ speed: 0.8, waits: true, voice: 'ann', cautioned: true })
  const next = aStore()
  keepRehearsing(next.store, notes)
  expect(next.state().rehearsalHabits).toEqual({ ...NEW_TO_REHEARSING, speed: 0.8, waits: true, voice: 'ann', cautioned: true })
})

it('what was kept and makes no sense is left aside, and a storage that refuses is no failure', () => {
  for (const kept of ['no json', '7', 'null', '{"speed":9,"waits":"yes","songVolume":-1,"other":1,"toString":1}']) {
    const { store, state } = aStore()
    keepRehearsing(store, { getItem: () => kept, setItem: () => {} })
    expect(state().rehearsalHabits).toEqual(NEW_TO_REHEARSING)
  }
  const { store, state } = aStore()
  keepRehearsing(store, {
    getItem: () => null,
    setItem: () => {
      throw new Error('full')
    },
  })
  state().setRehearsalHabits({ click: false })
  expect(state().rehearsalHabits.click).toBe(false)
})
