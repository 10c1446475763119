import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { clicksOf } from '#engine/rehearsal/clicksOf.ts'
import { type Course, courseTimeOf, lengthOf, piecesOf, rideTimeAt } from '#engine/rehearsal/course.ts'
import { courseOfRide } from '#engine/rehearsal/courses.ts'
import { rideScore } from '#engine/rehearsal/rideScore.ts'
import { songScore } from '#engine/rehearsal/songScore.ts'
import { setOddBeats } from '#plan/commands/setOddBeats.ts'
import type { BeatGrid, Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo, secondAt } from '#plan/songs/beatGrid.ts'
import { arbitraryGrid, arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { leadRide, planOf } from '#tests/support/leading.ts'
import { aBlock, aSection, aSong } from '#tests/support/smallRide.ts'

const everything = { isThere: () => true, clickOver: true, ticks: true }

/** A stretch cut at these shares of it, as a timer that is sometimes late cuts it. */
const cut = (from: number, to: number, shares: readonly number[]): [number, number][] => {
  const places = [from, ...[...shares].sort((a, b) => a - b).map((share) => from + share * (to - from)), to]
  return places.slice(1).map((place, i) => [places[i]!, place])
}
const cuts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 })

const rideOf = (grid: BeatGrid, inCount: number, eights: number): Ride => ({
  ...blankRide({ newId: () => 'ride', title: 'a song' }),
  sections: [
    aSection('song', {
      song: aSong('tune', { grid, lengthSeconds: 4000, fingerprint: 'tune' }),
      inCount,
      blocks: [aBlock('a', { length: { counts: eights * (grid.beatsPerBar === 4 ? 8 : 6) } })],
    }),
  ],
})

