import { describe, expect, it } from 'vitest'
import type { Command } from '#plan/commands/command.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import { patchSet } from '#plan/commands/patchSet.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { setTempo } from '#plan/commands/setTempo.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import type { Difference } from '#plan/merge/difference.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Block, Ride } from '#plan/model.ts'
import { findBlock, findSection } from '#plan/places.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { aBlock, aSong, countedIds, inSeconds, layout, smallRide } from '#tests/support/smallRide.ts'

const base = smallRide()
const edited = (...commands: ((ride: Ride) => Command)[]): Ride => commands.reduce((ride, make) => make(ride).apply(ride), base)

const patch = (blockId: string, change: Partial<Block>) => (ride: Ride) => patchBlock(ride, { blockId, patch: change })
const remove = (id: string) => (ride: Ride) => deleteItems(ride, [id])
const add = (id: string, sectionId: string, index: number) => (ride: Ride) => insertItem(ride, { sectionId, index, item: aBlock(id) })
const move = (itemId: string, sectionId: string, index: number) => (ride: Ride) => moveItem(ride, { itemId, sectionId, index })

const ids = (differences: readonly Difference[]): string[] => differences.map(({ id }) => id)
const block = (ride: Ride, id: string): Block => findBlock(ride, id)!.block

describe('fields', () => {
  it('of one block changed by each side are both kept', () => {
    const { merged, taken, own, conflicts } = mergeRides(
      base,
      edited(patch('a', { label: 'mine' })),
      edited(patch('a', { effort: { from: 7, to: 7 } })),
    )
    expect(block(merged, 'a')).toMatchObject({ label: 'mine', effort: { from: 7, to: 7 } })
    expect([ids(taken), ids(own), ids(conflicts)]).toEqual([['b a effort'], ['b a label'], []])
  })

  it('changed alike are taken once', () => {
    const both = edited(patch('a', { label: 'alike' }))
    const { alike, taken, conflicts } = mergeRides(base, both, edited(patch('a', { label: 'alike' })))
    expect([ids(alike), ids(taken), ids(conflicts)]).toEqual([['b a label'], [], []])
  })

  it('changed by both are told with all three values, kept as mine, and chosen one by one', () => {
    const mine = edited(patch('a', { label: 'mine' }), patch('b', { label: 'mine too' }))
    const theirs = edited(patch('a', { label: 'theirs' }), patch('b', { label: 'theirs too' }))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(merged).toBe(mine)
    expect(conflicts).toMatchObject([
      { field: 'label', base: 'a', mine: 'mine', theirs: 'theirs', chosen: 'mine', place: { sectionId: 'song', itemId: 'a' } },
      { field: 'label', base: 'b', mine: 'mine too', theirs: 'theirs too' },
    ])
    const chosen = mergeRides(base, mine, theirs, { 'b b label': 'theirs' }).merged
    expect([block(chosen, 'a').label, block(chosen, 'b').label]).toEqual(['mine', 'theirs too'])
  })

  it('of theirs alone can be left', () => {
    const theirs = edited(patch('a', { label: 'theirs' }), patch('b', { label: 'theirs too' }))
    const { merged } = mergeRides(base, base, theirs, { 'b a label': 'mine' })
    expect([block(merged, 'a').label, block(merged, 'b').label]).toEqual(['a', 'theirs too'])
  })

  it('that only make sense together are one value', () => {
    const mine = edited(patch('a', { resistance: { kind: 'total', from: 4, to: 4 } }))
    const theirs = edited(patch('a', { resistance: { kind: 'change', mode: 'exact', steps: 2 } }))
    expect(ids(mergeRides(base, mine, theirs).conflicts)).toEqual(['b a resistance'])
    const fewest = mergeRides(base, edited(patch('a', { minEights: 6 })), edited(patch('a', { maxEights: 4 })))
    expect(ids(fewest.conflicts)).toEqual(['b a eights'])
  })

  it('of the ride: house rules rule by rule, private notes and riders never', () => {
    const mine = edited(() => patchRide({ houseRules: { easyEffort: 4 }, privateNotes: 'mine' }))
    const theirs = edited(() => patchRide({ houseRules: { workEffort: 7 }, privateNotes: 'theirs', aim: 'legs' }))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(merged).toMatchObject({ houseRules: { easyEffort: 4, workEffort: 7 }, privateNotes: 'mine', aim: 'legs' })
    expect(conflicts).toEqual([])
  })
})

