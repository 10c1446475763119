import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { carryClip, readClip } from '#plan/clip/carriedClip.ts'
import { type Clip, clipOf } from '#plan/clip/clip.ts'
import { fitClip, itemsFor } from '#plan/clip/fitClip.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { pasteItems, replaceBlocks } from '#plan/commands/pasteItems.ts'
import { pasteCues, pasteResistance, replaceCues } from '#plan/commands/pasteOnto.ts'
import { pasteSections } from '#plan/commands/pasteSections.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** Without ids, which are what a copy differs in. */
const bare = (value: unknown): unknown => JSON.parse(JSON.stringify(value, (key, held) => (key === 'id' ? undefined : held)))

const itemsClip = (ride: Ride, ids: readonly string[]): Clip => clipOf(ride, { ids }, 0)!

/** As it comes out of the clipboard of another window. */
function carried(clip: Clip): Clip {
  const read = readClip(`<html><body><!--StartFragment-->${carryClip(clip, 'lines <of> text')}<!--EndFragment--></body></html>`)
  if (!read?.ok) throw new Error('not read')
  return read.clip
}

describe('what was copied', () => {
  it('comes out of the clipboard as it went in, whatever it was', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.nat(20), fc.integer({ min: -40, max: 40 }), (ride, pick, from) => {
        const items = ride.sections.flatMap(({ blocks }) => blocks)
        fc.pre(items.length > 0)
        const clip = clipOf(ride, { ids: [items[pick % items.length]!.id] }, from)!
        expect(carried(clip)).toEqual(clip)
        const sections = clipOf(ride, { sectionIds: ride.sections.map(({ id }) => id) }, from)!
        expect(carried(sections)).toEqual(sections)
      }),
      { numRuns: 100 },
    )
  })

  it('holds a set whole, single parts alone, and nothing that is not there', () => {
    const ride = smallRide()
    const items = (ids: string[]) => clipOf(ride, { ids }, 0)?.ride.sections.flatMap(({ blocks }) => blocks.map(({ id }) => id))
    expect(items(['push', 'set'])).toEqual(['set'])
    expect(items(['push', 'a', 'x'])).toEqual(['a', 'x', 'push'])
    expect(clipOf(ride, { ids: ['nobody'] }, 0)).toBeNull()
    expect(clipOf(ride, { cueIds: ['nobody'] }, 0)).toBeNull()
  })

  it('pasted in the same section is equal but for ids, and the ride opens again', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.nat(20), fc.integer({ min: -2, max: 9 }), (ride, pick, index) => {
        const place = ride.sections.flatMap((section) => section.blocks.map((item) => ({ section, item })))
        fc.pre(place.length > 0)
        const { section, item } = place[pick % place.length]!
        const { items } = itemsFor(fitClip(carried(itemsClip(ride, [item.id])), ride).sections, section)
        const after = pasteItems(ride, { items, to: { sectionId: section.id, index }, newId: countedIds('new-') }).apply(ride)
        expect(parseRide(after)).toEqual({ ok: true, ride: after })
        if (after === ride) return
        const made = after.sections.flatMap(({ blocks }) => blocks).filter(({ id }) => id.startsWith('new-'))
        expect(bare(made)).toEqual(bare([item]))
      }),
      { numRuns: 150 },
    )
  })

  it('cut and pasted at the same place leaves the ride as it was, but for ids', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.nat(20), (ride, pick) => {
        const places = ride.sections.flatMap((section) => section.blocks.map((item, index) => ({ section, item, index })))
        fc.pre(places.length > 0)
        const { section, item, index } = places[pick % places.length]!
        const clip = carried(itemsClip(ride, [item.id]))
        const cut = deleteItems(ride, [item.id]).apply(ride)
        const target = cut.sections.find(({ id }) => id === section.id)!
        const { items } = itemsFor(fitClip(clip, cut).sections, target)
        const back = pasteItems(cut, { items, to: { sectionId: section.id, index }, newId: countedIds('new-') }).apply(cut)
        expect(bare(back.sections)).toEqual(bare(ride.sections))
      }),
      { numRuns: 150 },
    )
  })

  it('goes from any ride into any other, which opens again', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryRide(), fc.nat(20), (from, to, pick) => {
        fc.pre(from.sections.length > 0 && to.sections.length > 0)
        const clip = carried(clipOf(from, { sectionIds: [from.sections[pick % from.sections.length]!.id] }, 3)!)
        const fitted = fitClip(clip, to)
        const target = to.sections[pick % to.sections.length]!
        const { items } = itemsFor(fitted.sections, target)
        const newId = countedIds('new-')
        for (const command of [
          pasteSections(to, { sections: fitted.sections, index: pick, newId }),
          pasteItems(to, { items, to: { sectionId: target.id, index: pick }, newId }),
          replaceBlocks(to, { sectionId: target.id, items, newId }),
        ]) {
          const after = command.apply(to)
          expect(parseRide(after)).toEqual({ ok: true, ride: after })
          expect(command.apply(to)).toEqual(after)
          expect(told(command.label)).toMatch(/^[A-Z][a-z]+ .+/)
        }
      }),
      { numRuns: 150 },
    )
  })
})

