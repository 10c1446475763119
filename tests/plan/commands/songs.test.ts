import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { setTempo } from '#plan/commands/setTempo.ts'
import { splitSection } from '#plan/commands/splitSection.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Block, type Ride, type Section, tempoOf } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, inSeconds, layout, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const ride = smallRide()
const sectionOf = (of: Ride, id: string): Section => of.sections.find((section) => section.id === id)!
const lengthsOf = (of: Ride, sectionId: string) =>
  sectionOf(of, sectionId).blocks.flatMap((item) => ('parts' in item ? item.parts : [item]).map(({ length }) => length))

describe('setSong', () => {
  it('keeps every count, and every block as it is, when a song is swapped', () => {
    const after = setSong(ride, { sectionId: 'waves', song: aSong('faster', { grid: gridOfTempo(172.5) }) }).apply(ride)
    expect(sectionOf(after, 'waves').blocks).toBe(sectionOf(ride, 'waves').blocks)
    expect(sectionOf(after, 'song')).toBe(sectionOf(ride, 'song'))
  })

  it('drops the points of the song that goes, and keeps those of a song that is changed', () => {
    const pointed: Ride = { ...ride, sections: [{ ...ride.sections[0]!, inCount: 16, outCount: 160 }] }
    const swapped = setSong(pointed, { sectionId: 'song', song: aSong('other') }).apply(pointed)
    expect(swapped.sections[0]).not.toHaveProperty('inCount')
    expect(swapped.sections[0]).not.toHaveProperty('outCount')
    const corrected = setSong(pointed, { sectionId: 'song', song: aSong('first', { grid: gridOfTempo(121) }) }).apply(pointed)
    expect(corrected.sections[0]).toMatchObject({ inCount: 16, outCount: 160 })
  })

  it('turns seconds into the nearest whole eights, at least one', () => {
    const timed: Ride = { ...ride, sections: [aSection('clock', { blocks: [aBlock('x', inSeconds(61)), aBlock('y', inSeconds(1))] })] }
    expect(lengthsOf(setSong(timed, { sectionId: 'clock', song: aSong('s') }).apply(timed), 'clock')).toEqual([
      { counts: 120 },
      { counts: 8 },
    ])
  })

  it('keeps seconds with a song whose beats are not known', () => {
    const after = setSong(ride, { sectionId: 'clock', song: aSong('s', { grid: undefined, strikesPerBeat: null }) }).apply(ride)
    expect(sectionOf(after, 'clock').blocks).toBe(sectionOf(ride, 'clock').blocks)
  })

  it('puts every change on the nearest whole second when a song goes', () => {
    // At 172 an eight lasts 2.79 s: rounded one by one, twelve of them would be off by more than two seconds.
    const blocks = Array.from({ length: 12 }, (_, index) => aBlock(`b${index}`, { length: { counts: 8 } }))
    const counted: Ride = { ...ride, sections: [aSection('song', { song: aSong('s', { grid: gridOfTempo(172) }), blocks })] }
    const after = setSong(counted, { sectionId: 'song', song: null }).apply(counted)
    const before = computeRide(counted).blocks.map(({ to }) => Math.round(to))
    expect(computeRide(after).blocks.map(({ to }) => to)).toEqual(before)
  })

  it('makes up after a set for what its rounds were off by', () => {
    const parts = [aBlock('push', { length: { counts: 8 } }), aBlock('ease', { length: { counts: 8 } })]
    const song = aSong('s', { grid: gridOfTempo(172) })
    const blocks = [aSet('set', parts, { rounds: 4 }), aBlock('z'), aBlock('end')]
    const counted: Ride = { ...ride, sections: [aSection('song', { song, blocks })] }
    const after = setSong(counted, { sectionId: 'song', song: null }).apply(counted)
    expect(computeRide(after).blocks.at(-1)!.to).toBe(Math.round(computeRide(counted).blocks.at(-1)!.to))
  })

  it('writes down the cadence the beat gave', () => {
    const after = setSong(ride, { sectionId: 'song', song: null }).apply(ride)
    expect(findBlock(after, 'a')!.block.cadence).toEqual({ rpm: 60 })
    const cadences = (of: Ride) => computeRide(of).blocks.map(({ cadence }) => cadence)
    expect(cadences(after).slice(0, 3)).toEqual(cadences(ride).slice(0, 3))
  })

  it('gives back the same ride where nothing changes', () => {
    expect(setSong(ride, { sectionId: 'song', song: aSong('first') }).apply(ride)).toBe(ride)
    expect(setSong(ride, { sectionId: 'clock', song: null }).apply(ride)).toBe(ride)
    expect(setSong(ride, { sectionId: 'nowhere', song: null }).apply(ride)).toBe(ride)
  })

  it('says what happened', () => {
    expect(told(setSong(ride, { sectionId: 'song', song: aSong('other') }).label)).toBe('Replaced first with other in song 1')
    expect(told(setSong(ride, { sectionId: 'clock', song: aSong('other') }).label)).toBe('Added the song other to song 2')
    expect(told(setSong(ride, { sectionId: 'song', song: null }).label)).toBe('Removed first from song 1')
  })

  it('property: counts survive any swap between songs with beats', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.integer({ min: 60, max: 200 }), (any, bpm) => {
        for (const section of any.sections) {
          if (!section.song?.grid) continue
          const after = setSong(any, { sectionId: section.id, song: aSong('swapped', { grid: gridOfTempo(bpm) }) }).apply(any)
          expect(sectionOf(after, section.id).song!.id).toBe('swapped')
          expect(sectionOf(after, section.id).blocks).toBe(section.blocks)
        }
      }),
    )
  })
})