describe('clicksOf', () => {
  it('gives every count once, on its own second, however the time is cut into windows and whatever the tempo does', () => {
    fc.assert(
      fc.property(
        arbitraryGrid,
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 12 }),
        cuts,
        (grid, inCount, eights, shares) => {
          const ride = rideOf(grid, inCount, eights)
          const [report] = computeRide(ride).sections
          const section = ride.sections[0]!
          const { one, to } = report!
          const windows = cut(one - 1, to + 1, shares).map(([from, until]) => clicksOf(section, report!, from, until))
          const zero = secondAt(grid, inCount)
          const times: number[] = []
          for (let count = 0; one + secondAt(grid, inCount + count) - zero < to; count++)
            times.push(one + secondAt(grid, inCount + count) - zero)
          expect(windows.flat().map(({ at }) => at)).toEqual(times)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('tells eights from bars from beats: eights from the in-point, bars from the song', () => {
    const kinds = (beatsPerBar: 3 | 4, inCount: number) => {
      const ride = rideOf(gridOfTempo(120, 0.5, beatsPerBar), inCount, 1)
      return clicksOf(ride.sections[0]!, computeRide(ride).sections[0]!, 0, 5)
        .map(({ kind }) => kind[0])
        .join('')
    }
    expect(kinds(4, 0)).toMatch(/^ebbbbbbb/)
    expect(kinds(4, 0).slice(0, 9)).toBe('ebbbbbbbe')
    expect(
      clicksOf(rideOf(gridOfTempo(120), 0, 1).sections[0]!, computeRide(rideOf(gridOfTempo(120), 0, 1)).sections[0]!, 0, 4).map(
        ({ kind }) => kind,
      ),
    ).toEqual(['eight', 'beat', 'beat', 'beat', 'bar', 'beat', 'beat', 'beat'])
    expect(
      clicksOf(rideOf(gridOfTempo(120, 0, 3), 2, 1).sections[0]!, computeRide(rideOf(gridOfTempo(120, 0, 3), 2, 1)).sections[0]!, 0, 3).map(
        ({ kind }) => kind,
      ),
    ).toEqual(['eight', 'bar', 'beat', 'beat', 'bar', 'beat'])
  })

  it('clicks on through beats over, evenly, and the eight after them where the music has it', () => {
    const plain = rideOf(gridOfTempo(120), 0, 8)
    for (const [beats, kinds] of [
      [2, 'beat bar beat eight beat'],
      [4, 'beat bar beat beat beat eight'],
      [-2, 'beat eight beat'],
      [-7, 'eight eight beat'],
    ] as const) {
      const ride = setOddBeats(plain, { sectionId: 'song', odd: [[32, beats]] }).apply(plain)
      const clicks = clicksOf(ride.sections[0]!, computeRide(ride).sections[0]!, 0, 40)
      expect(clicks.map(({ at }) => at)).toEqual(clicks.map((_, i) => expect.closeTo(i / 2, 9)))
      const before = beats < 0 ? 31 + beats : 31
      expect(clicks.slice(before, before + kinds.split(' ').length).map(({ kind }) => kind)).toEqual(kinds.split(' '))
    }
  })

  it('ticks each second where there are no beats, and only when asked to', () => {
    const { ride, report } = planOf(leadRide())
    const clock = [ride.sections[2]!, report.sections[2]!] as const
    expect(clicksOf(...clock, 0, 1000)).toEqual([])
    const ticks = clicksOf(...clock, 0, 1000, true)
    expect(ticks).toHaveLength(60)
    expect(ticks[0]).toEqual({ at: report.sections[2]!.one, kind: 'second' })
  })
})

describe('course', () => {
  const legs = fc
    .array(fc.tuple(fc.double({ min: 0, max: 900, noNaN: true }), fc.double({ min: 0.5, max: 60, noNaN: true })), {
      minLength: 1,
      maxLength: 4,
    })
    .map((pairs) => pairs.map(([from, length]) => ({ from, to: from + length })))
  const courses = fc.record({ legs, repeats: fc.boolean() })

  it('plays each leg from its very beginning to its very end, piece after piece without a gap', () => {
    fc.assert(
      fc.property(courses, cuts, (course, shares) => {
        const until = course.repeats ? lengthOf({ ...course, repeats: false }) * 2.5 : lengthOf(course) + 1
        const pieces = cut(0, until, shares).flatMap(([from, to]) => piecesOf(course, from, to))
        for (const [i, piece] of pieces.entries()) {
          const leg = course.legs[piece.leg % course.legs.length]!
          const next = pieces[i + 1]
          if (i === 0) expect(piece.from).toBe(leg.from)
          if (next?.leg === piece.leg) expect(next.from).toBe(piece.to)
          else if (next) expect([piece.to, next.from]).toEqual([leg.to, course.legs[next.leg % course.legs.length]!.from])
        }
        if (!course.repeats) expect(pieces.at(-1)!.to).toBe(course.legs.at(-1)!.to)
      }),
    )
  })

  it('says where in the ride it is, and when it will be somewhere', () => {
    const course: Course = {
      legs: [
        { from: 10, to: 14 },
        { from: 40, to: 46 },
      ],
      repeats: true,
    }
    expect([0, 3.5, 4, 9.5, 10, 23].map((at) => rideTimeAt(course, at))).toEqual([10, 13.5, 40, 45.5, 10, 13])
    expect([11, 41, 20, 50].map((at) => courseTimeOf(course, at))).toEqual([1, 5, 4, 0])
    expect(rideTimeAt({ ...course, repeats: false }, 99)).toBe(46)
  })
})

describe('rideScore', () => {
  it('holds every click of a ride exactly once on a course through all of it, whatever the windows', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 3 }), cuts, (ride, shares) => {
        const plan = planOf(ride)
        const total = Math.min(plan.report.overall.total, 900)
        const score = rideScore(plan, courseOfRide(plan), everything)
        const whole = score.clicks(0, total)
        const pieces = cut(0, total, shares).flatMap(([from, to]) => score.clicks(from, to))
        expect(pieces.map(({ kind }) => kind)).toEqual(whole.map(({ kind }) => kind))
        // The same but for the rounding of sums that begin elsewhere.
        for (const [i, { at }] of pieces.entries()) expect(Math.abs(at - whole[i]!.at)).toBeLessThan(1e-9)
        expect(whole.every(({ at }, i) => i === 0 || at >= whole[i - 1]!.at)).toBe(true)
        const each = plan.ride.sections.flatMap((section, i) => clicksOf(section, plan.report.sections[i]!, 0, total, true))
        expect(whole).toHaveLength(each.length)
      }),
      { numRuns: 60 },
    )
  })

  it('comes by again and again where a block is repeated, its song from the same second each time', () => {
    const plan = planOf(rideOf(gridOfTempo(120, 0.5), 0, 4))
    const score = rideScore(plan, { legs: [{ from: 4, to: 8 }], repeats: true }, everything)
    expect(score.end).toBe(Number.POSITIVE_INFINITY)
    expect(score.clicks(0, 12).map(({ at }) => at)).toEqual(Array.from({ length: 24 }, (_, i) => i / 2))
    const rounds = score.sounding(0, 12)
    expect(rounds.map(({ from, to, songFrom }) => [from, to, songFrom])).toEqual([
      [0, 4, 4.5],
      [4, 8, 4.5],
      [8, 12, 4.5],
    ])
    expect(new Set(rounds.map(({ key }) => key)).size).toBe(3)
    expect(score.sounding(1.5, 2)).toEqual([rounds[0]])
  })

  it('clicks alone where a song’s file is not there, and leaves songs that play to themselves unless asked', () => {
    const plan = planOf(rideOf(gridOfTempo(120), 0, 4))
    const with_ = (isThere: boolean, clickOver: boolean) =>
      rideScore(plan, courseOfRide(plan), { ...everything, isThere: () => isThere, clickOver })
    expect(with_(true, false).clicks(0, 8)).toEqual([])
    expect(with_(true, true).clicks(0, 8)).toHaveLength(16)
    expect(with_(false, false).clicks(0, 8)).toHaveLength(16)
    expect(with_(false, false).sounding(0, 8)).toEqual([])
  })
})

describe('songScore', () => {
  it('clicks on every beat of the whole file, also before the first count', () => {
    const song = aSong('tune', { grid: gridOfTempo(120, 1.25), lengthSeconds: 6, fingerprint: 'tune' })
    const score = songScore(song, 0, { sounds: true, clicks: true })
    expect(score.clicks(0, 99).map(({ at }) => at)).toEqual([0.25, 0.75, 1.25, 1.75, 2.25, 2.75, 3.25, 3.75, 4.25, 4.75, 5.25, 5.75])
    expect(score.clicks(1.25, 1.75)).toEqual([{ at: 1.25, kind: 'eight' }])
    expect(score.sounding(3, 3.1)).toMatchObject([{ song: 'tune', from: 0, to: 6, songFrom: 0 }])
    expect(songScore(song, 0, { sounds: false, clicks: true }).sounding(0, 6)).toEqual([])
  })
})
