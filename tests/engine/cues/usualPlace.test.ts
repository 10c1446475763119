import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { blockOfPattern } from '#engine/cues/blockOfPattern.ts'
import { usualCount, usualLead } from '#engine/cues/usualPlace.ts'
import type { Finding } from '#engine/report.ts'
import { cueOffers } from '#features/drafting/panel/block/cueOffers.ts'
import { atMoment } from '#features/drafting/panel/block/momentOf.ts'
import { startsWithBlock } from '#plan/cueStart.ts'
import type { Block, Cue, HouseRules, Ride } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, countedIds, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const add: Block['resistance'] = { kind: 'change', mode: 'exact', steps: 3 }
const cue = (moment: Cue['moment'], lead: Cue['lead'], text: string, more: Partial<Cue> = {}): Cue => ({
  id: 'x',
  moment,
  lead,
  text,
  ...more,
})

/** Two blocks of a minute and more at two beats a second, the second with a change and the cue. */
const ride = (cues: Cue[], houseRules?: HouseRules, counted = true): Ride => ({
  ...smallRide(),
  houseRules,
  sections: [
    aSection('s', {
      ...(counted && { song: aSong('tune') }),
      blocks: [
        aBlock('a', counted ? { length: { counts: 160 } } : inSeconds(80)),
        aBlock('b', { ...(counted ? { length: { counts: 160 } } : inSeconds(80)), resistance: add, cues }),
      ],
    }),
  ],
})
const placeOf = (one: Ride): Finding | undefined => computeRide(one).findings.find(({ rule }) => rule === 'cuePlace')
const repaired = (one: Ride): Ride => placeOf(one)!.fixes[0]!.command.apply(one)
const leadOf = (one: Ride): Cue['lead'] | undefined => (one.sections[0]!.blocks[1] as Block).cues[0]?.lead

