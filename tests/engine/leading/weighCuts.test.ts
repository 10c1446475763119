import { describe, expect, it } from 'vitest'
import { rolesOf, sectionShapes } from '#engine/fit/shapeOf.ts'
import { cutCandidates } from '#engine/leading/cuts/cutCandidates.ts'
import { needOf, weighCuts } from '#engine/leading/cuts/weighCuts.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { lateLog, leadRide, leadStateAt, planOf, proposeCuts } from '#tests/support/leading.ts'
import { told } from '#tests/support/told.ts'

const ridge = planOf(demoRide('ridge'))
const spark = planOf(demoRide('spark'))
const FOUR_MINUTES = 240
/** The fourth song, a tempo song whose job the ninth does too, and the seventh, the recovery between climb and jumps. */
const GLASS_TRAM = 3
const THIMBLE_OCEAN = 6

describe('the 45-minute demo ride, begun four minutes late', () => {
  const led = ledClass(ridge, lateLog(FOUR_MINUTES))

  it('has to find 2:43', () => expect(needOf(led, 0)).toBeCloseTo(163, 0))

  it('leaves out the fourth song with its gap, and says with what call the next then starts', () => {
    const [best] = proposeCuts(led, 0)
    expect(best!.cuts).toEqual([{ kind: 'song', section: GLASS_TRAM }])
    expect(best!.seconds).toBeCloseTo(194, 6)
    expect(told(best!.text)).toBe('Skip “Glass Tram” (−3:14): you finish 31 s early. “Iron Lullaby” then starts with “one turn on”.')
  })

  it('not the seventh, whose removal is a second short and joins the long climb to the jumps', () => {
    const short = cutCandidates(led, 0).find(({ cut }) => cut.kind === 'song' && cut.section === THIMBLE_OCEAN)!
    expect(needOf(led, 0) - short.seconds).toBeGreaterThan(0)
    expect(needOf(led, 0) - short.seconds).toBeLessThan(1.5)
    for (const { cuts } of proposeCuts(led, 0)) expect(cuts).not.toContainEqual(short.cut)
    // Two seconds less late it would be long enough, and still is no better.
    const earlier = ledClass(ridge, lateLog(FOUR_MINUTES - 2))
    expect(needOf(earlier, 0)).toBeLessThan(short.seconds)
    expect(proposeCuts(earlier, 0)[0]!.cuts).toEqual([{ kind: 'song', section: GLASS_TRAM }])
  })

  it('ends inside the slot once taken, with the planned totals and feet', () => {
    const cuts = proposeCuts(led, 0)[0]!.cuts
    const log = lateLog(FOUR_MINUTES, { kind: 'cut', at: 20, cuts })
    expect(leadStateAt(ridge, log, 20).spare).toBeCloseTo(31, 0)
    const { report, blocks } = ledClass(ridge, log)
    for (const [i, { planned }] of blocks.entries()) {
      expect(report.blocks[i]!.ledger.total).toBe(ridge.report.blocks[planned]!.ledger.total)
      expect(report.blocks[i]!.foot).toBe(ridge.report.blocks[planned]!.foot)
    }
    expect(report.sections[GLASS_TRAM]!.sectionId).toBe(ridge.ride.sections[4]!.id)
    expect(report.blocks[report.sections[GLASS_TRAM]!.blocks.from]!.ledger.call).toBe('one turn on')
    expect(proposeCuts(ledClass(ridge, log), 21)).toEqual([])
  })

  it('proposes another song once the fourth has begun', () => {
    const after = ridge.report.sections[GLASS_TRAM]!.one + 1
    for (const { cuts } of proposeCuts(led, after)) {
      for (const { section } of cuts) expect(section).toBeGreaterThanOrEqual(GLASS_TRAM)
      expect(cuts).not.toContainEqual({ kind: 'song', section: GLASS_TRAM })
    }
  })
})

describe('whatever is over the slot', () => {
  const cases = [ridge, spark].flatMap((plan) =>
    [45, 90, 120, 200, 300, 420].map((late) => ({ plan, late, title: `${plan.ride.title}, ${late} s late` })),
  )

  it.each(cases)('$title: ends inside, on phrases, with warm-up, cool-down and finish, never under base', ({ plan, late }) => {
    const led = ledClass(plan, lateLog(late))
    const roles = rolesOf(sectionShapes(plan.ride), 7, 3)
    for (const { cuts, spare } of proposeCuts(led, 0)) {
      expect(spare).toBeGreaterThanOrEqual(0)
      const cut = ledClass(plan, lateLog(late, { kind: 'cut', at: 0, cuts }))
      expect(cut.report.overall.slack - late).toBeCloseTo(spare, 6)
      for (const { section } of cuts) expect(roles[section]).toBe('middle')
      for (const { counts, unit } of cut.report.sections) if (counts) expect(counts.total % unit.phrase).toBe(0)
      for (const { ledger, cadence } of cut.report.blocks)
        if (cadence.kind === 'turning') expect(ledger.after.low).toBeGreaterThanOrEqual(0)
      expect(cut.report.recovery.totalDebt).toBeLessThanOrEqual(led.report.recovery.totalDebt + 0.5)
      for (const { open, beyond } of cut.report.sections) expect([open, beyond]).toEqual([0, 0])
    }
  })

  it('trims rather than drops a song where a little is enough', () => {
    const proposals = proposeCuts(ledClass(ridge, lateLog(90)), 0)
    expect(proposals[0]!.cuts.every(({ kind }) => kind !== 'song')).toBe(true)
    expect(proposals[0]!.spare).toBeLessThan(20)
  })

  it('cuts nothing that need not be', () => {
    for (const late of [45, 90, 240]) {
      const led = ledClass(spark, lateLog(late))
      for (const { cuts, seconds } of proposeCuts(led, 0)) {
        for (const cut of cuts) {
          const without = ledClass(spark, lateLog(late, { kind: 'cut', at: 0, cuts: cuts.filter((other) => other !== cut) }))
          expect(led.report.overall.total - without.report.overall.total).toBeLessThan(Math.min(seconds, needOf(led, 0)))
        }
      }
    }
  })

  it('has nothing to propose when nothing that may go is long enough, or nothing is over', () => {
    expect(proposeCuts(ledClass(spark, lateLog(1200)), 0)).toEqual([])
    expect(proposeCuts(ledClass(spark, lateLog(0)), 0)).toEqual([])
    expect(cutCandidates(ledClass(spark, lateLog(300)), spark.report.overall.total - 60)).toEqual([])
  })

  it('takes one computation a step, so that frames come in between', () => {
    let steps = 0
    const weighing = weighCuts(ledClass(ridge, lateLog(FOUR_MINUTES)), 0)
    while (!weighing.next().done) steps++
    expect(steps).toBeGreaterThan(1)
    expect(steps).toBeLessThanOrEqual(8)
  })
})

it('takes the last rounds of a set whose song then ends on a phrase', () => {
  const plan = planOf({ ...leadRide(), slotMinutes: 4 })
  const rounds = cutCandidates(ledClass(plan, lateLog(0)), 0).filter(({ cut }) => cut.kind === 'rounds')
  // One of three rounds of eight eights; with two of them gone less than half the song would be left.
  expect(rounds).toMatchObject([{ cut: { section: 1, setId: 'waves', rounds: 1 }, seconds: 32 }])
})
