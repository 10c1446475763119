import { describe, expect, it, vi } from 'vitest'
import { PAUSE, startSaving } from '#app/saving.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import { SAYS } from '#storage/messages.ts'
import type { SaveOutcome } from '#storage/openStorage.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

type Kept = Extract<SaveOutcome, { deleted: false }>

/** No change waits longer. */
const LONGEST = 500
/** A save that failed is tried again after so long. */
const FIVE_SECONDS = 5000

const ride = smallRide()
const retitle = (title: string) => patchRide({ title })

/** A store that saves into a list, under a clock that moves when it is told to. */
function saving() {
  const { state, store } = aStore()
  const saved: Ride[] = []
  let timers: { at: number; run: () => void }[] = []
  let now = 0
  let leave = () => {}
  let heard = (_id: string) => {}
  const outcome = (stored: Ride, more: Partial<Kept> = {}): SaveOutcome => ({
    deleted: false,
    updated: now,
    stored,
    merged: null,
    copies: 2,
    wasCleared: false,
    ...more,
  })
  const storage = {
    save: vi.fn(async (kept: Ride, _base?: Ride): Promise<SaveOutcome> => {
      saved.push(kept)
      return outcome(kept)
    }),
    countCopies: vi.fn(async () => 2),
    markOpened: vi.fn(async () => undefined),
    onSavedElsewhere: (listener: (id: string) => void) => {
      heard = listener
      return () => {
        heard = () => {}
      }
    },
  }
  const stop = startSaving(store, storage, {
    later: (run, milliseconds) => {
      const timer = { at: now + milliseconds, run }
      timers.push(timer)
      return () => {
        timers = timers.filter((other) => other !== timer)
      }
    },
    onLeaving: (run) => {
      leave = run
      return () => {
        leave = () => {}
      }
    },
  })
  const pass = async (milliseconds: number) => {
    now += milliseconds
    // One that is called off by another that is due does not run.
    for (let due = timers.find(({ at }) => at <= now); due; due = timers.find(({ at }) => at <= now)) {
      const { run } = due
      timers = timers.filter((other) => other !== due)
      run()
    }
    await settled()
  }
  return {
    state,
    saved,
    storage,
    outcome,
    stop,
    pass,
    leave: () => leave(),
    hear: (id: string) => heard(id),
    waitingFor: () => timers.length,
  }
}

const settled = () => new Promise((resolve) => setImmediate(resolve))
const titles = (saved: Ride[]) => saved.map(({ title }) => title)

