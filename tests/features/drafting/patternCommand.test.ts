import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { patternCommand } from '#features/drafting/patternCommand.ts'
import type { Ride, Section } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { findBlock } from '#plan/places.ts'
import { aBlock, aSection, aSong, countedIds, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const flat = PATTERNS.find(({ id }) => id === 'flat')!
const flush = PATTERNS.find(({ id }) => id === 'flush')!

/** Adds a pattern to the end of a section that is the whole ride. */
function added(section: Section, pattern = flush, index = section.blocks.length) {
  const ride: Ride = { ...smallRide(), sections: [section] }
  const { id, command, grows } = patternCommand(ride, { pattern, section, index, newId: countedIds('new') })
  const after = command.apply(ride)
  const [before, now] = [computeRide(ride), computeRide(after)]
  return { length: findBlock(after, id)!.block.length, grows, label: told(command.label), longer: now.overall.total - before.overall.total }
}

/** A song of so many counts at 120 beats a minute, of which so many are planned. */
const song = (counts: number, planned: number, change: Partial<Section> = {}) =>
  aSection('song', {
    song: aSong('first', { lengthSeconds: counts / 2 }),
    blocks: planned === 0 ? [] : [aBlock('a', { length: { counts: planned } })],
    ...change,
  })

describe('a pattern', () => {
  it('keeps its own length where the song has room', () => {
    expect(added(song(240, 64))).toMatchObject({ length: { counts: 128 }, longer: 0, grows: undefined })
  })

  it('takes the whole eights that are left of a song, and makes it no longer', () => {
    expect(added(song(56, 0))).toMatchObject({ length: { counts: 56 }, longer: 0, grows: undefined })
    expect(added(song(120, 64), flat)).toMatchObject({ length: { counts: 56 }, longer: 0 })
    expect(added(song(120, 44), flat)).toMatchObject({ length: { counts: 64 }, longer: 0 })
    expect(added(song(120, 68), flat)).toMatchObject({ length: { counts: 48 }, longer: 0 })
  })

  it('takes the rest where that is less than an eight', () => {
    expect(added(song(64, 59))).toMatchObject({ length: { counts: 5 }, longer: 0 })
  })

  it('takes sixes where the song counts in sixes', () => {
    const waltz = aSection('song', {
      song: aSong('waltz', { grid: { ...aSong('x').grid!, beatsPerBar: 3 }, lengthSeconds: 45 }),
      blocks: [aBlock('a', { length: { counts: 65 } })],
    })
    expect(added(waltz)).toMatchObject({ length: { counts: 24 }, longer: 0 })
  })

  it('fills the gap from any place among the blocks', () => {
    expect(added(song(120, 64), flush, 0)).toMatchObject({ length: { counts: 56 }, longer: 0 })
  })

  it('takes the seconds that are left where the tempo is not known', () => {
    const unknown = aSection('song', { song: aSong('s', { grid: undefined, lengthSeconds: 100.4 }), blocks: [aBlock('a', inSeconds(70))] })
    expect(added(unknown, flat)).toMatchObject({ length: { seconds: 30 }, longer: 0 })
  })

  it('makes a song longer only where nothing is left of it, and says by how much', () => {
    const full = added(song(64, 64), flat)
    expect(full).toMatchObject({ length: { counts: 64 }, longer: 32, grows: '“flat” runs 32 s past the end of its song.' })
    expect(full.label).toBe('Added flat to the end of first, 32 s past the end of its song')
  })

  it('has its own length where no music sets one', () => {
    expect(added(aSection('clock', { blocks: [aBlock('a', inSeconds(10))] }), flat)).toMatchObject({
      length: { seconds: 60 },
      longer: 60,
      grows: undefined,
    })
  })
})
