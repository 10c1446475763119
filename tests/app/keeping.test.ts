import { describe, expect, it, vi } from 'vitest'
import { remindOfBackups } from '#app/backupReminder.ts'
import { askForKeeping } from '#app/keepingPromise.ts'
import { aStore } from '#tests/support/aStore.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const ride = smallRide()
/** So many changed rides are worth a word. */
const MANY = 8
const settled = () => new Promise((resolve) => setImmediate(resolve))
const saveOnce = (state: ReturnType<typeof aStore>['state']) => {
  state().setSaved('saving')
  state().setSaved('saved')
}

describe('asking the browser to keep rides', () => {
  it('is done once, when the first ride of one’s own is kept, and what it says is told', async () => {
    const notes = memoryNotes()
    const keeper = { persisted: async () => false, persist: vi.fn(async () => true) }
    const { state, store } = aStore()
    askForKeeping(store, keeper, notes)
    await settled()
    expect(state().keeping).toBe('unpromised')
    state().openDemo({ ...ride, id: 'spark' })
    saveOnce(state)
    expect(keeper.persist).not.toHaveBeenCalled()
    state().openRide(ride)
    saveOnce(state)
    await settled()
    expect(state().keeping).toBe('promised')
    saveOnce(state)
    const next = aStore()
    askForKeeping(next.store, keeper, notes)
    next.state().openRide(ride)
    saveOnce(next.state)
    expect(keeper.persist).toHaveBeenCalledTimes(1)
  })

  it('says nothing where the browser has no such promise to give', () => {
    const { state, store } = aStore()
    askForKeeping(store, undefined, null)
    state().openRide(ride)
    saveOnce(state)
    expect(state().keeping).toBeNull()
  })
})

describe('a backup that is due', () => {
  const rides = (many: number, updated: number) =>
    Array.from({ length: many }, (_, index) => ({ id: `r${index}`, title: 'a ride', updated }))

  it('is said once after so many changed rides, and again only after a backup and as many more', async () => {
    const notes = memoryNotes()
    const { state, store } = aStore()
    remindOfBackups(store, notes, () => 5000)
    store.setState({ savedRides: rides(MANY - 1, 1000) })
    expect(state().notice).toBeNull()
    store.setState({ savedRides: rides(MANY, 1000) })
    expect(state().notice!.sentence).toContain(`${MANY} rides are saved here`)
    state().dismissNotice()
    store.setState({ savedRides: rides(MANY + 1, 1000) })
    expect(state().notice).toBeNull()

    const next = aStore()
    remindOfBackups(next.store, notes, () => 5000)
    next.store.setState({ savedRides: rides(MANY, 2000) })
    expect(next.state().notice).toBeNull()
    await next.state().makeBackup()
    next.store.setState({ savedRides: rides(MANY, 4000) })
    expect(next.state().notice).toBeNull()
    next.store.setState({ savedRides: rides(MANY, 6000) })
    expect(next.state().notice!.sentence).toContain(`${MANY} rides have changed since`)
  })
})
