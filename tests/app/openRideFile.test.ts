import { describe, expect, it, vi } from 'vitest'
import { openRideFile } from '#app/openRideFile.ts'
import { writeBackup } from '#plan/kept/backup.ts'
import type { Ride } from '#plan/model.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const ride = smallRide()
const file = (content: unknown, name = 'small.ride.json') =>
  new File([typeof content === 'string' ? content : JSON.stringify(content)], name)

const shelfOf = (...rides: Ride[]) =>
  ({
    list: async () => rides.map(({ id, title }) => ({ id, title, updated: 0 })),
    load: async (id) => ({ ok: true, ride: rides.find((other) => other.id === id)! }),
    save: vi.fn(async () => undefined),
    remove: vi.fn(async () => undefined),
  }) satisfies RideShelf

describe('opening a file', () => {
  it('makes an unknown ride one’s own', async () => {
    const { store, state } = aStore()
    await openRideFile(file(ride), store, null)
    expect(state()).toMatchObject({ ride, received: null, place: 'draft', notice: null })
  })

  it('opens the saved ride when the file says the same, private notes kept', async () => {
    const { store, state } = aStore()
    const kept = { ...ride, privateNotes: 'the fan is broken' }
    await openRideFile(file(ride), store, shelfOf(kept))
    expect(state().ride).toBe(kept)
  })

  it('shows a file that differs from the saved ride read-only, and saves nothing', async () => {
    const { store, state } = aStore()
    const shelf = shelfOf(ride)
    await openRideFile(file({ ...ride, title: 'older' }), store, shelf)
    expect(state().received?.ride.title).toBe('older')
    expect(state().notice?.sentence).toContain('“small ride” on this device differs')
    expect(shelf.save).not.toHaveBeenCalled()
  })

  it('compares with the open ride as it stands, not as it was last saved', async () => {
    const { store, state } = aStore()
    const open = { ...ride, title: 'changed a moment ago' }
    state().openRide(open)
    await openRideFile(file(ride), store, shelfOf(ride))
    expect(state().ride).toBe(open)
    expect(state().received?.ride).toEqual(ride)
  })

  it.each([
    ['no json', 'title,length', /^“small.ride.json” wasn’t opened. It isn’t a ride/],
    ['another json', { songs: [] }, /has no schema number/],
    ['a newer ride', { ...ride, schema: 99 }, /newer version/],
    ['nothing', '', /isn’t a ride/],
    ['something huge', '1'.repeat(8_000_001), /far larger/],
  ])('refuses %s in a sentence and keeps what is open', async (_, content, sentence) => {
    const { store, state } = aStore()
    state().openRide(ride)
    await openRideFile(file(content), store, null)
    expect(state().notice?.sentence).toMatch(sentence)
    expect(state()).toMatchObject({ ride, received: null })
  })

  it.each(['all.backup.json', 'all.backup (1).json', 'all.backup copy.json', 'ALL.BACKUP.JSON'])(
    'reads a backup larger than any ride, called “%s” as browsers and people call it',
    async (name) => {
      const { store, state } = aStore(shelfOf())
      const backup = { ...writeBackup({ rides: [{ ride, updated: 1 }], versions: [], profiles: [] }), padding: 'x'.repeat(8_000_001) }
      await openRideFile(file(backup, name), store, null)
      expect(state().notice).toBeNull()
      expect(state().restoring?.entries).toHaveLength(1)
    },
  )

  it('lists more than one problem', async () => {
    const { store, state } = aStore()
    await openRideFile(file({ ...ride, slotMinutes: 'x', level: 'y' }), store, null)
    expect(state().notice?.details).toHaveLength(2)
  })

  it('says so when the disk does not give the file', async () => {
    const { store, state } = aStore()
    const gone = file(ride)
    vi.spyOn(gone, 'text').mockRejectedValue(new DOMException('gone', 'NotFoundError'))
    await openRideFile(gone, store, null)
    expect(state().notice?.sentence).toContain('couldn’t be read from the disk')
  })
})