describe('what comes over to another ride', () => {
  const target = (change: Partial<Ride> = {}): Ride => ({ ...smallRide(), id: 'other', ...change })
  const callsOf = (sections: readonly { blocks: readonly Item[] }[]) =>
    sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item]).map(({ resistance }) => resistance)))
  const ride: Ride = {
    ...smallRide(),
    sections: [
      aSection('one', {
        song: aSong('song'),
        blocks: [
          aBlock('total', { resistance: { kind: 'total', from: 6, to: 6 } }),
          aBlock('add', { resistance: { kind: 'change', mode: 'exact', steps: 4 } }),
          aBlock('stay'),
        ],
      }),
    ],
  }

  it('keeps its calls on the same bike: a change adds to whatever riders have there', () => {
    const fitted = fitClip(clipOf(ride, { ids: ['add', 'stay'] }, 6)!, target())
    expect(fitted.scaled).toBe('same')
    expect(callsOf(fitted.sections)).toEqual([{ kind: 'change', mode: 'exact', steps: 4 }, { kind: 'keep' }])
  })

  it('says a turn in the steps of a bike with finer ones', () => {
    const bike = { ...ride.bike, stepsPerUnit: 8 }
    const fitted = fitClip(clipOf(ride, { ids: ['total', 'add', 'stay'] }, 0)!, target({ bike }))
    expect(fitted.scaled).toBe('rounded')
    expect(callsOf(fitted.sections)).toEqual([
      { kind: 'total', from: 12, to: 12 },
      { kind: 'change', mode: 'exact', steps: 8 },
      { kind: 'keep' },
    ])
  })

  it('does not write a stay as a way from one start to the other where totals count from elsewhere', () => {
    const fitted = fitClip(clipOf(ride, { ids: ['stay', 'add'] }, 10)!, target({ datum: 'loose' }))
    expect(callsOf(fitted.sections)).toEqual([{ kind: 'change', mode: 'exact', steps: 4 }, { kind: 'keep' }])
  })

  it('becomes what weighs the same where the unit is another', () => {
    const bike = {
      ...ride.bike,
      unit: 'level',
      stepsPerUnit: 1,
      base: 5,
      points: [
        [0, 8],
        [10, 108],
        [30, 308],
      ] as [number, number][],
      max: 30,
    }
    const fitted = fitClip(clipOf(ride, { ids: ['total'] }, 0)!, target({ bike }))
    expect(fitted.scaled).toBe('byLoad')
    // 3½ turns are 140 W: level 13.2, eight over its base.
    expect(callsOf(fitted.sections)).toEqual([{ kind: 'total', from: 8, to: 8 }])
  })

  it('is led by the people of the ride it comes to', () => {
    const led: Ride = {
      ...ride,
      leaders: [
        { id: 'anna', name: 'Anna', wordsPerMinute: 140 },
        { id: 'ben', name: 'Ben', wordsPerMinute: 140 },
      ],
    }
    const blocks = [aBlock('a', { leader: 'ben', mic: 'anna' })]
    const clip = clipOf({ ...led, sections: [aSection('one', { song: aSong('song'), blocks })] }, { ids: ['a'] }, 0)!
    const other = target({ leaders: [{ id: 'x1', name: 'Ben', wordsPerMinute: 150 }] })
    const [block] = fitClip(clip, other).sections[0]!.blocks
    expect(block).toMatchObject({ leader: 'x1' })
    expect(block).not.toHaveProperty('mic')
  })

  it('has its lengths as the song measures', () => {
    const clip = clipOf(smallRide(), { ids: ['x'] }, 0)!
    const counted = itemsFor(clip.ride.sections, aSection('s', { song: aSong('s', { grid: gridOfTempo(120) }) }))
    expect(counted.remeasured).toBe('toEights')
    expect(counted.items[0]).toHaveProperty('length.counts')
    const timed = itemsFor(clipOf(smallRide(), { ids: ['a'] }, 0)!.ride.sections, aSection('t'))
    expect(timed).toMatchObject({ remeasured: 'toSeconds', items: [{ length: { seconds: 32 } }] })
    expect(itemsFor(clip.ride.sections, aSection('t')).remeasured).toBe('same')
  })
})