describe('saving', () => {
  it('waits until changes rest, and saves only the last', async () => {
    const { state, saved, pass } = saving()
    state().openRide(ride)
    for (const title of ['one', 'two', 'three']) {
      state().run(retitle(title))
      await pass(PAUSE / 2)
    }
    expect(saved).toEqual([])
    expect(state().saved).toBe('saving')
    await pass(PAUSE / 2)
    expect(titles(saved)).toEqual(['three'])
    expect(state().saved).toBe('saved')
    expect(state().savedRides).toMatchObject([{ id: ride.id, title: 'three' }])
  })

  it('lets no change wait longer than the longest wait, however busily others follow', async () => {
    const { state, saved, pass } = saving()
    state().openRide(ride)
    for (let count = 1; count <= 12; count++) {
      state().run(retitle(String(count)))
      await pass(LONGEST / 4)
    }
    expect(titles(saved)).toEqual(['4', '8', '12'])
  })

  it('saves a change that comes due during a save right after it', async () => {
    const { state, saved, storage, outcome, pass } = saving()
    state().openRide(ride)
    let finish = () => {}
    storage.save.mockImplementationOnce((kept) => new Promise((resolve) => (finish = () => resolve(outcome(kept)))))
    await pass(PAUSE)
    state().run(retitle('meanwhile'))
    await pass(LONGEST)
    expect(saved).toEqual([])
    finish()
    await settled()
    expect(titles(saved)).toEqual(['meanwhile'])
    expect(storage.save.mock.lastCall![1]).toBe(ride)
  })

  it('saves undone changes, and neither previews nor received rides', async () => {
    const { state, saved, pass } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    state().preview(moveItem(ride, { itemId: 'c', sectionId: 'song', index: 0 }))
    state().receiveRide({ ...ride, id: 'theirs' })
    await pass(PAUSE)
    state().dismissReceived()
    await pass(PAUSE)
    expect(saved).toEqual([ride])
    state().run(retitle('changed'))
    await pass(PAUSE)
    state().undo()
    await pass(PAUSE)
    expect(titles(saved)).toEqual([ride.title, 'changed', ride.title])
  })

  it('saves a demo ride once it is changed or is to be kept, and not before', async () => {
    const { state, saved, storage, pass, leave } = saving()
    state().openRide(ride)
    state().openDemo({ ...ride, id: 'spark' })
    const { id } = state().ride!
    leave()
    await pass(PAUSE)
    // The ride before it is saved as it is left, and the demo ride is what a reload opens.
    expect(saved).toEqual([ride])
    expect(state()).toMatchObject({ saved: 'saved', savedRides: [{ id: ride.id }] })
    expect(storage.markOpened).toHaveBeenLastCalledWith(id)
    state().run(retitle('changed'))
    expect(state().saved).toBe('saving')
    await pass(PAUSE)
    state().undo()
    await pass(PAUSE)
    expect(saved.slice(1).map((kept) => [kept.id, kept.title])).toEqual([
      [id, 'changed'],
      [id, ride.title],
    ])
    state().openDemo({ ...ride, id: 'ridge' })
    await pass(PAUSE)
    expect(saved).toHaveLength(3)
    state().keepDemo()
    await pass(PAUSE)
    expect(saved.at(-1)).toBe(state().ride)
  })

  it('saves a demo ride with a ride that is made from it', async () => {
    const { state, saved, pass } = saving()
    state().openDemo({ ...ride, id: 'spark' })
    const { id } = state().ride!
    state().openRide({ ...ride, id: 'shorter', parent: { rideId: id, revision: '0123456789abcdef' } })
    await pass(PAUSE)
    expect(saved.map((kept) => kept.id)).toEqual([id, 'shorter'])
  })

  it('does not leave a change behind when another ride is opened', async () => {
    const { state, saved, storage } = saving()
    state().openRide(ride)
    state().run(retitle('last word'))
    state().openRide({ ...ride, id: 'other' })
    await settled()
    expect(titles(saved)).toEqual(['last word'])
    state().closeRide()
    await settled()
    expect(saved.at(-1)!.id).toBe('other')
    expect(storage.markOpened.mock.calls).toEqual([[ride.id], ['other'], [null]])
  })

  it('saves at once when the page is left, and once', async () => {
    const { state, saved, pass, leave } = saving()
    state().openRide(ride)
    leave()
    leave()
    await pass(PAUSE)
    expect(saved).toEqual([ride])
  })

  it('says once that a save failed, and tries again until it works', async () => {
    const { state, saved, storage, pass } = saving()
    storage.save.mockRejectedValueOnce(new DOMException('full', 'QuotaExceededError')).mockRejectedValueOnce(new Error('still'))
    state().openRide(ride)
    await pass(PAUSE)
    expect(state()).toMatchObject({ saved: 'failed', notice: { kind: 'problem', sentence: told(SAYS.full) } })
    state().dismissNotice()
    await pass(FIVE_SECONDS)
    expect(state()).toMatchObject({ saved: 'failed', notice: null })
    await pass(FIVE_SECONDS)
    expect(saved).toEqual([ride])
    expect(state().saved).toBe('saved')
  })

  it('is not called saved while a later save is still under way', async () => {
    const { state, storage, outcome, pass, leave } = saving()
    const finish: (() => void)[] = []
    storage.save.mockImplementation((kept) => new Promise((resolve) => finish.push(() => resolve(outcome(kept)))))
    state().openRide(ride)
    await pass(PAUSE)
    state().run(retitle('later'))
    leave()
    finish[0]!()
    await settled()
    expect(state().saved).toBe('saving')
    finish[1]!()
    await settled()
    expect(state().saved).toBe('saved')
  })

  it('takes in what another window saved, keeps what was changed meanwhile, and saves that too', async () => {
    const { state, saved, storage, outcome, pass, hear } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    const theirs = { ...ride, aim: 'theirs' }
    storage.save.mockImplementationOnce(async (kept) => {
      state().run(retitle('mine, meanwhile'))
      return outcome({ ...kept, aim: 'theirs' }, { merged: { base: ride, theirs, merge: mergeWindows(ride, kept, theirs) } })
    })
    hear('another')
    expect(storage.save).toHaveBeenCalledTimes(1)
    hear(ride.id)
    await settled()
    expect(state()).toMatchObject({ saved: 'saving', notice: null, ride: { title: 'mine, meanwhile', aim: 'theirs' } })
    await pass(PAUSE)
    expect(saved.at(-1)).toMatchObject({ title: 'mine, meanwhile', aim: 'theirs' })
    expect(storage.save.mock.lastCall![1]).toMatchObject({ aim: 'theirs', title: ride.title })
  })

  it('writes nothing for what only came in', async () => {
    const { state, storage, outcome, pass, hear, waitingFor } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    const theirs = { ...ride, aim: 'theirs' }
    storage.save.mockResolvedValueOnce(outcome(theirs, { merged: { base: ride, theirs, merge: mergeWindows(ride, ride, theirs) } }))
    hear(ride.id)
    await settled()
    expect(state()).toMatchObject({ saved: 'saved', ride: { aim: 'theirs' }, past: [] })
    expect(storage.save).toHaveBeenCalledTimes(2)
    // Only the look whether it is still there.
    expect(waitingFor()).toBe(1)
  })

  it('takes nothing back of what came in while it waited for its turn', async () => {
    const { state, storage, outcome, pass, hear } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    const theirs = { ...ride, aim: 'theirs' }
    let finish = () => {}
    storage.save.mockImplementationOnce(
      (kept) =>
        new Promise((resolve) => {
          finish = () => resolve(outcome(theirs, { merged: { base: ride, theirs, merge: mergeWindows(ride, kept, theirs) } }))
        }),
    )
    hear(ride.id)
    hear(ride.id)
    finish()
    await settled()
    expect(storage.save).toHaveBeenCalledTimes(3)
    expect(storage.save.mock.lastCall).toEqual([theirs, theirs])
  })

  it('offers to decide what both windows changed', async () => {
    const { state, storage, outcome, pass } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    state().run(retitle('mine'))
    const theirs = { ...ride, title: 'theirs' }
    storage.save.mockImplementationOnce(async (kept) =>
      outcome(kept, { merged: { base: ride, theirs, merge: mergeWindows(ride, kept, theirs) } }),
    )
    await pass(PAUSE)
    expect(state()).toMatchObject({ notice: { offer: { place: 'merge' } }, merging: { inWindows: true, theirs } })
    state().chooseAll('theirs')
    await state().takeMerge()
    expect(state().ride!.title).toBe('theirs')
    state().undo()
    expect(state().ride!.title).toBe('mine')
  })

  it('says that another window deleted the ride, saves it no more, and keeps it when asked', async () => {
    const { state, saved, storage, pass, hear } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    storage.save.mockResolvedValueOnce({ deleted: true })
    hear(ride.id)
    await settled()
    expect(state()).toMatchObject({ saved: 'deleted', notice: { sentence: told(SAYS.deletedElsewhere) } })
    state().run(retitle('still here'))
    await pass(LONGEST)
    expect(state().saved).toBe('deleted')
    expect(saved).toHaveLength(1)
    state().keepDeleted()
    await pass(PAUSE)
    expect(titles(saved)).toEqual([ride.title, 'still here'])
    expect(storage.save.mock.lastCall![1]).toBeUndefined()
    expect(state().saved).toBe('saved')
  })

  it('looks whether what was saved is still there, and saves it again where it is not', async () => {
    const { state, saved, storage, pass } = saving()
    state().openRide(ride)
    await pass(PAUSE)
    await pass(FIVE_SECONDS)
    expect(storage.countCopies).toHaveBeenCalled()
    expect(saved).toHaveLength(1)
    storage.countCopies.mockResolvedValueOnce(0)
    await pass(FIVE_SECONDS)
    expect(saved).toHaveLength(2)
    expect(state().saved).toBe('saved')
  })

  it('tells that only one copy could be written, and tries for the other', async () => {
    const { state, storage, outcome, pass } = saving()
    storage.save.mockImplementationOnce(async (kept) => outcome(kept, { copies: 1 }))
    state().openRide(ride)
    await pass(PAUSE)
    expect(state()).toMatchObject({ saved: 'saved', oneCopy: true })
    await pass(FIVE_SECONDS)
    expect(storage.save).toHaveBeenCalledTimes(2)
    expect(state()).toMatchObject({ saved: 'saved', oneCopy: false })
  })

  it('ends with what is waiting saved', async () => {
    const { state, saved, stop, waitingFor } = saving()
    state().openRide(ride)
    stop()
    await settled()
    expect(saved).toEqual([ride])
    state().run(retitle('too late'))
    expect(waitingFor()).toBe(0)
  })
})
