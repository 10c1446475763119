import { describe, expect, it, vi } from 'vitest'
import { followAddress, openLink, tieAddress } from '#app/addressSync.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import type { Ride } from '#plan/model.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const mine = smallRide()
const theirs: Ride = { ...smallRide(), id: 'theirs', title: 'theirs' }
const link = `#${encodeLink(theirs)}`

const shelfOf = (...rides: Ride[]): RideShelf => ({
  list: async () => rides.map(({ id, title }) => ({ id, title, updated: 0 })),
  load: async (id) => {
    const ride = rides.find((other) => other.id === id)
    return ride ? { ok: true, ride } : { ok: false, sentence: 'This ride is not saved here.', details: [] }
  },
  save: vi.fn(async () => undefined),
  remove: vi.fn(async () => undefined),
})

/** A page address with a history, as a window has them. */
function anAddressBar(hash: string) {
  const history = [hash]
  let hear: () => unknown = () => {}
  const location = { hash }
  const write = (how: 'push' | 'replace') => (_state: unknown, _title: string, next: string) => {
    history.splice(how === 'push' ? history.length : history.length - 1, 1, next)
    location.hash = next
  }
  const bar = {
    location,
    history: { pushState: write('push'), replaceState: write('replace') },
    addEventListener: (_name: string, listener: () => unknown) => {
      hear = listener
    },
    removeEventListener: () => {
      hear = () => {}
    },
  }
  const type = (next: string) => {
    history.push(next)
    location.hash = next
    return hear()
  }
  return { bar: bar as unknown as Parameters<typeof tieAddress>[1], history, type }
}

describe('following an address', () => {
  it('shows a link read-only over the open ride and leaves that alone', async () => {
    const shelf = shelfOf()
    const { store, state } = aStore(shelf)
    state().openRide(mine)
    await followAddress(link, store)
    expect(state().shown).toEqual(theirs)
    expect(state().ride).toBe(mine)
    expect(shelf.save).not.toHaveBeenCalled()
  })

  it('says what is wrong with a link in a notice and stays where it is', async () => {
    const { store, state } = aStore()
    state().openRide(mine)
    for (const spoiled of [link.slice(0, -9), link.replace('#r1', '#r9'), '#r1.<script>', '#fbclid=1', link.toLowerCase()]) {
      state().dismissNotice()
      await followAddress(spoiled, store)
      expect(state().notice).toMatchObject({
        kind: 'problem',
        sentence: expect.stringMatching(/\. Your rides on this device are untouched\.$/),
      })
      expect(state()).toMatchObject({ shown: mine, ride: mine, place: 'draft', received: null })
    }
  })

  it('says so where there is another link beside the one it opens', async () => {
    const { store, state } = aStore()
    openLink(`${link} or ${link.replace('#', '')} or https://rides.example/#${encodeLink(mine)}`, store)
    expect(state()).toMatchObject({ shown: theirs, place: 'draft' })
    expect(state().notice?.sentence).toBe('There was another link to a ride in that text. This is the first one.')
  })

  it('lists every problem of a whole link whose ride is wrong', async () => {
    const { store, state } = aStore()
    const wrong = { ...theirs, slotMinutes: 100_000, briefingSeconds: 10_000_000 }
    await followAddress(`#${encodeLink(wrong)}`, store)
    expect(state().notice?.details).toHaveLength(2)
    expect(state()).toMatchObject({ place: 'start', shown: null })
  })

  it('opens the ride an address names, and the start where it is not saved', async () => {
    const { store, state } = aStore(shelfOf(mine))
    await followAddress(`#/sheet/${mine.id}`, store)
    expect(state()).toMatchObject({ ride: mine, place: 'sheet' })
    await followAddress('#/draft/unknown', store)
    expect(state()).toMatchObject({ place: 'start', notice: { sentence: 'This ride is not saved here.' } })
  })

  it('does not open anew the ride that is open, which would end its way back', async () => {
    const { store, state } = aStore(shelfOf(mine))
    const open = { ...mine, title: 'changed' }
    state().openRide(open)
    await followAddress(`#/sheet/${mine.id}`, store)
    expect(state()).toMatchObject({ ride: open, place: 'sheet' })
  })

  it('goes to no place of a ride while there is none', async () => {
    const { store, state } = aStore()
    await followAddress('#/sheet', store)
    expect(state().place).toBe('start')
  })
})

describe('the tie between address and store', () => {
  it('writes places into the history, and the first one over what stood there', () => {
    const { store, state } = aStore()
    const { bar, history } = anAddressBar('')
    tieAddress(store, bar)
    state().openRide(mine)
    state().setPlace('sheet')
    state().announce('no place')
    expect(history).toEqual(['#/start', `#/draft/${mine.id}`, `#/sheet/${mine.id}`])
  })

  it('keeps a link in the address while its ride is shown, and names the copy once it is kept', async () => {
    const { store, state } = aStore()
    const { bar, history, type } = anAddressBar('')
    tieAddress(store, bar)
    await type(link)
    state().setPlace('sheet')
    expect(history).toEqual(['#/start', link])
    state().keepCopy()
    expect(history.at(-1)).toBe(`#/sheet/${state().ride!.id}`)
    expect(state().ride!.id).not.toBe(theirs.id)
  })

  it('puts a link that was pasted into the address, and one that came with more than itself as it was made', async () => {
    const { store, state } = aStore()
    const { bar, history, type } = anAddressBar('')
    tieAddress(store, bar)
    openLink(`Here: ${link} see you`, store)
    expect(history).toEqual(['#/start', link])
    state().dismissReceived()
    await type(`${link}&fbclid=abc`)
    expect(history).toEqual(['#/start', link, '#/start', link])
  })

  it('replaces a link that could not be opened, so that a reload is not refused again', async () => {
    const { store } = aStore()
    const { bar, history, type } = anAddressBar('')
    tieAddress(store, bar)
    await type('#r1.broken')
    expect(history).toEqual(['#/start', '#/start'])
  })

  it('follows back and forward without adding to them', async () => {
    const { store, state } = aStore(shelfOf(mine))
    const { bar, history, type } = anAddressBar('')
    tieAddress(store, bar)
    state().openRide(mine)
    await type('#/start')
    expect(state().place).toBe('start')
    await type(`#/handover/${mine.id}`)
    expect(state().place).toBe('handover')
    expect(history).toEqual(['#/start', `#/draft/${mine.id}`, '#/start', `#/handover/${mine.id}`])
  })

  it('leaves an address that the browser has gone to, and not yet told of, to what it then says', () => {
    const { store, state } = aStore()
    const { bar, history } = anAddressBar('')
    state().openRide(mine)
    tieAddress(store, bar)
    bar.location.hash = '#/start'
    const before = [...history]
    state().notify({ kind: 'info', sentence: 'Something else.' })
    expect([bar.location.hash, history]).toEqual(['#/start', before])
  })

  it('ends', () => {
    const { store, state } = aStore()
    const { bar, history } = anAddressBar('')
    tieAddress(store, bar)()
    state().openRide(mine)
    expect(history).toEqual(['#/start'])
  })
})
