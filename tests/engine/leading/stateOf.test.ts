import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { arbitraryEvents, lateLog, leadRide, leadStateAt, logOf, planOf } from '#tests/support/leading.ts'

const ridge = planOf(demoRide('ridge'))

describe('with nothing led otherwise', () => {
  it('is the plan, for every span of every ride', () => {
    fc.assert(
      fc.property(arbitraryRide(), fc.double({ min: 0, max: 0.999, noNaN: true }), (ride, share) => {
        const plan = planOf(ride)
        const led = ledClass(plan, logOf())
        expect(led.ride).toBe(ride)
        for (const span of plan.report.spans) {
          const at = span.from + share * (span.to - span.from)
          if (at >= span.to) continue
          const state = stateOf(led, at)
          expect(state).toMatchObject({ phase: span.kind, at, total: plan.report.overall.total })
          expect(state.block).toBe(span.block)
          expect(state.secondsLeft).toBe(span.to - at)
          expect(state.behind).toBeCloseTo(0, 6)
        }
        expect(stateOf(led, plan.report.overall.total).phase).toBe('finished')
      }),
    )
  })

  it('begins each block at its own first moment and not before, to the end of the hour', () => {
    for (const name of ['ridge', 'spark'] as const) {
      const plan = planOf(demoRide(name))
      const led = ledClass(plan, logOf())
      for (const { index, from } of plan.report.blocks) {
        expect(stateOf(led, from).block).toBe(index)
        if (from > 0) expect(stateOf(led, from - 1e-9).block).not.toBe(index)
      }
    }
  })

  it('has its blocks in order and its time left running down, frame by frame', () => {
    const led = ledClass(ridge, logOf())
    let block = 0
    let left = Number.POSITIVE_INFINITY
    for (let frame = 0; frame * 0.0997 < ridge.report.overall.total; frame++) {
      const state = stateOf(led, frame * 0.0997)
      if (state.block === block) expect(state.secondsLeft).toBeLessThan(left)
      else if (state.block !== undefined) expect(state.block).toBe(block + 1)
      block = state.block ?? block
      left = state.secondsLeft
    }
    expect(block).toBe(ridge.report.blocks.length - 1)
  })

  it('counts down the eights and the counts of a block', () => {
    const led = ledClass(ridge, logOf())
    const second = ridge.report.blocks[1]!
    const at = (counts: number) => stateOf(led, second.from + ((counts + 1e-6) * 60) / 166)
    expect(at(0)).toMatchObject({ eights: { left: 16, of: 16 }, countsLeft: 128, beat: { count: 1, of: 8 }, music: { eight: 17, of: 64 } })
    expect(at(7)).toMatchObject({ eights: { left: 16 }, countsLeft: 121, beat: { count: 8 } })
    expect(at(8)).toMatchObject({ eights: { left: 15 }, beat: { count: 1 } })
    expect(at(127)).toMatchObject({ eights: { left: 1 }, countsLeft: 1, beat: { count: 8 } })
    expect(leadStateAt(ridge, logOf(), second.to).eights).toEqual({ left: 16, of: 16 })
  })

  it('names the block after, also across a song, and the time until the posture changes', () => {
    const led = ledClass(ridge, logOf())
    const [last, first] = [ridge.report.blocks[3]!, ridge.report.blocks[4]!]
    expect(stateOf(led, last.from).next).toEqual({ block: 4, in: first.from - last.from })
    expect(stateOf(led, last.to + 0.5)).toMatchObject({ phase: 'leadIn', section: 1, next: { block: 4 } })
    // Seated through the first song; standing for one block of the second.
    expect(stateOf(led, 0).postureLeft).toBeCloseTo(last.to, 9)
    const standing = ridge.report.blocks[5]!
    expect(stateOf(led, standing.from).postureLeft).toBe(standing.to - standing.from)
  })

  it('knows a slot that began before the first one', () => {
    const state = leadStateAt(ridge, lateLog(240), 600)
    expect(state.behind).toBeCloseTo(240, 9)
    expect(state.spare).toBeCloseTo(2700 - 240 - ridge.report.overall.total, 9)
  })
})

describe('whatever is pressed', () => {
  const plan = planOf(leadRide())

  it('decides from what had happened by then, and nothing later', () => {
    fc.assert(
      fc.property(arbitraryEvents(400), fc.double({ min: 0, max: 400, noNaN: true }), (events, at) => {
        const before = events.filter((event) => event.at <= at)
        expect(leadStateAt(plan, logOf(...events), at)).toEqual(leadStateAt(plan, logOf(...before), at))
      }),
    )
  })

  it('leaves a class whose moments are all some part of it', () => {
    fc.assert(
      fc.property(arbitraryEvents(400), fc.double({ min: 0, max: 60, noNaN: true }), (events, later) => {
        const led = ledClass(plan, logOf(...events))
        const at = (events.at(-1)?.at ?? 0) + later
        const state = stateOf(led, at)
        expect(Number.isFinite(state.spare + state.behind + state.songLeft + state.total)).toBe(true)
        if (state.phase === 'finished') {
          expect(at).toBeGreaterThanOrEqual(led.report.overall.total - 1e-9)
          return
        }
        expect(state.secondsLeft).toBeGreaterThan(0)
        if (state.eights) expect(state.eights.left).toBeLessThanOrEqual(Math.max(1, state.eights.of))
        if (state.beat) expect(state.beat.passed).toBeLessThan(1)
        const end = led.report.spans.reduce((clock, span) => {
          expect(span.from).toBeCloseTo(clock, 9)
          return span.to
        }, 0)
        expect(end).toBeCloseTo(led.report.overall.total, 9)
      }),
    )
  })

  it('has a state for every ride and every press', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryEvents(1500), fc.double({ min: 0, max: 600, noNaN: true }), (ride, events, later) => {
        const state = stateOf(ledClass(planOf(ride), logOf(...events)), (events.at(-1)?.at ?? 0) + later)
        expect(Number.isFinite(state.spare + state.behind + state.songLeft + state.secondsLeft)).toBe(true)
      }),
      { numRuns: 300 },
    )
  })

  it('never moves what is over', () => {
    fc.assert(
      fc.property(arbitraryEvents(300), arbitraryEvents(300), (first, second) => {
        const now = first.at(-1)?.at ?? 0
        const before = ledClass(plan, logOf(...first))
        // A hold that goes on has not yet said what comes after it.
        fc.pre(before.led.hold === undefined)
        const after = ledClass(plan, logOf(...first, ...second.map((event) => ({ ...event, at: now + event.at }))))
        for (const [i, section] of before.report.sections.entries()) {
          if (section.to >= now) break
          expect(after.report.sections[i]!.sectionId).toBe(section.sectionId)
          expect(after.report.sections[i]!.one).toBeCloseTo(section.one, 9)
        }
      }),
    )
  })
})
