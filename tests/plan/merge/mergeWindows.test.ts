import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRecipes, commandOf, type Recipe } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'

const ride = frozen(smallRide())

function worked(from: Ride, recipes: readonly Recipe[], who: string): Ride {
  const newId = countedIds(who)
  return recipes.reduce((now, recipe) => commandOf(recipe, now, newId).apply(now), from)
}

describe('one ride in two windows', () => {
  it('is the same in both once each has read the other', () => {
    const three = fc.record({ base: arbitraryRide(), mine: arbitraryRecipes(), theirs: arbitraryRecipes() })
    fc.assert(
      fc.property(three, ({ base, mine, theirs }) => {
        const [ours, others] = [worked(base, mine, 'm'), worked(base, theirs, 't')]
        // Theirs is saved; this window saves over it; theirs follows, having changed nothing since.
        const here = mergeWindows(base, ours, others).merged
        expect(parseRide(here).ok).toBe(true)
        expect(mergeWindows(others, others, here).merged).toEqual(here)
        // A third reading changes nothing any more.
        expect(mergeWindows(here, here, here).merged).toBe(here)
      }),
    )
  })

  it('brings private notes, riders and marks together, which stay with one side between two people', () => {
    const [a, b] = DEFAULT_RIDERS
    const base: Ride = { ...ride, riders: [a!, b!], shaky: ['a'], setAside: ['old'] }
    const mine: Ride = { ...base, privateNotes: 'bring water', riders: [{ ...a!, name: 'Ann' }, b!], shaky: ['a', 'b'], setAside: [] }
    const theirs: Ride = { ...base, title: 'theirs', riders: [a!, { ...b!, name: 'Bo' }], shaky: ['c'], setAside: ['old', 'new'] }
    const { merged, conflicts } = mergeWindows(base, mine, theirs)
    expect(conflicts).toEqual([])
    expect(merged).toMatchObject({ title: 'theirs', privateNotes: 'bring water', setAside: ['new'] })
    expect(merged.riders!.map(({ name }) => name)).toEqual(['Ann', 'Bo'])
    expect(merged.shaky).toEqual(['b', 'c'])
  })

  it('takes out what one side took out of its own, and keeps what only the other has', () => {
    const [a, b] = DEFAULT_RIDERS
    const base: Ride = { ...ride, riders: [a!, b!], privateNotes: 'old' }
    const { privateNotes: _notes, ...rest } = base
    const { merged } = mergeWindows(base, { ...rest, riders: [b!] }, { ...base, title: 'theirs' })
    expect(merged.riders).toEqual([b])
    expect(merged.privateNotes).toBeUndefined()
    expect(merged.title).toBe('theirs')
  })

  it('tells notes that both changed as a conflict, with mine standing', () => {
    const base: Ride = { ...ride, privateNotes: 'old' }
    const { merged, conflicts } = mergeWindows(base, { ...base, privateNotes: 'mine' }, { ...base, privateNotes: 'theirs' })
    expect(merged.privateNotes).toBe('mine')
    expect(conflicts).toMatchObject([{ kind: 'field', field: 'privateNotes', mine: 'mine', theirs: 'theirs' }])
    const choices = { [conflicts[0]!.id]: 'theirs' as const }
    const chosen = mergeWindows(base, { ...base, privateNotes: 'mine' }, { ...base, privateNotes: 'theirs' }, choices)
    expect(chosen.merged.privateNotes).toBe('theirs')
  })
})
