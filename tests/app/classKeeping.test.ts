import { describe, expect, it } from 'vitest'
import { backToClass, keepClass, readClass } from '#app/classKeeping.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { leadRide } from '#tests/support/leading.ts'
import { memoryNotes } from '#tests/support/memoryNotes.ts'
import { countedIds } from '#tests/support/smallRide.ts'

const T = 1_780_000_000_000
const aStore = () => createAppStore({ newId: countedIds(), shelf: null })
const aShelf = (): NonNullable<Parameters<typeof keepClass>[2]> & { text: string | null } => {
  const shelf = {
    text: null as string | null,
    keepClass: async (text: string) => {
      shelf.text = text
    },
    keptClass: async () => shelf.text,
  }
  return shelf
}

/** A class under way on the screen, kept in both places. */
function underWay() {
  const store = aStore()
  const notes = memoryNotes()
  const shelf = aShelf()
  let time = T
  keepClass(store, notes, shelf, () => time++)
  store.getState().openRide(leadRide(), 'lead')
  store.getState().readyClass(T)
  store.getState().startClass(T, null)
  store.getState().lead({ kind: 'next' }, T + 13_000)
  return { store, notes, shelf }
}

describe('a class under way', () => {
  it('is kept at every press, in both places', async () => {
    const { store, notes, shelf } = underWay()
    const log = store.getState().leading!.log
    expect((await readClass(notes, null))!.kept!.log).toEqual(log)
    expect((await readClass(null, shelf))!.kept!.log).toEqual(log)
  })

  it('comes back from the newer copy', async () => {
    const { store, notes, shelf } = underWay()
    const lagging = memoryNotes()
    keepClass(store, lagging, null, () => T - 1)
    store.getState().lead({ kind: 'hold' }, T + 14_000)
    lagging.setItem('ridewright.class', lagging.getItem('ridewright.class')!.replace('"hold"', '"back"'))
    expect((await readClass(lagging, shelf))!.kept!.log!.events.at(-1)!.kind).toBe('hold')
    expect((await readClass(notes, null))!.kept!.log!.events.at(-1)!.kind).toBe('hold')
  })

  it('is found where one copy is damaged or storage is refused', async () => {
    const { notes, shelf } = underWay()
    notes.setItem('ridewright.class', '{"at": 9e15, "class"')
    expect(await readClass(notes, shelf)).not.toBeNull()
    const refusing = {
      getItem: () => {
        throw new Error('refused')
      },
    }
    expect(await readClass(refusing, shelf)).not.toBeNull()
    expect(await readClass(refusing, { ...shelf, keptClass: () => Promise.reject(new Error('gone')) })).toBeNull()
  })

  it('is gone once it is ended, and nothing is kept of a card that waits', async () => {
    const { store, notes, shelf } = underWay()
    store.getState().endClass()
    expect((await readClass(notes, shelf))!.kept).toBeNull()
    store.getState().readyClass(T)
    expect((await readClass(notes, shelf))!.kept).toBeNull()
    store.setState({ lastLed: null })
    expect(await readClass(notes, shelf)).toBeNull()
  })

  it('waits for the log once it is ended, over a reload', async () => {
    const { store, notes, shelf } = underWay()
    const { log } = store.getState().leading!
    store.getState().endClass()
    const next = aStore()
    backToClass(next, (await readClass(notes, shelf))!)
    const { leading, lastLed, place } = next.getState()
    expect([leading, place]).toEqual([null, 'start'])
    expect(lastLed!.plan.ride).toEqual(store.getState().lastLed!.plan.ride)
    expect(lastLed!.log).toEqual(log)
    expect(lastLed!.led!.report.overall).toEqual(store.getState().lastLed!.led!.report.overall)
  })

  it.each(['{"at":1,"onScreen":true,"class":{}}', '{"at":1,"class":{"ride":null,"log":null}}', 'null', '[]', '7'])(
    'is none in %s',
    async (text) => {
      const notes = memoryNotes()
      notes.setItem('ridewright.class', text)
      expect(await readClass(notes, null)).toBeNull()
    },
  )
})

describe('back to the class', () => {
  const left = async () => (await readClass(underWay().notes, null))!

  it('puts its screen back on the ride that is open', async () => {
    const store = aStore()
    store.getState().openRide(leadRide())
    backToClass(store, await left())
    expect(store.getState()).toMatchObject({ place: 'lead', received: null })
    expect(store.getState().leading!.log!.events).toHaveLength(1)
  })

  it('shows the ride as it was kept where it cannot be opened any more', async () => {
    const store = aStore()
    backToClass(store, await left())
    expect(store.getState().place).toBe('lead')
    expect(store.getState().received!.ride).toEqual(leadRide())
  })

  it('stays where one is when the screen had been left', async () => {
    const { store: before, notes } = underWay()
    before.getState().setPlace('draft')
    const store = aStore()
    store.getState().openRide(leadRide(), 'sheet')
    backToClass(store, (await readClass(notes, null))!)
    expect(store.getState().place).toBe('sheet')
    expect(store.getState().leading!.log).not.toBeNull()
  })
})