describe('deleting', () => {
  it('what nobody else touched takes it out', () => {
    const { merged, taken } = mergeRides(base, edited(patch('b', { label: 'mine' })), edited(remove('a')))
    expect(layout(merged, 'song')).toBe('b c')
    expect(taken).toMatchObject([{ kind: 'deleted', deletedBy: 'theirs', place: { sectionId: 'song', itemId: 'a' } }])
  })

  it('what the other one changed is a conflict and no loss', () => {
    const mine = edited(remove('a'))
    const theirs = edited(patch('a', { label: 'dear' }))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(block(merged, 'a').label).toBe('dear')
    expect(conflicts).toMatchObject([{ kind: 'deleted', deletedBy: 'mine', chosen: 'theirs' }])
    expect(layout(mergeRides(base, mine, theirs, { 'deleted b a': 'mine' }).merged, 'song')).toBe('b c')
  })

  it('a section into which the other one put a block is a conflict about the section', () => {
    const mine = edited((ride) => deleteSection(ride, { sectionId: 'song' }))
    const theirs = edited(add('new', 'song', 1))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(layout(merged, 'song')).toBe('a new b c')
    expect(ids(conflicts)).toEqual(['deleted s song'])
    expect(findSection(mergeRides(base, mine, theirs, { 'deleted s song': 'mine' }).merged, 'song')).toBeUndefined()
  })

  it('a section out of which the other one moved a block is a conflict about the block alone', () => {
    const mine = edited((ride) => deleteSection(ride, { sectionId: 'song' }))
    const theirs = edited(move('a', 'waves', 0))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(merged.sections.map(({ id }) => id)).toEqual(['clock', 'waves'])
    expect(layout(merged, 'waves')).toBe('a set(push ease) z')
    expect(ids(conflicts)).toEqual(['deleted b a'])
  })

  it('a cue whose words the other one changed is a conflict about the cue', () => {
    const cue = { id: 'say', moment: 'form' as const, lead: { counts: 8 }, text: 'Heels down.' }
    const start = { ...base, sections: base.sections.map((section) => ({ ...section })) }
    const withCue = patchBlock(start, { blockId: 'a', patch: { cues: [cue] } }).apply(start)
    const mine = patchBlock(withCue, { blockId: 'a', patch: { cues: [] } }).apply(withCue)
    const theirs = patchBlock(withCue, { blockId: 'a', patch: { cues: [{ ...cue, text: 'Heels level.' }] } }).apply(withCue)
    const { merged, conflicts } = mergeRides(withCue, mine, theirs)
    expect(block(merged, 'a').cues).toMatchObject([{ text: 'Heels level.' }])
    expect(conflicts).toMatchObject([{ kind: 'deleted', of: 'cue', place: { itemId: 'a', cueId: 'say' } }])
  })
})

describe('order', () => {
  it('of two moves of different blocks is both', () => {
    const { merged, conflicts } = mergeRides(base, edited(move('a', 'song', 2)), edited(move('x', 'clock', 1)))
    expect([layout(merged, 'song'), layout(merged, 'clock')]).toEqual(['b c a', 'y x'])
    expect(conflicts).toEqual([])
  })

  it('of one block moved to two places is a conflict about that block', () => {
    const mine = edited(move('a', 'clock', 0))
    const theirs = edited(move('a', 'waves', 2))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(ids(conflicts)).toEqual(['moved b a'])
    expect(layout(merged, 'clock')).toBe('a x y')
    expect(layout(mergeRides(base, mine, theirs, { 'moved b a': 'theirs' }).merged, 'waves')).toBe('set(push ease) z a')
  })

  it('of what both added at one place is the same from either side', () => {
    const [mine, theirs] = [edited(add('m', 'song', 1)), edited(add('t', 'song', 1))]
    expect(layout(mergeRides(base, mine, theirs).merged, 'song')).toBe('a m t b c')
    expect(layout(mergeRides(base, theirs, mine).merged, 'song')).toBe('a m t b c')
  })

  it('of sections goes with a block moved among them', () => {
    const mine = edited((ride) => moveSection(ride, { sectionId: 'waves', index: 0 }))
    const { merged } = mergeRides(base, mine, edited(move('z', 'song', 0)))
    expect(merged.sections.map(({ id }) => id)).toEqual(['waves', 'song', 'clock'])
    expect(layout(merged, 'song')).toBe('z a b c')
  })
})

