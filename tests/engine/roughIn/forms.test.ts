import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import { balanced } from '#engine/roughIn/balanced.ts'
import { endsLong } from '#engine/roughIn/endsLong.ts'
import { finishForm } from '#engine/roughIn/finishForm.ts'
import { holdsThrough } from '#engine/roughIn/holdsThrough.ts'
import type { Segment } from '#engine/roughIn/phrases.ts'
import { standLong } from '#engine/roughIn/standLong.ts'
import { withAttacks } from '#engine/roughIn/withAttacks.ts'

const rules = constantsOf({})
const down = (eights: number, build?: number): Segment => ({ eights, up: false, ...(build && { build }) })
const up = (eights: number): Segment => ({ eights, up: true })
const sum = (segments: readonly Segment[]) => segments.reduce((all, { eights }) => all + eights, 0)

/** Quiet and loud in turn, in whole phrases, a quiet stretch at either end, some with a build. */
const forms = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 5 }), fc.boolean()), { minLength: 1, maxLength: 5 })
  .map((pairs) => [...pairs.flatMap(([quiet, loud, builds]) => [down(4 * quiet, builds ? 4 : undefined), up(4 * loud)]), down(8)])
const eightSeconds = fc.double({ min: 2.2, max: 6, noNaN: true })

describe('attacks', () => {
  it('break a quiet stretch that is longer than riders need, each with the recovery of what was before it and its own', () => {
    // An eight of three seconds: 24 s of work need 24 s, which is two phrases; then an attack of 24 s and its own.
    expect(withAttacks([down(8), up(8), down(24), up(8), down(8)], 3, false, 'advanced', rules)).toEqual([
      down(8),
      up(8),
      down(8),
      up(8),
      down(8),
      up(8),
      down(8),
    ])
    // With less room the attack is shorter, and with none there is no attack.
    expect(withAttacks([down(8), up(8), down(20), up(8), down(8)], 3, false, 'advanced', rules)[3]).toEqual(up(6))
    expect(withAttacks([down(8), up(8), down(12), up(8), down(8)], 3, false, 'advanced', rules)).toHaveLength(5)
  })

  it('leave builds, the end of what was heard, and the length of the song as they are', () => {
    fc.assert(
      fc.property(forms, eightSeconds, fc.boolean(), (form, eight, heard) => {
        const attacked = withAttacks(form, eight, heard, 'advanced', rules)
        expect(sum(attacked)).toBe(sum(form))
        expect(attacked.flatMap(({ build }) => build ?? [])).toEqual(form.flatMap(({ build }) => build ?? []))
        if (heard) expect(attacked.at(-1)).toEqual(form.at(-1))
        // Every effort but the song's last has its recovery, where it had it before.
        const short = (segments: readonly Segment[]) =>
          segments.filter(({ eights, up: loud }, at) => {
            const next = segments[at + 1]
            const need = recoveryNeed({ work: eights * eight, peak: rules.hardEffort, allOut: false }, 'advanced', rules)
            return loud && next && segments[at + 2] && (next.eights - (next.build ?? 0)) * eight < need - 1e-6
          }).length
        expect(short(attacked)).toBeLessThanOrEqual(short(form))
      }),
    )
  })
})

describe('the finish', () => {
  it('lasts as long as the level takes where the music builds to less: it begins before the build and rises with it', () => {
    // Eights of three seconds. The loud stretch that the music builds to is 36 s and is followed by 24 s; the level takes 96.
    const form = finishForm([down(56, 8), up(12), down(8)], 3, 100)!
    expect(form.segments[1]).toEqual({ eights: 32, up: true, rise: { eights: 8, last: 12 } })
    expect(form.rest * 3).toBeGreaterThanOrEqual(62)
    expect(form.opening + form.rest + sum(form.segments)).toBe(76)
  })

  it('is the last loud stretch there is room for where nothing builds', () => {
    const form = finishForm([down(40), up(16), down(16)], 3, 48)!
    expect(form.segments.slice(1)).toEqual([up(16), down(16)])
  })
})