describe('where the studio’s rules have a cue', () => {
  it('finds the demo rides in order', () => {
    for (const name of ['spark', 'ridge'] as const) expect(placeOf(demoRide(name))).toBeUndefined()
  })

  describe('announceCounts', () => {
    const late = cue('announce', { counts: 4 }, 'Three quarters on.')

    it('judges an announcement that starts too late', () => {
      expect(placeOf(ride([late]))).toBeUndefined()
      const strict = ride([late], { announceCounts: 12, announceCountsMost: 24 })
      expect(told(placeOf(strict)?.text)).toBe(
        '“Three quarters on.” starts 7 counts before “b”; announcements start at least 12 counts before.',
      )
      expect(placeOf(repaired(strict))).toBeUndefined()
    })

    it('places the announcements that are offered, repaired, patterned and chosen', () => {
      for (const [rules, counts] of [
        [undefined, 8],
        [{ announceCounts: 12 }, 12],
      ] as const) {
        const silent = ride([], rules)
        const [fix] = computeRide(silent).findings.find(({ rule }) => rule === 'unannounced')!.fixes
        expect(leadOf(fix!.command.apply(silent))).toEqual({ counts })
        expect(cueOffers(silent, computeRide(silent), 'b', []).call?.cue.lead).toEqual({ counts })
        expect(blockOfPattern(PATTERNS[0]!, silent, silent.sections[0]!, countedIds()).cues[0]!.lead).toEqual({ counts })
        const form = cue('form', { counts: 40 }, 'Long back.')
        expect(atMoment(ride([form], rules), computeRide(ride([form], rules)), 'b', form, 'announce').lead).toEqual({ counts })
      }
    })
  })

  it('announceCountsMost judges an announcement that is over too early', () => {
    const early = cue('announce', { counts: 24 }, 'Three quarters on.')
    const found = placeOf(ride([early]))
    expect(told(found?.text)).toBe('“Three quarters on.” ends 24 counts before “b”; announcements end at most 16 counts before.')
    expect(leadOf(repaired(ride([early])))).toEqual({ counts: 16 })
    expect(placeOf(ride([early], { announceCountsMost: 24 }))).toBeUndefined()
  })

  describe('announceSeconds', () => {
    it('judges an announcement off the beat', () => {
      const late = cue('announce', { seconds: 2 }, 'Three quarters on.')
      const found = placeOf(ride([late], undefined, false))
      expect(told(found?.text)).toBe('“Three quarters on.” starts 3.7 s before “b”; announcements start at least 8 s before.')
      expect(placeOf(repaired(ride([late], undefined, false)))).toBeUndefined()
      expect(placeOf(ride([late], { announceSeconds: 3 }, false))).toBeUndefined()
    })

    it('places the announcements that are offered and repaired', () => {
      for (const [rules, seconds] of [
        [undefined, 8],
        [{ announceSeconds: 12 }, 12],
      ] as const) {
        const silent = ride([], rules, false)
        expect(cueOffers(silent, computeRide(silent), 'b', []).call?.cue.lead).toEqual({ seconds })
        const [fix] = computeRide(silent).findings.find(({ rule }) => rule === 'unannounced')!.fixes
        expect(leadOf(fix!.command.apply(silent))).toEqual({ seconds })
        expect(blockOfPattern(PATTERNS[0]!, silent, silent.sections[0]!, countedIds()).cues[0]!.lead).toEqual({ seconds })
      }
    })
  })

  describe('previewCounts', () => {
    const near = cue('preview', { counts: 16 }, 'A hill comes, one minute, half turn by half turn.')

    it('judges a preview that starts too late', () => {
      const found = placeOf(ride([near]))
      expect(told(found?.text)).toMatch(/ starts 2\d counts before “b”; previews start at least 32 counts before\.$/)
      expect(placeOf(repaired(ride([near])))).toBeUndefined()
      expect(placeOf(ride([near], { previewCounts: 20 }))).toBeUndefined()
    })

    it('places a cue that becomes one', () => {
      const call = cue('announce', { counts: 8 }, 'A hill comes.')
      for (const [rules, counts] of [
        [undefined, 32],
        [{ previewCounts: 48 }, 48],
      ] as const) {
        expect(atMoment(ride([call], rules), computeRide(ride([call], rules)), 'b', call, 'preview').lead).toEqual({ counts })
      }
    })
  })

  describe('countInCounts', () => {
    const counted = cue('countIn', { counts: 0 }, '', { count: 4 })

    it('judges a count-in that is too short', () => {
      expect(placeOf(ride([counted]))).toBeUndefined()
      const strict = ride([counted], { countInCounts: 8 })
      expect(told(placeOf(strict)?.text)).toBe('The count-in to “b” is 4 counts; this studio counts 8 or more.')
      expect(placeOf(repaired(strict))).toBeUndefined()
    })

    it('is how long one that is offered or chosen is', () => {
      for (const [rules, count] of [
        [undefined, 4],
        [{ countInCounts: 8 }, 8],
      ] as const) {
        expect(cueOffers(ride([], rules), computeRide(ride([], rules)), 'b', []).countIn?.cue.count).toBe(count)
        const call = cue('announce', { counts: 8 }, 'Go.')
        expect(atMoment(ride([call], rules), computeRide(ride([call], rules)), 'b', call, 'countIn')).toMatchObject({
          lead: { counts: 0 },
          count,
        })
      }
      expect(usualCount(constantsOf({ houseRules: { countInCounts: 5 } }))).toBe(8)
    })
  })

  it('says nothing of what opens the ride', () => {
    const opening = ride([])
    Object.assign(opening.sections[0]!.blocks[0]!, { cues: [cue('announce', { counts: 0 }, 'Settle in.')] })
    expect(placeOf(opening)).toBeUndefined()
  })
})

describe('a cue that is given another moment', () => {
  const at = (one: Cue, moment: Cue['moment'], counted = true) =>
    atMoment(ride([one], undefined, counted), computeRide(ride([one], undefined, counted)), 'b', one, moment)

  it('goes where that moment usually stands', () => {
    const call = cue('announce', { counts: 8 }, 'Up.')
    expect(startsWithBlock(at(call, 'form').lead)).toBe(true)
    expect(startsWithBlock(at(call, 'story').lead)).toBe(true)
    expect(at(call, 'action').lead).toEqual({ counts: 0 })
    expect(at(cue('form', { counts: 30 }, 'Up.'), 'announce').lead).toEqual({ counts: 8 })
    expect(at(cue('form', { seconds: 30 }, 'Up.'), 'announce', false).lead).toEqual({ seconds: 8 })
    expect(at(cue('action', { counts: 0 }, 'Up.'), 'preview').lead).toEqual({ counts: 32 })
  })

  it('keeps a lead that was set by hand where it still means the same', () => {
    expect(at(cue('announce', { counts: 12 }, 'Up.'), 'preview').lead).toEqual({ counts: 12 })
    expect(at(cue('form', { counts: 12 }, 'Up.'), 'story').lead).toEqual({ counts: 12 })
  })

  it('counts in only where it is a count-in', () => {
    expect(at(cue('countIn', { counts: 0 }, '', { count: 8 }), 'announce')).not.toHaveProperty('count')
  })
})

it('leaves room for resistance and posture where that takes longer than an announcement', () => {
  const rules = constantsOf({})
  expect(usualLead('announce', rules, true, 12)).toEqual({ counts: 12 })
  expect(usualLead('preview', rules, false)).toEqual({ seconds: 16 })
})
