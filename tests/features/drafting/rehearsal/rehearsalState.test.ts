import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { type RehearsalEvent, rehearsedAfter, unopened } from '#features/drafting/rehearsal/rehearsalState.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const planOf = (ride: Ride) => ({ ride, report: computeRide(ride) })
const spark = planOf(demoRide('spark'))
const through = (...events: readonly RehearsalEvent[]) => events.reduce(rehearsedAfter, unopened(spark))
const started = (at: number, waits = false): RehearsalEvent => ({ kind: 'started', plan: spark, at, waits })

describe('a rehearsal, after what happens to it', () => {
  it('opens before it plays, and plays once the player does', () => {
    const opening = through(started(30))
    expect(opening).toMatchObject({ standing: 30, from: 30, spokenTo: 30, shown: { open: true, phase: 'opening' } })
    expect(rehearsedAfter(opening, { kind: 'begun', turn: opening.turn, plays: true }).shown.phase).toBe('playing')
    expect(rehearsedAfter(opening, { kind: 'begun', turn: opening.turn, plays: false }).shown.phase).toBe('still')
  })

  it('pays no heed to a player that begins after it was stopped or closed', () => {
    const opening = through(started(30))
    for (const kind of ['stopped', 'closed'] as const) {
      const left = rehearsedAfter(opening, kind === 'stopped' ? { kind, at: null } : { kind })
      expect(rehearsedAfter(left, { kind: 'begun', turn: opening.turn, plays: true })).toBe(left)
    }
  })

  it('never says a cue twice: what is heard again from before leaves it where it was', () => {
    const heard = through(started(0), { kind: 'heard', at: 12 })
    expect(heard.spokenTo).toBe(12)
    expect(rehearsedAfter(heard, { kind: 'heard', at: 4 })).toBe(heard)
  })

  it('waits at the end of a section where it is to, and has ended at the end of the ride', () => {
    const { total } = spark.report.overall
    const waiting = rehearsedAfter(through(started(30, true)), { kind: 'ended' })
    expect(waiting.shown.phase).toBe('waiting')
    expect(waiting.standing).toBeLessThan(total)
    expect(rehearsedAfter(through(started(30)), { kind: 'ended' })).toMatchObject({ standing: total, shown: { phase: 'ended' } })
    expect(through(started(total)).standing).toBe(0)
  })

  it('keeps the place in the music when the ride changes, and ends with another ride', () => {
    const playing = rehearsedAfter(through(started(100)), { kind: 'begun', turn: 1, plays: true })
    const longer = planOf(patchRide({ briefingSeconds: (spark.ride.briefingSeconds ?? 0) + 30 }).apply(spark.ride))
    const moved = rehearsedAfter(playing, { kind: 'changed', plan: longer, at: 110, waits: false })
    expect(moved).toMatchObject({ from: 140, spokenTo: 130, shown: { phase: 'playing' } })
    const other = planOf({ ...spark.ride, id: 'another' })
    expect(rehearsedAfter(playing, { kind: 'changed', plan: other, at: 110, waits: false })).toMatchObject({
      plan: other,
      standing: 0,
      shown: { open: false, phase: 'still' },
    })
  })

  it('goes on through the ride where the block it repeats is gone', () => {
    const block = spark.report.blocks[3]!
    const way = { kind: 'block' as const, blockId: block.block.id, round: 1 }
    const repeating = through({ kind: 'wayChosen', way }, started(block.from))
    expect(repeating.course).toEqual({ legs: [{ from: block.from, to: block.to }], repeats: true })
    const sections = spark.ride.sections.map((section) => ({
      ...section,
      blocks: section.blocks.filter(({ id }) => id !== block.block.id),
    }))
    const without = planOf({ ...spark.ride, sections })
    expect(rehearsedAfter(repeating, { kind: 'changed', plan: without, at: null, waits: false }).shown.way).toEqual({ kind: 'ride' })
  })
})