describe('what the document cannot hold', () => {
  const newId = countedIds('new-')

  it('a set does not go into a set, and a ride does not outgrow its bounds', () => {
    const ride = smallRide()
    const set = aSet('another', [aBlock('p')])
    expect(pasteItems(ride, { items: [set], to: { setId: 'set', index: 0 }, newId }).apply(ride)).toBe(ride)
    const many = Array.from({ length: 401 }, (_, i) => aBlock(`b${i}`))
    expect(pasteItems(ride, { items: many, to: { sectionId: 'song', index: 0 }, newId }).apply(ride)).toBe(ride)
    expect(pasteItems(ride, { items: [aBlock('q')], to: { setId: 'set', index: 1 }, newId }).apply(ride)).not.toBe(ride)
  })
})

describe('only the cues or the resistance', () => {
  const cue = { id: 'c', moment: 'form' as const, lead: { counts: 8 }, text: 'Light hands.' }
  const from = aBlock('from', { cues: [cue], resistance: { kind: 'total', from: 5, to: 6 }, effort: { from: 9, to: 9 } })

  it('changes nothing else of a block', () => {
    const ride = smallRide()
    const block = (after: Ride) => after.sections[0]!.blocks[0]! as typeof from
    const before = block(ride)
    const onto = [{ blockId: 'a', from }]
    const newId = countedIds('new-')
    expect(block(replaceCues(ride, onto, newId).apply(ride))).toEqual({ ...before, cues: [{ ...cue, id: 'new-1' }] })
    expect(block(pasteResistance(ride, onto).apply(ride))).toEqual({ ...before, resistance: from.resistance })
    const twice = pasteCues(ride, onto, newId).apply(replaceCues(ride, onto, newId).apply(ride))
    expect(block(twice).cues.map(({ text }) => text)).toEqual([cue.text, cue.text])
    const none = replaceCues(ride, [{ blockId: 'a', from: aBlock('silent') }], newId)
    expect(block(none.apply(twice)).cues).toEqual([])
  })
})

describe('a hostile clipboard', () => {
  it('is nothing, or told what is wrong with it, and never throws', () => {
    const good = carryClip(itemsClip(smallRide(), ['a']), '')
    const asText = (value: unknown) => `<div data-ridewright="${Buffer.from(JSON.stringify(value)).toString('base64url')}">`
    expect(readClip('')).toBeNull()
    expect(readClip('<div data-ridewright="">')).toBeNull()
    expect(readClip('<div data-ridewright="AAAA">')).toBeNull()
    expect(readClip(asText({ clip: 1, kind: 'rides', from: 0, ride: {} }))).toBeNull()
    expect(readClip(asText({ clip: 1, kind: 'items', from: 0.5, ride: smallRide() }))).toBeNull()
    expect(readClip(asText({ clip: 1, kind: 'items', from: 0, ride: { ...smallRide(), sections: [] } }))).toBeNull()
    expect(readClip(asText({ clip: 1, kind: 'items', from: 0, ride: { ...smallRide(), level: 'x' } }))).toMatchObject({ ok: false })
    expect(readClip(asText({ clip: 2, kind: 'items', from: 0, ride: smallRide() }))).toMatchObject({ ok: false })
    expect(readClip(`${good}${' '.repeat(4_000_000)}`)).toBeNull()
    fc.assert(fc.property(fc.string(), (text) => readClip(`<div data-ridewright="${text}">`) === null))
    fc.assert(
      fc.property(fc.nat(good.length - 1), fc.string({ minLength: 1, maxLength: 3 }), (at, put) => {
        const read = readClip(good.slice(0, at) + put + good.slice(at + 1))
        if (read?.ok) expect(parseRide(read.clip.ride).ok).toBe(true)
      }),
    )
    fc.assert(fc.property(fc.json(), (json) => readClip(asText({ clip: 1, kind: 'items', from: 0, ride: JSON.parse(json) }))?.ok !== true))
  })
})