describe('sets', () => {
  const group = (ride: Ride) => groupIntoSet(ride, { ids: ['a', 'b'], rounds: 3, newId: () => 'round' })

  it('made by one side hold what the other one changed in a block', () => {
    const { merged, taken } = mergeRides(base, edited(patch('a', { label: 'mine' })), edited(group))
    expect(layout(merged, 'song')).toBe('round(a b) c')
    expect(block(merged, 'a').label).toBe('mine')
    // The grouping is one difference, not one for every block in it.
    expect(ids(taken)).toEqual(['added b round'])
  })

  it('that are not taken leave their blocks where they were', () => {
    expect(mergeRides(base, base, edited(group), { 'added b round': 'mine' }).merged).toBe(base)
  })

  it('played out by one side and changed by the other are a conflict about the set', () => {
    const mine = edited((ride) => ungroupSet(ride, { setId: 'set', newId: countedIds('m') }))
    const theirs = edited((ride) => patchSet(ride, { setId: 'set', patch: { rounds: 4 } }))
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(ids(conflicts)).toEqual(['deleted b set'])
    expect(layout(merged, 'waves')).toContain('set(push ease)')
    expect(layout(mergeRides(base, mine, theirs, { 'deleted b set': 'mine' }).merged, 'waves')).toMatch(/^push ease m1/)
  })
})

describe('what is measured otherwise on one side', () => {
  it('a bike changed by one side is no change of a single block, and the other’s steps are read on it', () => {
    const start = patchBlock(base, { blockId: 'a', patch: { resistance: { kind: 'total', from: 4, to: 4 } } }).apply(base)
    const eighths = setBike(start, { ...start.bike, name: 'eighths', stepsPerUnit: 2 * start.bike.stepsPerUnit }).apply(start)
    const theirs = patchBlock(start, { blockId: 'b', patch: { resistance: { kind: 'total', from: 6, to: 6 } } }).apply(start)
    const { merged, own, taken, alike, conflicts } = mergeRides(start, eighths, theirs)
    expect([ids(own), ids(taken), alike, conflicts]).toEqual([['ride bike'], ['b b resistance'], [], []])
    expect(block(merged, 'a').resistance).toMatchObject({ from: 8 })
    expect(block(merged, 'b').resistance).toMatchObject({ from: 12 })
  })

  it('a coarser bike of theirs that is left changes no step, in whichever way they stood', () => {
    const fine = edited(patch('a', { resistance: { kind: 'total', from: 1, to: 3 } }), patch('c', { ownTotal: 1 }))
    const levels = setBike(fine, LEVELS_BIKE).apply(fine)
    const theirs = patchBlock(levels, { blockId: 'b', patch: { resistance: { kind: 'total', from: 5, to: 5 } } }).apply(levels)
    const { merged, taken, conflicts } = mergeRides(fine, fine, theirs, { 'ride bike': 'mine' })
    expect([ids(taken), conflicts]).toEqual([['ride bike', 'b b resistance'], []])
    expect([block(merged, 'a'), block(merged, 'c')]).toEqual([block(fine, 'a'), block(fine, 'c')])
    expect(block(merged, 'b').resistance).toMatchObject({ from: 5 * fine.bike.stepsPerUnit })
    // Without a base the same is what differs, and what does not.
    const compared = mergeRides(null, fine, theirs)
    expect(compared.merged).toBe(fine)
    expect(ids(compared.conflicts)).toEqual(['ride bike', 'b b resistance'])
  })

  it('the language is one more value of the ride, and English the lack of one', () => {
    const spoken = (language: Ride['language']) => edited(() => patchRide({ language }))
    expect(mergeRides(base, spoken('de'), base).merged.language).toBe('de')
    expect(mergeRides(base, base, spoken('de')).merged.language).toBe('de')
    expect(mergeRides(spoken('de'), spoken('de'), base).merged).not.toHaveProperty('language')
  })

  it('the notes for a substitute are seen to one by one', () => {
    const note = (standIn: Ride['standIn']) => edited(() => patchRide({ standIn }))
    const { merged, conflicts } = mergeRides(base, note({ room: 'Key at the desk.' }), note({ mustDo: 'Leave at ten to.' }))
    expect([merged.standIn, conflicts]).toEqual([{ room: 'Key at the desk.', mustDo: 'Leave at ten to.' }, []])
  })

  it('a tempo taken away by one side turns the other’s eights into seconds', () => {
    const mine = edited((ride) => setTempo(ride, { sectionId: 'song', tempo: null }))
    const { merged, conflicts } = mergeRides(base, mine, edited(patch('b', { length: { counts: 32 } })))
    expect(conflicts).toEqual([])
    expect(block(merged, 'a').length).toEqual({ seconds: 32 })
    expect(block(merged, 'b').length).toEqual({ seconds: 16 })
  })

  it('a block moved from the clock to the beat has the other’s length in eights', () => {
    const { merged } = mergeRides(base, edited(move('x', 'song', 0)), edited(patch('x', inSeconds(120))))
    expect(block(merged, 'x').length).toEqual({ counts: 240 })
  })

  it('another song for a section is one choice with the points that are counts of it', () => {
    const mine = edited((ride) => setSong(ride, { sectionId: 'song', song: aSong('another') }))
    const theirs = edited((ride) => patchSection(ride, { sectionId: 'song', patch: { inCount: 16 } }))
    expect(ids(mergeRides(base, mine, theirs).conflicts)).toEqual(['s song song'])
    const tempo = edited((ride) => setTempo(ride, { sectionId: 'song', tempo: { bpm: 130 } }))
    expect(mergeRides(base, tempo, theirs).conflicts).toEqual([])
  })
})

