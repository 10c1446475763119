import { describe, expect, it } from 'vitest'
import { namingOf } from '#features/drafting/renaming/naming.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { findBlock, findSection, findSet } from '#plan/places.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const spark = demoRide('spark')
const named = (ride: Ride, id: string, name: string) => namingOf(ride, id)!.command(ride, name).apply(ride)

describe('a name on the stage', () => {
  it('is a block’s label; the name it has anyway, and none, are no label', () => {
    const once = named(spark, 's1b2', 'rolling start')
    expect(findBlock(once, 's1b2')!.block.label).toBe('rolling start')
    const { placeholder } = namingOf(once, 's1b2')!
    for (const name of ['', placeholder]) expect(findBlock(named(once, 's1b2', name), 's1b2')!.block).not.toHaveProperty('label')
  })

  it('is a song’s title, which it has to have, or that of a section without one', () => {
    expect(namingOf(spark, 's1')!.required).toBeTruthy()
    const once = named(spark, 's1', 'Paper Comets')
    expect(findSection(once, 's1')!.song).toEqual({ ...findSection(spark, 's1')!.song, title: 'Paper Comets' })
    const bare = setSong(spark, { sectionId: 's1', song: null }).apply(spark)
    expect(namingOf(bare, 's1')!.required).toBeUndefined()
    expect(findSection(named(bare, 's1', 'talk'), 's1')!.title).toBe('talk')
  })

  it('is a set’s label; of anything else there is none', () => {
    const grouped = groupIntoSet(spark, { ids: ['s1b2', 's1b3'], rounds: 2, newId: () => 'loop' }).apply(spark)
    const set = grouped.sections[0]!.blocks.find(isSet)!
    expect(findSet(named(grouped, set.id, 'loop'), set.id)!.set.label).toBe('loop')
    expect(namingOf(spark, 'nobody')).toBeNull()
  })
})
