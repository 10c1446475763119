import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { insertItems } from '#plan/commands/insertItems.ts'
import { DEFAULT_BIKE, TYPICAL_BIKES } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { readBackup, writeBackup } from '#plan/kept/backup.ts'
import { readProfile, writeProfile } from '#plan/kept/profile.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { type Block, type Item, isSet, type Ride } from '#plan/model.ts'
import { MOST_ITEMS, type OwnPattern, patternOf } from '#plan/patterns/ownPattern.ts'
import { usePattern as patternAt } from '#plan/patterns/usePattern.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'

const total = (from: number, to = from) => ({ kind: 'total', from, to }) as const
const blocksOf = (items: readonly Item[]): Block[] => items.flatMap((item) => (isSet(item) ? item.parts : [item]))
const totalsOf = (items: readonly Item[]) => blocksOf(items).map(({ resistance: call }) => (call.kind === 'total' ? call.from : call.kind))

/** Without what is a ride's own: ids, and who leads. */
const bare = (items: readonly Item[]): unknown =>
  JSON.parse(JSON.stringify(items), (key, value) => (['id', 'leader', 'mic'].includes(key) ? undefined : value))

const rideOf = (blocks: readonly Item[], change: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  bike: DEFAULT_BIKE,
  datum: 'base',
  sections: [aSection('s', { song: aSong('song'), blocks })],
  ...change,
})

const climb = [
  aBlock('in', { resistance: total(2) }),
  aBlock('up', { resistance: total(6, 8), cues: [{ id: 'c', moment: 'announce', lead: { counts: 8 }, text: 'Up.' }] }),
  aBlock('top', { resistance: { kind: 'change', mode: 'exact', steps: 2 } }),
]
const kept = (): OwnPattern => patternOf(rideOf(climb), ['up', 'top'])!

