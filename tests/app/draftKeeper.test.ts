import { describe, expect, it } from 'vitest'
import { backToDraft, createDraftKeeper, takeLeftDrafts } from '#app/draftKeeper.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'
import { smallRide } from '#tests/support/smallRide.ts'

type DraftNote = Parameters<typeof backToDraft>[1][number]

const ride = smallRide()
const settled = () => new Promise((resolve) => setImmediate(resolve))

function keeping(left: readonly DraftNote[] = []) {
  const { state, store } = aStore()
  state().openRide(ride)
  const notes = memoryNotes()
  const second = new Map<string, string>()
  const pad = {
    noteDown: async (name: string, text: string | null) => {
      if (text === null) second.delete(name)
      else second.set(name, text)
    },
    notesUnder: async (prefix: string) => [...second].filter(([name]) => name.startsWith(prefix)).map(([name, text]) => ({ name, text })),
  }
  let later = () => {}
  const keeper = createDraftKeeper(store, left, {
    notes,
    pad,
    window: 'w',
    later: (run) => {
      later = run
      return () => {}
    },
    onLeaving: () => () => {},
  })
  return { state, store, keeper, notes, pad, second, later: () => later() }
}

describe('words in a field', () => {
  it('are kept twice as they are typed, and go once they are taken', async () => {
    const { state, keeper, notes, second, later } = keeping()
    keeper.note('draft ride title', 'small ride', 'smal')
    keeper.note('draft ride title', 'small ride', 'small')
    later()
    await settled()
    expect(state().typing).toBe(true)
    expect(JSON.parse(notes.getItem('ridewright.drafts.w')!)).toMatchObject([{ text: 'small', rideId: ride.id }])
    expect(second.size).toBe(1)
    keeper.drop('draft ride title')
    later()
    await settled()
    expect(state().typing).toBe(false)
    expect([notes.length, second.size]).toEqual([0, 0])
  })

  it('come back to a field whose value is what it was, and to no other', async () => {
    const { keeper, notes, pad, later } = keeping()
    keeper.note('a', '1', '12')
    keeper.note('b', '1', '13')
    later()
    const left = await takeLeftDrafts(notes, pad, () => false)
    const next = keeping(left)
    expect(next.keeper.left('a', '1')).toBe('12')
    expect(next.keeper.left('b', 'changed since')).toBeNull()
    expect(next.keeper.left('c', '1')).toBeNull()
    // Kept on until they are taken: the page may end again.
    expect(next.notes.length).toBe(1)
    expect(await takeLeftDrafts(notes, pad, () => false)).toEqual([])
  })

  it('come back after a kill that left only the second copy', async () => {
    const { keeper, pad, later } = keeping()
    keeper.note('a', '1', '12')
    later()
    expect(await takeLeftDrafts(memoryNotes(), pad, () => false)).toMatchObject([{ field: 'a', text: '12' }])
  })

  it('of a window that is open stay its own', async () => {
    const { keeper, notes, pad, later } = keeping()
    keeper.note('a', '1', '12')
    later()
    expect(await takeLeftDrafts(notes, pad, (window) => window === 'w')).toEqual([])
    expect(notes.length).toBe(1)
  })

  it('are not waiting any more where their field is gone, and come back with it', async () => {
    const { state, keeper } = keeping()
    keeper.note('a', '1', '12')
    keeper.leave('a')
    await settled()
    expect(state().typing).toBe(false)
    expect(keeper.left('a', '1')).toBe('12')
  })

  it('have what they are about chosen again, and say so', () => {
    const { state, store } = keeping()
    const note = { field: 'x', over: '', text: 'y', rideId: ride.id, sectionId: 'song', ids: ['b'] }
    backToDraft(store, [{ ...note, rideId: 'another' }])
    expect(state().notice).toBeNull()
    backToDraft(store, [note])
    expect(state().selection.ids).toEqual(['b'])
    expect(state().notice!.kind).toBe('info')
  })

  it.each(['', '{', '7', '[{"field":1}]', '[null]'])('that make no sense are none: %j', async (text) => {
    expect(await takeLeftDrafts(memoryNotes({ 'ridewright.drafts.w': text }), null, () => false)).toEqual([])
  })
})