describe('long efforts', () => {
  it('go on into a quiet stretch that is longer than they are, until both are about as long', () => {
    expect(balanced([down(8), up(8), down(20), up(8), down(8)], 3, 100)).toEqual([down(8), up(14), down(14), up(10), down(6)])
    expect(balanced([down(8), up(8), down(20, 8), up(8), down(8)], 3, 30)[1]).toEqual(up(10))
  })

  it('end a song on the longest the level takes, after a quiet stretch', () => {
    expect(endsLong([down(8), up(8), down(8), up(8), down(8)], 3, 60)).toEqual([down(8), down(4), up(20), down(8)])
    fc.assert(
      fc.property(forms, eightSeconds, (form, eight) => {
        const long = endsLong(form, eight, 90)
        expect(sum(long)).toBe(sum(form))
        expect(long[0]!.up).toBe(false)
      }),
    )
  })

  it('are held through a quiet stretch between the last two, rising where the music builds in it', () => {
    const form = [down(8), up(8), down(4), up(8), down(8)]
    expect(holdsThrough(form, 3, 60)).toEqual([down(8), up(20), down(8)])
    // Where the level does not take all of it, it begins a phrase later.
    expect(holdsThrough(form, 3, 59)).toEqual([down(12), up(16), down(8)])
    expect(holdsThrough(form, 3, 20)).toEqual(form)
    expect(holdsThrough([down(8), up(8), down(4, 4), up(8), down(8)], 3, 60)[1]).toEqual({ ...up(20), rise: { eights: 4, last: 8 } })
  })
})

describe('the long stretch out of the saddle', () => {
  const song = (...patterns: [pattern: string, eights: number][]) => ({
    eightSeconds: 3,
    standsLong: true,
    planned: patterns.map(([pattern, eights]) => ({ pattern, eights, effort: 6 })),
  })

  it('is the longest there is room for, in one song, which begins and ends seated', () => {
    const songs = [
      song(['seated-hill', 8], ['standing-hill', 8], ['seated-hill', 8], ['standing-hill', 8], ['seated-hill', 16]),
      song(['flat', 8], ['run', 8], ['flat', 12], ['flat', 8]),
    ]
    const patterns = (most: number) => standLong(songs, most).map(({ planned }) => planned.map(({ pattern }) => pattern))
    expect(patterns(150)[0]).toEqual(['seated-hill', 'standing-hill', 'standing-hill', 'standing-hill', 'seated-hill'])
    expect(patterns(150)[1]).toEqual(['flat', 'run', 'flat', 'flat'])
    // The first song has nothing between 48 and 72 s; the second has 60.
    expect(patterns(60)[1]).toEqual(['flat', 'run', 'standing-flat', 'flat'])
    expect(patterns(60)[0]).toEqual(songs[0]!.planned.map(({ pattern }) => pattern))
    expect(patterns(20)).toEqual(songs.map(({ planned }) => planned.map(({ pattern }) => pattern)))
  })

  it('leaves recoveries, drinking, a change of feet, and songs too fast to stand on alone', () => {
    const base = song(['flat', 8], ['run', 8], ['recover', 8], ['flat', 8])
    expect(standLong([base], 200)[0]!.planned).toEqual(base.planned)
    const drinks = song(['flat', 8], ['run', 8], ['flat', 8], ['flat', 8])
    drinks.planned[2] = { ...drinks.planned[2]!, water: true } as (typeof drinks.planned)[1]
    expect(standLong([drinks], 200)[0]!.planned).toEqual(drinks.planned)
    const fast = { ...song(['flat', 8], ['run', 8], ['flat', 8], ['flat', 8]), standsLong: false }
    expect(standLong([fast], 200)[0]!.planned).toEqual(fast.planned)
  })
})
