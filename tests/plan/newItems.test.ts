import { describe, expect, it } from 'vitest'
import type { Command } from '#plan/commands/command.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import { newItems } from '#plan/newItems.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'

describe('newItems', () => {
  const ride = smallRide()
  const made = (command: Command) => command.apply(ride)

  it('are none where nothing was made', () => {
    expect(newItems(ride, ride)).toEqual([])
  })

  it('are the copies and not what they were made of', () => {
    const next = made(duplicateItems(ride, { ids: ['a', 'push'], newId: countedIds('copy') }))
    expect(newItems(ride, next)).toEqual(['copy1', 'copy2'])
    expect(next.sections[0]!.blocks.map(({ id }) => id)).toEqual(['a', 'copy1', 'b', 'c'])
  })

  it('are a set as a whole, made of what was there or copied', () => {
    const grouped = made(groupIntoSet(ride, { ids: ['a', 'b'], rounds: 2, newId: countedIds('set') }))
    expect(newItems(ride, grouped)).toEqual(['set1'])
    const copied = made(duplicateItems(ride, { ids: ['set'], newId: countedIds('copy') }))
    expect(newItems(ride, copied)).toEqual(['copy1'])
  })

  it('are the blocks a set was written out as', () => {
    const next = made(ungroupSet(ride, { setId: 'set', newId: countedIds('out') }))
    const fresh = newItems(ride, next)
    expect(fresh.length).toBeGreaterThan(1)
    expect(fresh.every((id) => id.startsWith('out'))).toBe(true)
  })
})
