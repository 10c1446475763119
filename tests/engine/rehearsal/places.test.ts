import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { courseOfBlock, courseOfRide, shakyLegs } from '#engine/rehearsal/courses.ts'
import { backFrom, blockAt, nextBlockFrom } from '#engine/rehearsal/jumps.ts'
import { placeAt, timeOf } from '#engine/rehearsal/ridePlace.ts'
import { songSecondAtOne, songsOf } from '#engine/rehearsal/songsOf.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { leadRide, planOf } from '#tests/support/leading.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'

/** Two songs of 24 and 8 eights at 120, first beats at 0.5 and 0.75 s, with a lead-in between. */
const songs = (leadIn: number, change: Partial<Ride> = {}): Ride => ({
  ...leadRide(),
  briefingSeconds: 10,
  sections: [
    aSection('one', {
      song: aSong('first', { grid: gridOfTempo(120, 0.5), lengthSeconds: 97, fingerprint: 'f1' }),
      blocks: [aBlock('a'), aBlock('b'), aBlock('c')],
    }),
    aSection('two', {
      leadInSeconds: leadIn,
      song: aSong('second', { grid: gridOfTempo(120, 0.75), lengthSeconds: 33, fingerprint: 'f2' }),
      blocks: [aBlock('d')],
    }),
  ],
  ...change,
})
const sounds = (ride: Ride) => songsOf(planOf(ride), () => true).map(({ from, to, songFrom, fadeOut }) => ({ from, to, songFrom, fadeOut }))

describe('songsOf', () => {
  it('starts a file so that its first beat is the section’s one, and ends it with the section', () => {
    expect(sounds(songs(5))).toEqual([
      { from: 10, to: 106, songFrom: 0.5, fadeOut: 0.012 },
      { from: 110.25, to: 143, songFrom: 0, fadeOut: 0.012 },
    ])
  })

  it('cuts off what a lead-in has no time for, and everything before an in-point', () => {
    expect(sounds(songs(0.25))[1]).toMatchObject({ from: 106, songFrom: 0.5 })
    const ride = songs(5)
    const entered = { ...ride, sections: [ride.sections[0]!, { ...ride.sections[1]!, inCount: 8 }] }
    expect(sounds(entered)[1]).toMatchObject({ from: 111, songFrom: 4.75 })
  })

  it('lets a song go on under the next one’s crossfade, softer and softer, to its own end', () => {
    expect(sounds(songs(-4))).toEqual([
      { from: 10, to: 106, songFrom: 0.5, fadeOut: 4 },
      { from: 102, to: 134, songFrom: 0.75, fadeOut: 0.012 },
    ])
  })

  it('puts the second of the file that stands on the one under the one, in every ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), (drafted) => {
        const sections = drafted.sections.map((section) =>
          section.song ? { ...section, song: { ...section.song, fingerprint: section.id } } : section,
        )
        const plan = planOf({ ...drafted, sections })
        for (const song of songsOf(plan, () => true)) {
          const index = sections.findIndex(({ id }) => id === song.key)
          expect(song.songFrom + (plan.report.sections[index]!.one - song.from)).toBeCloseTo(songSecondAtOne(sections[index]!), 6)
          expect(song.songFrom).toBeGreaterThanOrEqual(-1e-9)
          expect(song.to).toBeGreaterThan(song.from)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('a place of the ride', () => {
  it('is the same moment as long as nothing changes', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.double({ min: 0, max: 1, noNaN: true }), (ride, share) => {
        const plan = planOf(ride)
        const at = share * plan.report.overall.total
        expect(timeOf(plan, placeAt(plan, at), at)).toBeCloseTo(at, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('goes with its song when the song moves, and stays on the same second of the file when the beats are moved', () => {
    const before = planOf(songs(5))
    const at = 120
    const swapped = planOf(moveSection(before.ride, { sectionId: 'two', index: 0 }).apply(before.ride))
    expect(timeOf(swapped, placeAt(before, at), at)).toBe(swapped.report.sections[0]!.one + 9)
    const nudged = planOf(moveBeats(before.ride, { sectionId: 'two', seconds: 0.01 }).apply(before.ride))
    expect(timeOf(nudged, placeAt(before, at), at)).toBeCloseTo(at - 0.01, 9)
    const longer = planOf(patchRide({ briefingSeconds: 70 }).apply(before.ride))
    expect(timeOf(longer, placeAt(before, at), at)).toBe(180)
    expect(timeOf(longer, placeAt(before, 4), 4)).toBe(4)
  })

  it('stays inside the ride where the section is gone', () => {
    const before = planOf(songs(5))
    const after = planOf(deleteSection(before.ride, { sectionId: 'two' }).apply(before.ride))
    expect(timeOf(after, placeAt(before, 140), 140)).toBe(after.report.overall.total)
    expect(timeOf(after, placeAt(before, 20), 20)).toBe(20)
  })
})

describe('courses', () => {
  const plan = planOf(leadRide())
  const [first, second, third] = plan.report.sections

  it('lead through the whole ride, or to the next section to wait there', () => {
    expect(courseOfRide(plan).legs).toEqual([{ from: 0, to: plan.report.overall.total }])
    expect(courseOfRide(plan, first!.one + 1).legs[0]!.to).toBe(second!.from)
    expect(courseOfRide(plan, second!.from).legs[0]!.to).toBe(third!.from)
    expect(courseOfRide(plan, plan.report.overall.total - 1).legs[0]!.to).toBe(plan.report.overall.total)
  })

  it('give each shaky block an eight to come in where it does not follow another, a part of a set its first round, and a gone block nothing', () => {
    const { ride, report } = planOf({ ...leadRide(), shaky: ['ease', 'gone', 'b', 'x', 'a'] })
    const legs = shakyLegs({ ride, report })
    expect(legs.map(({ blockId, from, to }) => [blockId, from, to])).toEqual([
      ['a', 0, report.blocks[0]!.to],
      ['b', report.blocks[1]!.from, report.blocks[1]!.to],
      ['ease', report.blocks[4]!.from - 4, report.blocks[4]!.to],
      ['x', report.blocks.find(({ block }) => block.id === 'x')!.from - 5, report.blocks.find(({ block }) => block.id === 'x')!.to],
    ])
  })

  it('jump to the next block, back to this one, and from its first eight to the one before', () => {
    const { blocks, overall } = plan.report
    expect(blockAt(plan, blocks[1]!.from)).toBe(blocks[1])
    expect(nextBlockFrom(plan, blocks[0]!.from)).toBe(blocks[1]!.from)
    expect(nextBlockFrom(plan, blocks.at(-1)!.from)).toBe(overall.total)
    expect(backFrom(plan, blocks[1]!.from + 5)).toBe(blocks[1]!.from)
    expect(backFrom(plan, blocks[1]!.from + 3.9)).toBe(blocks[0]!.from)
    expect(backFrom(plan, 1)).toBe(0)
    expect(courseOfBlock(blocks[1]!)).toEqual({ legs: [{ from: blocks[1]!.from, to: blocks[1]!.to }], repeats: true })
  })
})