describe('an own pattern', () => {
  it('used where it was kept gives the same blocks, but for ids and who leads', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.nat(), (ride, at) => {
        const places = ride.sections.filter(({ blocks }) => blocks.length > 0)
        fc.pre(places.length > 0)
        const section = places[at % places.length]!
        const index = at % section.blocks.length
        const ids = section.blocks.slice(index).map(({ id }) => id)
        const pattern = patternOf(ride, ids)!
        const used = patternAt(pattern, ride, section, index, countedIds('fresh'))
        expect(bare(used.items)).toEqual(bare(section.blocks.slice(index)))
        expect(used).toMatchObject({ lifted: 0 })
        expect(used.measured).toBeUndefined()
      }),
      { numRuns: 150 },
    )
  })

  it('keeps its shape from whatever total it is entered with', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (entered) => {
        const ride = rideOf([aBlock('in', { resistance: total(entered) })])
        const { items, lifted } = patternAt(kept(), ride, ride.sections[0]!, 1, countedIds())
        expect(totalsOf(items)).toEqual([entered + 4 + lifted, 'change'])
        expect(blocksOf(items)[0]!.resistance).toMatchObject({ to: entered + 6 + lifted })
        expect(entered + 6 + lifted).toBeLessThanOrEqual(limitsOf(ride).ceiling)
      }),
    )
  })

  it('is lowered or raised as a whole where the knob ends or the base is passed', () => {
    const heavy = rideOf([aBlock('in', { resistance: total(70) })])
    expect(patternAt(kept(), heavy, heavy.sections[0]!, 1, countedIds()).lifted).toBe(72 - 76)
    const ease = patternOf(rideOf([aBlock('in', { resistance: total(8) }), aBlock('ease', { resistance: total(2) })]), ['ease'])!
    const light = rideOf([aBlock('in', { resistance: total(3) })])
    expect(patternAt(ease, light, light.sections[0]!, 1, countedIds())).toMatchObject({ lifted: 3 })
    expect(totalsOf(patternAt(ease, light, light.sections[0]!, 1, countedIds()).items)).toEqual([0])
  })

  it('rises and falls alike on another bike, and makes a ride there', () => {
    const levels = rideOf([aBlock('in', { resistance: total(1) })], { bike: TYPICAL_BIKES[1]! })
    const [section] = levels.sections
    const { items } = patternAt(kept(), levels, section!, 1, countedIds('fresh'))
    const [up, top] = blocksOf(items)
    expect(up!.resistance).toMatchObject({ kind: 'total' })
    expect((up!.resistance as { from: number }).from).toBeGreaterThan(1)
    expect((top!.resistance as { steps: number }).steps).toBeGreaterThan(0)
    const after = insertItems(levels, { sectionId: 's', index: 1, items, name: 'climb' }).apply(levels)
    expect(after.sections[0]!.blocks).toHaveLength(3)
    expect(parseRide(JSON.parse(JSON.stringify(after))).ok).toBe(true)
  })

  it('goes by the clock where there is no beat, and by the beat where there is one', () => {
    const still = rideOf([], { sections: [aSection('s')] })
    const timed = patternAt(kept(), still, still.sections[0]!, 0, countedIds())
    expect(timed.measured).toBe('bySeconds')
    expect(blocksOf(timed.items).every(({ length }) => 'seconds' in length)).toBe(true)
    const again = rideOf(timed.items, { sections: [aSection('s', { blocks: timed.items })] })
    const clocked = patternOf(
      again,
      timed.items.map(({ id }) => id),
    )!
    expect(clocked.beat).toBeUndefined()
    const played = rideOf([])
    const counted = patternAt(clocked, played, played.sections[0]!, 0, countedIds())
    expect(counted.measured).toBe('byCounts')
    expect(blocksOf(counted.items).map(({ length }) => length)).toEqual(climb.slice(1).map(({ length }) => length))
  })

  it('keeps as many eights in a song counted in sixes', () => {
    const song = { ...aSong('waltz'), grid: gridOfTempo(120, 0, 3) }
    const ride = rideOf([], { sections: [aSection('s', { song })] })
    expect(blocksOf(patternAt(kept(), ride, ride.sections[0]!, 0, countedIds()).items)[0]!.length).toEqual({ counts: 48 })
  })

  it('is made of blocks that stand side by side, a whole song’s among them, or of none', () => {
    const ride = rideOf([...climb, aBlock('end')])
    expect(patternOf(ride, ['in', 'top'])).toBeNull()
    expect(patternOf(ride, [])).toBeNull()
    expect(patternOf(ride, ['s'])!.items).toHaveLength(4)
    const many = rideOf(Array.from({ length: MOST_ITEMS + 1 }, (_, at) => aBlock(`b${at}`)))
    expect(patternOf(many, ['s'])).toBeNull()
  })
})

describe('what is kept of it', () => {
  const profile = () => ({ kind: 'pattern' as const, id: 'pattern.p1', name: 'Climb', pattern: kept() })

  it('comes back as it was written, also from a backup', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2 }), (ride) => {
        const section = ride.sections.find(({ blocks }) => blocks.length > 0)
        fc.pre(section !== undefined)
        const one = { ...profile(), pattern: patternOf(ride, [section!.id])! }
        expect(readProfile(writeProfile(one))).toEqual(one)
        const backup = { rides: [], versions: [], profiles: [one] }
        expect(readBackup(JSON.parse(JSON.stringify(writeBackup(backup))))).toEqual({ ok: true, backup, unreadable: 0 })
      }),
      { numRuns: 60 },
    )
  })

  it.each([
    ['no items', { items: [] }],
    ['a range that falls', { items: [aBlock('a', { resistance: total(5, 1) })] }],
    ['one id twice', { items: [aBlock('a'), aBlock('a')] }],
    ['seconds under a beat', { items: [aBlock('a', { length: { seconds: 30 } })] }],
    ['too many items', { items: Array.from({ length: MOST_ITEMS + 1 }, (_, at) => aBlock(`b${at}`)) }],
    ['a bike without points', { bike: { ...DEFAULT_BIKE, points: [] } }],
    ['no tempo', { beat: { bpm: 0, beatsPerBar: 4, strikesPerBeat: 1 } }],
  ])('is refused with %s', (_, change) => {
    const spoiled = JSON.parse(writeProfile(profile())) as { pattern: object }
    const text = JSON.stringify({ ...spoiled, pattern: { ...spoiled.pattern, ...change } })
    expect(readProfile(text)).toBeNull()
    expect(readProfile(writeProfile(profile()))).not.toBeNull()
  })
})