describe('leaders', () => {
  const second = { id: 'second', name: 'Second', wordsPerMinute: 150 }
  const two = { ...base, leaders: [...base.leaders, second] }

  it('renamed by one and quickened by the other are both', () => {
    const rename = (name: string) => ({ ...two, leaders: [two.leaders[0]!, { ...second, name }] })
    const quicken = { ...two, leaders: [two.leaders[0]!, { ...second, wordsPerMinute: 170 }] }
    expect(mergeRides(two, rename('Newname'), quicken).merged.leaders[1]).toEqual({ id: 'second', name: 'Newname', wordsPerMinute: 170 })
  })

  it('taken out while the other gave them a block are a conflict, and nobody leads who is not there', () => {
    const without = patchRide({ leaders: [two.leaders[0]!] }).apply(two)
    const given = patchBlock(two, { blockId: 'a', patch: { leader: 'second' } }).apply(two)
    const { merged, conflicts } = mergeRides(two, without, given)
    expect(ids(conflicts)).toEqual(['ride leaders'])
    expect([merged.leaders.length, block(merged, 'a').leader]).toEqual([2, 'second'])
    const chosen = mergeRides(two, without, given, { 'ride leaders': 'mine' }).merged
    expect([chosen.leaders.length, block(chosen, 'a').leader]).toEqual([1, undefined])
  })
})

describe('two rides that together are more than a document holds', () => {
  it('are a choice between the two as they stand', () => {
    const many = (who: string) => {
      const sections = [...base.sections, ...Array.from({ length: 60 }, (_, i) => ({ ...base.sections[1]!, id: `${who}${i}`, blocks: [] }))]
      return { ...base, sections }
    }
    const [mine, theirs] = [many('m'), many('t')]
    const { merged, conflicts } = mergeRides(base, mine, theirs)
    expect(ids(conflicts)).toEqual(['whole ride'])
    expect(merged).toBe(mine)
    expect(mergeRides(base, mine, theirs, { 'whole ride': 'theirs' }).merged.sections).toEqual(theirs.sections)
  })
})