describe('setTempo', () => {
  const bare: Ride = {
    ...ride,
    sections: [aSection('s', { song: aSong('s', { grid: undefined, strikesPerBeat: null }), blocks: [aBlock('x', inSeconds(60))] })],
  }

  it('measures a song in eights from then on, ridden as suits the tempo', () => {
    const after = setTempo(bare, { sectionId: 's', tempo: { bpm: 84, firstBeat: 1.5 } }).apply(bare)
    const song = sectionOf(after, 's').song!
    expect(song.grid!.anchors[0]).toEqual([0, 1.5])
    expect(tempoOf(song.grid!)).toBe(84)
    expect(song.strikesPerBeat).toBe(2)
    // 60 s are 84 counts, ten and a half eights.
    expect(lengthsOf(after, 's')).toEqual([{ counts: 88 }])
  })

  it('keeps counts, first beat and bar of a song that had a tempo', () => {
    const first = setTempo(bare, { sectionId: 's', tempo: { bpm: 84, firstBeat: 1.5, beatsPerBar: 3 } }).apply(bare)
    const after = setTempo(first, { sectionId: 's', tempo: { bpm: 168.5 } }).apply(first)
    expect(sectionOf(after, 's').blocks).toBe(sectionOf(first, 's').blocks)
    expect(sectionOf(after, 's').song!.grid).toMatchObject({ beatsPerBar: 3 })
    expect(sectionOf(after, 's').song!.grid!.anchors[0]).toEqual([0, 1.5])
    expect(tempoOf(sectionOf(after, 's').song!.grid!)).toBe(168.5)
  })

  it('takes the beats away again', () => {
    const first = setTempo(bare, { sectionId: 's', tempo: { bpm: 120 } }).apply(bare)
    const after = setTempo(first, { sectionId: 's', tempo: null }).apply(first)
    expect(sectionOf(after, 's').song).not.toHaveProperty('grid')
    expect(lengthsOf(after, 's')).toEqual([{ seconds: 60 }])
  })

  it.each([0, -120, 10, 500, Number.NaN, Number.POSITIVE_INFINITY])('changes nothing at %d', (bpm) => {
    expect(setTempo(bare, { sectionId: 's', tempo: { bpm } }).apply(bare)).toBe(bare)
  })

  it('changes nothing without a song', () => {
    expect(setTempo(ride, { sectionId: 'clock', tempo: { bpm: 120 } }).apply(ride)).toBe(ride)
    expect(told(setTempo(ride, { sectionId: 'song', tempo: { bpm: 127.6 } }).label)).toBe('Set first to 127.6 bpm')
  })
})

describe('splitSection', () => {
  it('goes on in the same song without a gap or a lost second', () => {
    const after = splitSection(ride, { itemId: 'b', foot: null, newId: () => 'new' }).apply(ride)
    expect([layout(after, 'song'), layout(after, 'new')]).toEqual(['a', 'b c'])
    expect(sectionOf(after, 'song').outCount).toBe(64)
    expect(sectionOf(after, 'new')).toMatchObject({ inCount: 64, leadInSeconds: 0 })
    expect(computeRide(after).overall.total).toBe(computeRide(ride).overall.total)
    expect(parseRide(after).ok).toBe(true)
  })

  it('counts the rounds of sets', () => {
    const after = splitSection(ride, { itemId: 'z', foot: null, newId: () => 'new' }).apply(ride)
    expect(sectionOf(after, 'new').inCount).toBe(3 * 128)
  })

  it('leaves every block the foot it had', () => {
    const lengths = (counts: number, lead?: Block['lead']) => ({ length: { counts }, ...(lead && { lead }) })
    // Turn about: an odd number of strikes, a swap, a foot named.
    const blocks = [
      aBlock('a', lengths(63)),
      aBlock('b', lengths(64)),
      aBlock('c', lengths(33, 'swap')),
      aBlock('d', lengths(8, 'left')),
      aBlock('e'),
    ]
    const turned: Ride = { ...ride, sections: [aSection('song', { song: aSong('m'), lead: 'right', blocks })] }
    const feetOf = (one: Ride) => computeRide(one).blocks.map(({ foot }) => foot)
    const feet = feetOf(turned)
    expect(feet).toEqual(['right', 'left', 'right', 'left', 'left'])
    for (const [i, itemId] of ['b', 'c', 'd', 'e'].entries()) {
      expect(feetOf(splitSection(turned, { itemId, foot: feet[i + 1]!, newId: () => 'new' }).apply(turned))).toEqual(feet)
    }
  })

  it('splits by the clock, and not before the first item', () => {
    expect(layout(splitSection(ride, { itemId: 'y', foot: null, newId: () => 'new' }).apply(ride), 'new')).toBe('y')
    expect(splitSection(ride, { itemId: 'a', foot: null, newId: () => 'new' }).apply(ride)).toBe(ride)
    expect(told(splitSection(ride, { itemId: 'y', foot: null, newId: () => 'new' }).label)).toBe('Split song 2 before y')
  })
})
