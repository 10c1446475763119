import { describe, expect, it } from 'vitest'
import { contentRevision } from '#plan/document/contentRevision.ts'
import type { TaughtClass, TaughtSection } from '#plan/kept/taught.ts'
import type { Ride } from '#plan/model.ts'
import { findPlans } from '#plan/songPlans/findPlans.ts'
import { isSameSong, joinPlans, plansIn, revisionInLog, songOf } from '#plan/songPlans/songPlan.ts'
import { aBlock, aSong, smallRide } from '#tests/support/smallRide.ts'

const ride: Ride = { ...smallRide(), title: 'Thursday' }

const aClass = (id: string, day: string, of: Ride, sections: Partial<TaughtSection>[] = [{ id: 'song', stars: 4 }]): TaughtClass => ({
  id,
  rideId: of.id,
  title: of.title,
  revision: contentRevision(of),
  day,
  room: '',
  slotMinutes: 45,
  sections: sections.map((section) => ({ title: '', song: true, outcome: 'taught', seconds: 1, blocks: [], id: 'song', ...section })),
})

const kept = (one: Ride, log: readonly TaughtClass[], at = 1) => plansIn({ ride: one, at, revision: revisionInLog(one, log) })
const said = (log: readonly TaughtClass[], ...rides: Ride[]) =>
  joinPlans(
    rides.flatMap((one, index) => kept(one, log, index + 1)),
    log,
  ).map((plan) => [songOf(plan).title, plan.rideTitle, plan.taught])

describe('the plans songs were ridden with', () => {
  it('are those of songs with blocks; taught ones come first, with day, times and the last stars', () => {
    const log = [aClass('a', '2026-11-04', ride), aClass('b', '2026-11-25', ride, [{ id: 'song' }])]
    expect(said(log, ride)).toEqual([
      ['first', 'Thursday', { day: '2026-11-25', times: 2, stars: 4 }],
      ['second', 'Thursday', undefined],
    ])
  })

  it('that a class skipped, or that were changed since, were not taught', () => {
    const changed = { ...ride, sections: ride.sections.map((section) => ({ ...section, blocks: section.blocks.slice(0, 1) })) }
    expect(said([aClass('a', '2026-11-04', ride, [{ outcome: 'skipped' }])], ride).map(([, , taught]) => taught)).toEqual([
      undefined,
      undefined,
    ])
    expect(said([aClass('a', '2026-11-04', ride)], changed).map(([, , taught]) => taught)).toEqual([undefined, undefined])
  })

  it('carried unchanged into another ride are one, under the ride they were taught in last', () => {
    const copy: Ride = { ...ride, id: 'copy', title: 'Friday' }
    const log = [aClass('a', '2026-11-04', ride), aClass('b', '2026-11-25', copy)]
    expect(said(log, ride, copy)[0]).toEqual(['first', 'Friday', { day: '2026-11-25', times: 2, stars: 4 }])
    expect(said(log, ride, copy)).toHaveLength(2)
    // Not taught, under the ride that was changed last.
    expect(said([], ride, copy).map(([, title]) => title)).toEqual(['Friday', 'Friday'])
  })

  it('of one class kept twice, in the ride and as it was taught, count once', () => {
    const log = [aClass('a', '2026-11-04', ride)]
    expect(joinPlans([...kept(ride, log), ...kept(ride, log, 2)], log)[0]!.taught).toEqual({ day: '2026-11-04', times: 1, stars: 4 })
  })

  it('belong to a song by its sound or by its title and artist', () => {
    expect(isSameSong(aSong('x', { title: 'Slow  GLASS' }), aSong('y', { title: 'slow glass' }))).toBe(true)
    expect(isSameSong(aSong('x', { fingerprint: 'f' }), aSong('y', { fingerprint: 'f' }))).toBe(true)
    expect(isSameSong(aSong('x', { artist: 'Pier Four' }), aSong('x'))).toBe(false)
    expect(isSameSong(aSong('x', { title: '' }), aSong('y', { title: '' }))).toBe(false)
  })

  it('are found by every word of song, artist or ride', () => {
    const named: Ride = {
      ...ride,
      sections: [{ ...ride.sections[0]!, song: aSong('s', { title: 'Slow Glass', artist: 'Pier Four' }), blocks: [aBlock('a')] }],
    }
    const plans = joinPlans(kept(named, []), [])
    for (const search of ['', 'glass', 'PIER thurs', ' slow ']) expect(findPlans(plans, search)).toHaveLength(1)
    expect(findPlans(plans, 'glass friday')).toEqual([])
  })
})
