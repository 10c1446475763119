import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { readBackup } from '#plan/kept/backup.ts'
import { type TaughtClass, writeTaught } from '#plan/kept/taught.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { RideShelf, SoundShelf, TaughtShelf } from '#store/ports.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = demoRide('spark')
const entryOf = (id: string, day: string): TaughtClass =>
  JSON.parse(JSON.stringify(taughtOf({ ride, report: computeRide(ride) }, { id, day, startedAt: '12:10' })))

/** A page whose log holds these. */
function aMachine(...entries: TaughtClass[]) {
  const held = new Map(entries.map((entry) => [entry.id, entry]))
  const taught: TaughtShelf = {
    list: async () => [...held.values()],
    save: async (entry) => void held.set(entry.id, entry),
    remove: async (id) => void held.delete(id),
  }
  const shelf: RideShelf = {
    list: async () => [],
    load: async () => ({ ok: false, sentence: '', details: [] }),
    save: async () => undefined,
    remove: async () => undefined,
  }
  const files = new Map<string, Blob>()
  const sounds: SoundShelf = {
    load: async () => null,
    save: async () => undefined,
    listFiles: async () => [...files.keys()],
    loadFile: async (id) => files.get(id) ?? null,
    saveFile: async (id, file) => void files.set(id, file),
    removeFile: async (id) => void files.delete(id),
  }
  const store = createAppStore({ newId: countedIds('n'), shelf, taught, sounds })
  return { state: store.getState, held }
}

describe('sound files kept here', () => {
  it('are not in a backup, which is said as it is made', async () => {
    const { state } = aMachine()
    expect((await state().makeBackup())!.holds).not.toContain('sound file')
    state().haveSoundFile('print', new Blob(['x']))
    expect(await state().keepSoundFile('print')).toBe(true)
    expect((await state().makeBackup())!.holds).toContain('1 sound file kept here is not in it.')
  })
})

describe('the log in a backup', () => {
  it('goes into it, and comes back where it is not', async () => {
    const entries = [entryOf('a', '2026-11-18'), entryOf('b', '2026-11-25')]
    const made = (await aMachine(...entries)
      .state()
      .makeBackup())!
    expect(made.holds).toContain('2 classes taught')
    const other = aMachine({ ...entries[0]!, headCount: 3 })
    await other.state().receiveBackup(JSON.parse(JSON.stringify(made.file)), 'all.json')
    expect(
      other
        .state()
        .restoring!.entries.map(({ kind, title, state }) => [kind, told(title), state])
        .sort(),
    ).toEqual([
      ['class', 'Twenty-Minute Spark, taught November 18, 2026', 'different'],
      ['class', 'Twenty-Minute Spark, taught November 25, 2026', 'new'],
    ])
    other.state().takeEntry('class a', false)
    await other.state().restoreBackup()
    expect(other.held.get('a')).toMatchObject({ headCount: 3 })
    expect(other.held.get('b')).toEqual(entries[1])
    expect(other.state().taught).toHaveLength(2)
  })

  it('an entry that cannot be read spoils nothing else and is counted', () => {
    const good = JSON.parse(writeTaught(entryOf('a', '2026-11-18')))
    const read = readBackup({
      ridewright: 'backup',
      backup: 1,
      rides: [],
      versions: [],
      profiles: [],
      taught: [good, { ...good, day: 'soon' }, null],
    })
    expect(read).toMatchObject({ ok: true, unreadable: 2, backup: { taught: [{ id: 'a' }] } })
  })
})
