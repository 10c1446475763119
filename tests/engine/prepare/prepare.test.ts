import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { checklist } from '#engine/prepare/checklist.ts'
import { checkpoints } from '#engine/prepare/checkpoints.ts'
import { gapsOf } from '#engine/prepare/gapsOf.ts'
import { withoutMusic } from '#engine/prepare/withoutMusic.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import { editBlock, editBlocksOf } from '#plan/edits.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const spark = demoRide('spark')
const ridge = demoRide('ridge')
const ALL = [spark, ridge]

describe('checkpoints', () => {
  test('are the song starts nearest to 25, 50, 75 and 90 %, by the clock on the wall', () => {
    // Starts and total of the demo: songs at 599.96, 1262.84, 1867.16, 2319.37 s of 2622.84 s from 18:30.
    expect(checkpoints(ridge, computeRide(ridge)).map(({ section, clock }) => [section + 1, clock])).toEqual([
      [4, '18:40'],
      [7, '18:51'],
      [10, '19:01'],
      [12, '19:09'],
    ])
  })

  test('come once each, none without a start on the wall, none for a single song', () => {
    const unset = { ...spark, startsAt: undefined }
    expect(checkpoints(unset, computeRide(unset)).map((one) => Object.keys(one))).toEqual(Array(4).fill(['section', 'at']))
    const two = { ...spark, sections: spark.sections.slice(0, 2) }
    expect(checkpoints(two, computeRide(two))).toHaveLength(1)
    const one = { ...spark, sections: spark.sections.slice(0, 1) }
    expect(checkpoints(one, computeRide(one))).toEqual([])
  })
})

describe('the class without its music', () => {
  test('is at most ten stretches that tile it, each of a minute or more', () => {
    for (const ride of ALL) {
      const report = computeRide(ride)
      const lines = withoutMusic(report)
      expect(lines).toHaveLength(10)
      expect([lines[0]!.from, lines.at(-1)!.to]).toEqual([report.blocks[0]!.from, report.blocks.at(-1)!.to])
      for (const [index, { from, to }] of lines.entries()) {
        expect(to - from).toBeGreaterThanOrEqual(60)
        if (index > 0) expect(from - lines[index - 1]!.to).toBeLessThanOrEqual(2 + 1e-9)
      }
    }
  })

  test('keeps the three pushes of the demo together, as many and as long as they are', () => {
    const pushes = withoutMusic(computeRide(spark)).find(({ bouts }) => bouts?.length === 3)!
    expect(pushes.easy).toBeCloseTo(3, 9)
    expect(pushes.hard).toBeCloseTo(9, 9)
    for (const seconds of pushes.bouts!) expect(seconds).toBeCloseTo((64 * 60) / 184, 6)
  })

  test('of any ride is told in stretches whose hard efforts fit into them', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 5 }), (ride) => {
        const report = computeRide(ride)
        const lines = withoutMusic(report)
        expect(lines.length).toBeLessThanOrEqual(10)
        for (const { from, to, easy, hard, bouts } of lines) {
          expect(to).toBeGreaterThan(from)
          expect(easy).toBeLessThanOrEqual(hard + 1e-9)
          if (bouts) expect(bouts.reduce((sum, seconds) => sum + seconds, 0)).toBeLessThanOrEqual(to - from + 1e-6)
        }
      }),
      { numRuns: 40 },
    )
  })
})

