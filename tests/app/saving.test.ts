import { describe, expect, it, vi } from 'vitest'
import { PAUSE, startSaving } from '#app/saving.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride } from '#plan/model.ts'
import { SAYS } from '#storage/messages.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'

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
  const storage = {
    save: vi.fn(async (kept: Ride) => {
      saved.push(kept)
      return { updated: now, overOther: false }
    }),
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
    const due = timers.filter(({ at }) => at <= now)
    timers = timers.filter(({ at }) => at > now)
    for (const { run } of due) run()
    await settled()
  }
  return { state, saved, storage, stop, pass, leave: () => leave(), hear: (id: string) => heard(id), waitingFor: () => timers.length }
}

const settled = () => new Promise((resolve) => setImmediate(resolve))
const titles = (saved: Ride[]) => saved.map(({ title }) => title)

describe('saving', () => {
  it('waits until changes rest, and saves only the last', async () => {
    const { state, saved, pass } = saving()
    state().openRide(ride)
    for (const title of ['one', 'two', 'three']) {
      state().run(retitle(title))
      await pass(PAUSE - 1)
    }
    expect(saved).toEqual([])
    expect(state().saved).toBe('saving')
    await pass(1)
    expect(titles(saved)).toEqual(['three'])
    expect(state().saved).toBe('saved')
    expect(state().savedRides).toMatchObject([{ id: ride.id, title: 'three' }])
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
    expect(state()).toMatchObject({ saved: 'failed', notice: { kind: 'problem', sentence: SAYS.full } })
    state().dismissNotice()
    await pass(FIVE_SECONDS)
    expect(state()).toMatchObject({ saved: 'failed', notice: null })
    await pass(FIVE_SECONDS)
    expect(saved).toEqual([ride])
    expect(state().saved).toBe('saved')
  })

  it('is not called saved while a later save is still under way', async () => {
    const { state, storage, pass } = saving()
    const finish: (() => void)[] = []
    storage.save.mockImplementation(() => new Promise((resolve) => finish.push(() => resolve({ updated: 1, overOther: false }))))
    state().openRide(ride)
    await pass(PAUSE)
    state().run(retitle('later'))
    await pass(PAUSE)
    finish[0]!()
    await settled()
    expect(state().saved).toBe('saving')
    finish[1]!()
    await settled()
    expect(state().saved).toBe('saved')
  })

  it('warns when another window saves the ride that is open here', async () => {
    const { state, hear } = saving()
    state().openRide(ride)
    hear('another')
    expect(state().notice).toBeNull()
    hear(ride.id)
    expect(state().notice).toEqual({ kind: 'warning', sentence: SAYS.otherWindow })
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
