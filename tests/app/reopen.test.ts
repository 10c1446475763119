import { describe, expect, it } from 'vitest'
import { keepSession, readSession, type Session } from '#app/lastSession.ts'
import { reopen } from '#app/reopen.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const mine = smallRide()
const shelf: RideShelf = {
  list: async () => [],
  load: async (id) => (id === mine.id ? { ok: true, ride: mine } : { ok: false, sentence: 'not here', details: [] }),
  save: async () => undefined,
  remove: async () => undefined,
}
const session: Session = { place: 'sheet', view: { fromSeconds: 10, toSeconds: 90 }, theme: 'dark' }
const last = async () => mine.id

describe('reopening', () => {
  it('brings back ride, place, view and colours as they were left', async () => {
    const { store, state } = aStore(shelf)
    await reopen(store, '', session, last)
    expect(state()).toMatchObject({ ride: mine, place: 'sheet', view: session.view, theme: 'dark' })
  })

  it('goes where the address says, with the ride that was left', async () => {
    const { store, state } = aStore(shelf)
    await reopen(store, '#/handover', session, last)
    expect(state()).toMatchObject({ ride: mine, place: 'handover' })
  })

  it('brings back a demo ride that nobody has changed, by its address or as the ride that was left', async () => {
    const demo = { ...mine, id: 'spark' }
    for (const [address, left] of [
      ['#/sheet/spark.a1-2', null],
      ['', 'spark.a1-2'],
    ]) {
      const { store, state } = aStore(shelf, async (id) => (id === 'spark' ? demo : null))
      await reopen(store, address!, session, async () => left!)
      expect(state()).toMatchObject({ isDemo: true, ride: { id: 'spark.a1-2', title: demo.title }, place: 'sheet' })
    }
  })

  it('shows a link and leaves the last ride closed', async () => {
    const { store, state } = aStore(shelf)
    await reopen(store, `#${encodeLink({ ...mine, id: 'theirs' })}`, session, last)
    expect(state()).toMatchObject({ ride: null, place: 'draft', theme: 'dark' })
    expect(state().received?.ride.id).toBe('theirs')
  })

  it('begins at the start when nothing was left, the ride is gone, or storage does not answer', async () => {
    for (const lastOpened of [async () => null, async () => 'gone', () => Promise.reject(new Error('no storage'))]) {
      const { store, state } = aStore(shelf)
      await reopen(store, '', session, lastOpened)
      expect(state()).toMatchObject({ place: 'start', ride: null })
    }
  })
})

describe('the session', () => {
  it('is noted on a change and on leaving, and read back', () => {
    const { store, state } = aStore()
    const notes = memoryNotes()
    let later = () => {}
    keepSession(store, notes, {
      later: (run) => {
        later = run
        return () => {}
      },
      onLeaving: () => () => {},
    })
    state().openRide(mine)
    state().setPlace('sheet')
    state().setView(session.view)
    state().setTheme('dark')
    expect(readSession(notes)).toEqual({ place: 'start', view: null, theme: 'auto' })
    later()
    expect(readSession(notes)).toEqual(session)
  })

  it('does not take a look at a shared ride for the place one’s own was left', () => {
    const { store, state } = aStore()
    const notes = memoryNotes()
    let leave = () => {}
    keepSession(store, notes, {
      later: () => () => {},
      onLeaving: (run) => {
        leave = run
        return () => {}
      },
    })
    state().receiveRide(mine)
    state().setPlace('handover')
    leave()
    expect(notes.length).toBe(0)
  })

  it.each(['', '{', '7', '"x"', '{"place":"cellar","view":{"fromSeconds":"0"},"theme":3}', '[]'])(
    'is as on a first visit when %j is kept',
    (kept) => {
      expect(readSession(memoryNotes({ 'ridewright.session': kept }))).toEqual({ place: 'start', view: null, theme: 'auto' })
    },
  )

  it('is as on a first visit without storage', () => {
    expect(readSession(null)).toEqual({ place: 'start', view: null, theme: 'auto' })
  })
})
