import { describe, expect, it } from 'vitest'
import { derivedChanges } from '#engine/changes/derivedChanges.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { Command } from '#plan/commands/command.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import type { Block, Ride } from '#plan/model.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const patched = (ride: Ride, blockId: string, patch: Partial<Block>): Ride => patchBlock(ride, { blockId, patch }).apply(ride)

/** Blocks a and b by totals, c by a change: what is said at b depends on a, what c is ridden at on b. */
const base = (['a', 'b', 'c'] as const).reduce<Ride>(
  (ride, id, index) =>
    patched(ride, id, {
      resistance: index === 2 ? { kind: 'change', mode: 'exact', steps: 2 } : { kind: 'total', from: 4 * (index + 1), to: 4 * (index + 1) },
    }),
  smallRide(),
)

const changes = (command: Command) => derivedChanges(computeRide(base), computeRide(command.apply(base)))

describe('what follows from a change', () => {
  it('is nothing between a ride and itself', () => {
    expect(derivedChanges(computeRide(base), computeRide(base))).toEqual([])
  })

  it('of a total is the call of the next block, but not the call that was changed itself', () => {
    const found = changes(patchBlock(base, { blockId: 'a', patch: { resistance: { kind: 'total', from: 6, to: 6 } } }))
    expect(found.filter(({ kind }) => kind === 'call')).toEqual([
      { kind: 'call', blockId: 'b', at: 32, before: 'one turn on', after: 'half a turn on' },
    ])
    expect(found.some((change) => 'blockId' in change && change.blockId === 'a')).toBe(false)
  })

  it('of a total is the resistance of changes counted on it', () => {
    const found = changes(patchBlock(base, { blockId: 'b', patch: { resistance: { kind: 'total', from: 10, to: 10 } } }))
    expect(found).toContainEqual({ kind: 'total', blockId: 'c', at: 64, before: '2½', after: '3' })
  })

  it('of a length on the clock is when the sections after it start, and the figures of the ride', () => {
    const found = changes(resizeBlock(base, { blockId: 'x', length: { seconds: 90 } }))
    const start = found.find(({ kind }) => kind === 'start')
    expect(start).toMatchObject({ sectionId: 'waves' })
    expect(start?.kind === 'start' && start.after - start.before).toBe(30)
    const total = found.find((change) => change.kind === 'figure' && change.figure === 'total')
    expect(total?.kind === 'figure' && total.after - total.before).toBe(30)
  })

  it('of a swap is the foot of the blocks after it, and not of the block that swaps', () => {
    const led = patchSection(base, { sectionId: 'song', patch: { lead: 'left' } }).apply(base)
    const swapped = patched(led, 'b', { lead: 'swap' })
    const feet = derivedChanges(computeRide(led), computeRide(swapped)).filter(({ kind }) => kind === 'foot')
    expect(feet).toEqual([{ kind: 'foot', blockId: 'c', at: 64, before: 'left', after: 'right' }])
  })

  it('of another bike is told in one unit, and between units not at all', () => {
    const highest = (before: Ride, after: Ride) =>
      derivedChanges(computeRide(before), computeRide(after)).filter(
        (change) => change.kind === 'figure' && change.figure === 'highestTotal',
      )
    const quarters = patched(base, 'c', { resistance: { kind: 'change', mode: 'exact', steps: 1 } })
    const onSteps = (steps: number, change = {}) => setBike(quarters, { ...quarters.bike, ...change, stepsPerUnit: steps }).apply(quarters)
    expect(highest(quarters, onSteps(2))).toEqual([{ kind: 'figure', figure: 'highestTotal', before: 18, after: 20, perUnit: 8 }])
    expect(highest(onSteps(2), quarters)).toEqual([{ kind: 'figure', figure: 'highestTotal', before: 20, after: 18, perUnit: 8 }])
    expect(highest(quarters, onSteps(8))).toEqual([])
    expect(highest(quarters, onSteps(1, { unit: 'level' }))).toEqual([])
    expect(highest(quarters, setDatum('loose').apply(quarters))).toEqual([])
    const stays = patched(quarters, 'c', { resistance: { kind: 'keep' } })
    const told = (after: Ride) =>
      derivedChanges(computeRide(stays), computeRide(after)).filter(({ kind }) => kind === 'total' || kind === 'call')
    expect(told(setBike(stays, { ...stays.bike, unit: 'level', stepsPerUnit: 1 }).apply(stays))).toEqual([])
    expect(told(setDatum('loose').apply(stays))).toEqual([])
  })

  it('is the findings that are new and those that are gone', () => {
    const command = patchBlock(base, {
      blockId: 'a',
      patch: { posture: 'standing', hands: 'centre', resistance: { kind: 'total', from: 60, to: 60 } },
    })
    const [before, after] = [computeRide(base), computeRide(command.apply(base))]
    const changed = derivedChanges(before, after)
    const told = (kind: 'foundNow' | 'foundNoMore') => changed.flatMap((change) => (change.kind === kind ? [change.findingId] : []))
    const ids = ({ findings }: typeof before) => findings.map(({ id }) => id)
    expect(told('foundNow').length).toBeGreaterThan(0)
    expect(told('foundNow')).toEqual(ids(after).filter((id) => !ids(before).includes(id)))
    expect(told('foundNoMore')).toEqual(ids(before).filter((id) => !ids(after).includes(id)))
  })
})
