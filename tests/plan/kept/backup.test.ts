import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { type Backup, isBackup, readBackup, writeBackup } from '#plan/kept/backup.ts'
import { compareBackup } from '#plan/kept/compareBackup.ts'
import { profileOfBike } from '#plan/kept/profile.ts'
import { namedVersion } from '#plan/kept/version.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = smallRide()
const bike = profileOfBike({ ...DEFAULT_BIKE, id: 'b1', name: 'back room' })
const version = { ...namedVersion(ride, 'before', 'v1'), at: 5 }
const backup: Backup = { rides: [{ ride, updated: 10 }], versions: [version], profiles: [bike], formPoints: ['Heels level.'] }
const inFile = (value: object): unknown => JSON.parse(JSON.stringify(value))

describe('a backup', () => {
  it('comes back as it was written, whatever the rides', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2 }), fc.integer(), (any, updated) => {
        const written: Backup = { rides: [{ ride: any, updated }], versions: [{ ...namedVersion(any, 'x', 'v'), at: 1 }], profiles: [bike] }
        const read = readBackup(inFile(writeBackup(written)))
        expect(read).toEqual({ ok: true, backup: written, unreadable: 0 })
      }),
      { numRuns: 40 },
    )
    expect(readBackup(inFile(writeBackup(backup)))).toEqual({ ok: true, backup, unreadable: 0 })
  })

  it('is told from a ride', () => {
    expect(isBackup(writeBackup(backup))).toBe(true)
    expect(isBackup(ride)).toBe(false)
  })

  it('loses no more than what cannot be read in it', () => {
    const spoiled = writeBackup(backup) as Record<string, unknown[]>
    spoiled.rides = [...spoiled.rides!, { updated: 1, ride: { schema: 1 } }]
    spoiled.versions = [...spoiled.versions!, 'nothing', { ...version, version: 99 }]
    expect(readBackup(inFile(spoiled))).toEqual({ ok: true, backup, unreadable: 3 })
  })

  it('keeps its order, and of two entries of one id the first', () => {
    const rides = ['one', 'two', 'three'].map((id) => ({ ride: { ...ride, id, title: id }, updated: 1 }))
    const twice = [...rides, { ride: { ...ride, id: 'two', title: 'again' }, updated: 2 }]
    expect(readBackup(inFile(writeBackup({ ...backup, rides: twice })))).toEqual({ ok: true, backup: { ...backup, rides }, unreadable: 0 })
  })

  it.each([
    ['of a version to come', { ...writeBackup(backup), backup: 2 }, /newer version/],
    ['without its lists', { ridewright: 'backup', backup: 1 }, /damaged/],
    ['with too much', { ...writeBackup(backup), versions: new Array(6_000).fill(0) }, /damaged/],
    ['that is nothing', null, /damaged/],
  ])('%s is refused in a sentence', (_, value, sentence) => {
    const read = readBackup(value)
    expect(read.ok ? '' : told(read.text)).toMatch(sentence)
  })

  it('is never the cause of an error, whatever stands in it', () => {
    const any = fc.anything({ withNullPrototype: true, maxDepth: 3 })
    fc.assert(
      fc.property(any, any, any, (rides, versions, profiles) => {
        expect(() => readBackup({ ridewright: 'backup', backup: 1, rides, versions, profiles })).not.toThrow()
        expect(() =>
          readBackup({ ridewright: 'backup', backup: 1, rides: [{ updated: 1, ride: rides }], versions: [versions], profiles: [profiles] }),
        ).not.toThrow()
      }),
    )
  })
})

describe('what a backup would change', () => {
  const stateOf = (here: Parameters<typeof compareBackup>[1]) =>
    Object.fromEntries(compareBackup(backup, here).map(({ kind, title, state }) => [`${kind} ${told(title)}`, state]))
  const nothing = { rides: [], versions: [], profiles: [] }

  it('on an empty machine is all new', () => {
    expect(stateOf(nothing)).toEqual({
      'ride small ride': 'new',
      'version before': 'new',
      'profile back room': 'new',
      'profile your own form cues': 'new',
    })
  })

  it('where all of it is, is nothing', () => {
    const here = { rides: backup.rides, versions: [version], profiles: [bike], formPoints: ['Heels level.'] }
    expect(new Set(Object.values(stateOf(here)))).toEqual(new Set(['same']))
  })

  it('of a ride is told by when each was changed, private notes included', () => {
    const changed = { ...ride, privateNotes: 'the fan is broken' }
    const at = (updated: number) => stateOf({ ...nothing, rides: [{ ride: changed, updated }] })['ride small ride']
    expect([at(5), at(15), at(10)]).toEqual(['newer', 'older', 'different'])
    expect(stateOf({ ...nothing, rides: [{ ride, updated: 99 }] })['ride small ride']).toBe('same')
  })

  it('of a bike is told by what it says', () => {
    expect(stateOf({ ...nothing, profiles: [{ ...bike, name: 'front room' }] })['profile back room']).toBe('different')
  })
})
