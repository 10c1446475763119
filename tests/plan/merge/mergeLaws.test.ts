import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { UNSHARED } from '#plan/link/shareable.ts'
import type { Choices, Difference, Side } from '#plan/merge/difference.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import { type Key, treeOf } from '#plan/merge/tree.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { arbitraryRecipes, commandOf, type Recipe } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds } from '#tests/support/smallRide.ts'

/** A ride worked on by somebody whose new things have ids of their own. */
function worked(ride: Ride, recipes: readonly Recipe[], who: string): Ride {
  const newId = countedIds(who)
  return recipes.reduce((now, recipe) => commandOf(recipe, now, newId).apply(now), ride)
}

const arbitraryThree = fc
  .record({ base: arbitraryRide(), mine: arbitraryRecipes(), theirs: arbitraryRecipes() })
  .map(({ base, mine, theirs }) => frozen({ base, mine: worked(base, mine, 'm'), theirs: worked(base, theirs, 't') }))

/** What is shared of a ride: the rest stays with whoever keeps it. */
function shared(ride: Ride) {
  const { id: _id, parent: _parent, ancestors: _ancestors, ...rest } = ride
  for (const key of UNSHARED) delete rest[key]
  return rest
}

const differencesOf = ({ taken, own, alike, conflicts }: ReturnType<typeof mergeRides>): Difference[] => [
  ...taken,
  ...own,
  ...alike,
  ...conflicts,
]

const swapped = (side: Side): Side => (side === 'mine' ? 'theirs' : 'mine')

/** Choices drawn for whatever there is to choose. */
const chosenBy = (differences: readonly Difference[], coins: readonly boolean[]): Choices =>
  Object.fromEntries(differences.map(({ id }, index) => [id, coins[index % coins.length] ? 'mine' : 'theirs']))

const coins = fc.array(fc.boolean(), { minLength: 1, maxLength: 40 })