describe('the checklist', () => {
  const texts = (ride: Ride) =>
    checklist(ride, computeRide(ride)).flatMap(({ items }) => items.map(({ text, detail }) => `${told(text)}: ${told(detail ?? '')}`))

  test('has figures of this ride', () => {
    const all = texts(ridge).join('\n')
    expect(all).toContain('playlist in order, 13 songs')
    expect(all).toContain('crossfade off, 2 s between songs')
    // 43.7 min at 93.1 dB: 480 ÷ 2^(8.1/3) = 73.9 min a day (NIOSH 98-126).
    expect(all).toContain('59% of a safe day’s noise')
    expect(all).toMatch(/first drink at .*, 3 planned/)
    const dry: Ride = {
      ...ridge,
      sections: ridge.sections.map((section) => editBlocksOf(section, ({ water, cues, ...block }) => ({ ...block, cues: [] }))),
    }
    expect(texts(dry).join('\n')).toContain('no drink is planned')
    const sip: Cue = { id: 'sip', moment: 'announce', lead: { counts: 8 }, text: 'Grab a sip.' }
    const sipped = editBlock(dry, computeRide(dry).blocks[9]!.block.id, (block) => ({ ...block, cues: [sip] }))
    expect(texts(sipped).join('\n')).toMatch(/first drink at .*, 1 planned/)
    expect(texts(spark).join('\n')).toContain('Odalys Thornquill and Remy Castellane-Voss')
  })

  test('to a camera it looks after picture and voice, and without songs not after a player', () => {
    expect(texts({ ...spark, room: 'online' }).join()).toContain('opening card at hand')
    expect(texts({ ...spark, room: 'online' }).join()).not.toMatch(/back row|on every bike|first-timers met/)
    const silent = { ...spark, sections: spark.sections.map((section) => ({ ...section, song: null })) }
    expect(texts(silent).join()).not.toContain('playlist')
  })

  test('every item has a name of its own', () => {
    const ids = checklist(ridge, computeRide(ridge)).flatMap(({ items }) => items.map(({ id }) => id))
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('the player is set as most joints are, and the others are named', () => {
    const withLeads = (...leads: number[]): Ride => ({
      ...spark,
      sections: spark.sections.map((section, index) => ({ ...section, leadInSeconds: leads[index] ?? -6 })),
    })
    const gaps = gapsOf(withLeads(0, -6, -6, 2))
    expect(told(gaps.text)).toBe('player set to a 6-second crossfade')
    expect(told(gaps.detail!)).toBe('2 s before song 4; all times count on it')
    expect(told(gapsOf(withLeads(9, 0, 0, 0, 0, 0)).text)).toBe('crossfade off, no gap between songs')
    expect(told(gapsOf(smallRide()).text)).toBe('crossfade off')
  })
})

describe('the opening card', () => {
  const card = (ride: Ride) => openingCard(ride, computeRide(ride))

  test('says two sentences from the plan', () => {
    expect(card(spark).sentences[0]).toBe(
      'Twenty minutes with ten hard efforts, none longer than thirty seconds, the hardest at minute seventeen.',
    )
    expect(card({ ...ridge, sections: ridge.sections.slice(0, 1) }).sentences[0]).toBe('Three minutes with nothing hard in them.')
    expect(card({ ...spark, briefingSeconds: 300, clearUpSeconds: 120 }).sentences).toEqual(card(spark).sentences)
    expect(card({ ...spark, room: 'online' }).sentences[1]).toMatch(/^Your bike is not mine/)
  })

  test('is timed at the leader’s own pace, with a pause a sentence', () => {
    const { words, seconds, sentences } = card(spark)
    expect(words).toBe(sentences.join(' ').split(' ').length)
    // Not far from its words at 140 a minute, and exactly half as fast at half the pace; the pause after a sentence stays.
    const spoken = seconds - 2 * 0.4
    expect(Math.abs(spoken - words / (140 / 60)) / spoken).toBeLessThan(0.2)
    const slow = { ...spark, leaders: [{ ...spark.leaders[0]!, wordsPerMinute: 70 }] }
    expect(card(slow).seconds).toBeCloseTo(2 * spoken + 0.8, 9)
  })

  test('fits a briefing that is as long', () => {
    const { seconds } = card(spark)
    expect(card({ ...spark, briefingSeconds: seconds - 0.1 }).fits).toBe(false)
    expect(card({ ...spark, briefingSeconds: seconds }).fits).toBe(true)
  })
})
