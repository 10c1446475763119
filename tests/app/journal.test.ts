import { describe, expect, it, vi } from 'vitest'
import { keepJournal } from '#app/journal.ts'
import { saveNoted } from '#app/leavingNotes.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride } from '#plan/model.ts'
import type { SaveOutcome } from '#storage/openStorage.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const ride = smallRide()
/** Milliseconds between two notes at least. */
const BETWEEN_NOTES = 250
const retitle = (title: string) => patchRide({ title })

function journal() {
  const { state, store } = aStore()
  const pad = new Map<string, string>()
  let now = 1000
  let timers: { at: number; run: () => void }[] = []
  const written = vi.fn()
  const noteDown = async (name: string, text: string | null) => {
    if (text === null) pad.delete(name)
    else {
      pad.set(name, text)
      written(JSON.parse(text).ride.title)
    }
  }
  keepJournal(store, { noteDown }, 'w', {
    now: () => now,
    later: (run, milliseconds) => {
      timers.push({ at: now + milliseconds, run })
      return () => {}
    },
  })
  const pass = (milliseconds: number) => {
    now += milliseconds
    const due = timers.filter(({ at }) => at <= now)
    timers = timers.filter(({ at }) => at > now)
    for (const { run } of due) run()
  }
  const change = (title: string) => {
    state().setSaved('saving')
    state().run(retitle(title))
  }
  const notes = { noteDown, notesUnder: async () => [...pad].map(([name, text]) => ({ name, text })) }
  return { state, pad, notes, written, pass, change }
}

describe('the journal', () => {
  it('notes the first change at once, and what follows every quarter of a second', () => {
    const { state, written, pass, change } = journal()
    state().openRide(ride)
    expect(written).not.toHaveBeenCalled()
    for (let count = 1; count <= 10; count++) {
      change(String(count))
      pass(BETWEEN_NOTES / 5)
    }
    expect(written.mock.calls.flat()).toEqual(['1', '5', '10'])
  })

  it('is struck out once the ride is saved, and writes nothing then', () => {
    const { state, pad, written, pass, change } = journal()
    state().openRide(ride)
    change('one')
    change('two')
    expect(pad.size).toBe(1)
    state().setSaved('saved')
    expect(pad.size).toBe(0)
    pass(BETWEEN_NOTES)
    expect(written).toHaveBeenCalledTimes(1)
  })

  it('is saved at the next start, with what it was made from, and struck out', async () => {
    const { state, pad, notes, change } = journal()
    state().openRide(ride)
    change('not saved')
    const save = vi.fn(
      async (stored: Ride, _base?: Ride): Promise<SaveOutcome> => ({
        deleted: false,
        updated: 0,
        stored,
        merged: null,
        copies: 2,
        wasCleared: false,
      }),
    )
    // Saved since by another window: what it was made from says how the two go together.
    await saveNoted(null, { list: async () => [{ id: ride.id, title: '', updated: 5000 }], save }, notes)
    expect(save.mock.calls).toEqual([[{ ...ride, title: 'not saved' }, ride]])
    expect(pad.size).toBe(0)
  })

  it('notes no demo ride and none that another window deleted', () => {
    const { state, pad } = journal()
    state().openDemo({ ...ride, id: 'spark' })
    expect(pad.size).toBe(0)
    state().openRide(ride)
    state().setSaved('deleted')
    state().run(retitle('one'))
    expect(pad.size).toBe(0)
  })
})