describe('merging', () => {
  it('with oneself changes nothing, whatever the base', () => {
    fc.assert(
      fc.property(arbitraryThree, ({ base, mine }) => {
        const merge = mergeRides(base, mine, mine)
        expect(merge.merged).toBe(mine)
        expect([...merge.taken, ...merge.own, ...merge.conflicts]).toEqual([])
      }),
    )
  })

  it('takes all of one side where the other did nothing', () => {
    fc.assert(
      fc.property(arbitraryThree, ({ base, mine, theirs }) => {
        const kept = mergeRides(base, mine, base)
        expect(kept.merged).toBe(mine)
        expect([...kept.taken, ...kept.conflicts]).toEqual([])
        const taken = mergeRides(base, base, theirs)
        expect(shared(taken.merged)).toEqual(shared(theirs))
        expect([...taken.own, ...taken.conflicts]).toEqual([])
      }),
    )
  })

  it('gives the same ride and the same conflicts when the sides are swapped', () => {
    fc.assert(
      fc.property(arbitraryThree, coins, ({ base, mine, theirs }, thrown) => {
        const found = mergeRides(base, mine, theirs)
        const choices = chosenBy(found.conflicts, thrown)
        const opposite = Object.fromEntries(Object.entries(choices).map(([id, side]) => [id, swapped(side)]))
        const here = mergeRides(base, mine, theirs, choices)
        const there = mergeRides(base, theirs, mine, opposite)
        expect(here.conflicts.map(({ id }) => id).toSorted()).toEqual(there.conflicts.map(({ id }) => id).toSorted())
        // A choice can bring up another conflict, which is decided for mine, so the rides are compared where all are chosen.
        if (here.conflicts.every(({ id }) => id in choices)) expect(shared(here.merged)).toEqual(shared(there.merged))
      }),
    )
  })

  it('always gives a ride that opens, with whatever choices, with or without a base', () => {
    fc.assert(
      fc.property(arbitraryThree, coins, fc.boolean(), ({ base, mine, theirs }, thrown, based) => {
        const known = based ? base : null
        const choices = chosenBy(differencesOf(mergeRides(known, mine, theirs)), thrown)
        const { merged } = mergeRides(known, mine, theirs, choices)
        const parsed = parseRide(merged)
        expect(parsed.ok ? [] : parsed.problems).toEqual([])
        expect(parsed.ok && parsed.ride).toEqual(merged)
      }),
    )
  })

  it('loses nothing that neither side deleted', () => {
    fc.assert(
      fc.property(arbitraryThree, ({ base, mine, theirs }) => {
        const [before, ours, others, merged] = [base, mine, theirs, mergeRides(base, mine, theirs).merged].map(treeOf) as [
          Tree,
          Tree,
          Tree,
          Tree,
        ]
        // A set whose parts went one by one, by either side, has nothing left to be.
        const emptied = (key: Key) => (ours.nodes.get(key) ?? others.nodes.get(key))!.of === 'set'
        for (const key of new Set([...ours.nodes.keys(), ...others.nodes.keys()])) {
          const deleted = before.nodes.has(key) && !(ours.nodes.has(key) && others.nodes.has(key))
          if (!deleted && !emptied(key)) expect(merged.nodes.has(key), key).toBe(true)
        }
      }),
    )
  })

  it('keeps in every block and cue what one side alone changed, and mine where both did', () => {
    fc.assert(
      fc.property(arbitraryThree, ({ base, mine, theirs }) => {
        const merged = mergeRides(base, mine, theirs).merged
        const [before, ours, others] = [base, mine, theirs].map(wordsByPlace) as [Words, Words, Words]
        for (const [place, said] of wordsByPlace(merged)) {
          const [was, mineSays, theirsSays] = [before.get(place), ours.get(place), others.get(place)]
          const inBoth = blockOrCueIn(ours, place) && blockOrCueIn(others, place)
          if (inBoth) expect(said, place).toBe(mineSays === was ? theirsSays : mineSays)
          else expect([mineSays, theirsSays], place).toContain(said)
        }
      }),
    )
  })

  it('takes no difference twice: every id is given once', () => {
    fc.assert(
      fc.property(arbitraryThree, fc.boolean(), ({ base, mine, theirs }, based) => {
        const ids = differencesOf(mergeRides(based ? base : null, mine, theirs)).map(({ id }) => id)
        expect(ids).toEqual([...new Set(ids)])
      }),
    )
  })

  it('without a base takes nothing unless it is chosen', () => {
    fc.assert(
      fc.property(arbitraryThree, ({ mine, theirs }) => {
        const merge = mergeRides(null, mine, theirs)
        expect(merge.based).toBe(false)
        expect(merge.merged).toBe(mine)
      }),
    )
  })

  it('brings over everything when all of theirs is chosen, with or without a base', () => {
    fc.assert(
      fc.property(arbitraryThree, fc.boolean(), ({ base, mine, theirs }, based) => {
        const known = based ? base : null
        let choices: Choices = {}
        let merge = mergeRides(known, mine, theirs)
        // What is chosen can bring up more to choose.
        for (let round = 0; round < 8; round++) {
          choices = Object.fromEntries(differencesOf(merge).map(({ id }) => [id, 'theirs']))
          merge = mergeRides(known, mine, theirs, choices)
        }
        const [blocks, all] = [blockIds(merge.merged), blockIds(theirs)]
        for (const id of all) expect(blocks).toContain(id)
      }),
      { numRuns: 30 },
    )
  })
})

type Words = Map<string, string>

/** What no conversion touches, as text by block or cue and field. */
const PLAIN = [
  'label',
  'terrain',
  'posture',
  'hands',
  'effort',
  'move',
  'notes',
  'allOut',
  'water',
  'walk',
  'feel',
  'easier',
  'harder',
] as const

function wordsByPlace(ride: Ride): Words {
  const words: Words = new Map()
  for (const block of blocksOf(ride)) {
    words.set(`${block.id}`, '')
    for (const field of PLAIN) words.set(`${block.id} ${field}`, JSON.stringify(block[field]) ?? '')
    for (const cue of block.cues) {
      words.set(`cue ${cue.id}`, '')
      words.set(`cue ${cue.id} text`, cue.text)
    }
  }
  return words
}

const blockOrCueIn = (words: Words, place: string): boolean =>
  words.has(place.startsWith('cue ') ? place.replace(/ text$/, '') : place.split(' ')[0]!)

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))

const blockIds = (ride: Ride): string[] => blocksOf(ride).map(({ id }) => id)

type Tree = ReturnType<typeof treeOf>
