import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { mergeWindows } from '#plan/merge/mergeWindows.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRecipes, commandOf } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aStore } from '#tests/support/aStore.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds, layout, smallRide } from '#tests/support/smallRide.ts'

const ride = frozen(smallRide())

function open(from: Ride = ride) {
  const made = aStore()
  made.state().openRide(from)
  /** Another window saves a change, and this one takes it in as it saves its own. */
  const follow = (change: (now: Ride) => Ride) => {
    const { ride: saved, base, follow: take } = made.state()
    take(saved!, mergeWindows(base!, saved!, change(base!)).merged)
  }
  return { ...made, follow }
}

describe('following another window', () => {
  it('takes in its changes as no step of one’s own', () => {
    const { state, follow } = open()
    follow((now) => ({ ...now, aim: 'theirs' }))
    expect(state()).toMatchObject({ ride: { aim: 'theirs' }, shown: { aim: 'theirs' }, past: [] })
    expect(state().base).toBe(state().ride)
  })

  it('leaves them where they are when one’s own steps are undone and done again', () => {
    const { state, follow } = open()
    state().run(patchRide({ title: 'one' }))
    state().run(moveItem(ride, { itemId: 'c', sectionId: 'song', index: 0 }))
    follow((now) => ({ ...now, aim: 'theirs' }))
    state().run(patchRide({ title: 'two' }))
    const end = state().ride
    for (const title of ['one', 'one', ride.title]) {
      expect(state().undo()).toBe(true)
      expect(state().ride).toMatchObject({ title, aim: 'theirs' })
    }
    expect(state().undo()).toBe(false)
    expect(layout(state().ride!, 'song')).toBe('a b c')
    for (const title of ['one', 'one', 'two']) {
      expect(state().redo()).toBe(true)
      expect(state().ride).toMatchObject({ title, aim: 'theirs' })
    }
    expect(state().ride).toEqual(end)
  })

  it('never undoes what it changed on the same thing since, and says so', () => {
    const { state, follow } = open()
    state().run(patchRide({ title: 'mine' }))
    state().follow(state().ride!, state().ride!)
    follow((now) => ({ ...now, title: 'theirs' }))
    state().undo()
    expect(state().ride!.title).toBe('theirs')
    expect(state().announcement).toContain('Changed in another window since')
    state().redo()
    expect(state().ride!.title).toBe('theirs')
  })

  it('brings back what one deleted oneself', () => {
    const { state, follow } = open()
    state().run(deleteItems(ride, ['b']))
    follow((now) => ({ ...now, aim: 'theirs' }))
    state().undo()
    expect(layout(state().ride!, 'song')).toBe('a b c')
    expect(state().ride!.aim).toBe('theirs')
  })

  it('keeps a drag that is under way, on the ride as it is now', () => {
    const { state, follow } = open()
    state().preview(moveItem(ride, { itemId: 'c', sectionId: 'song', index: 0 }))
    follow((now) => ({ ...now, aim: 'theirs' }))
    expect(layout(state().shown!, 'song')).toBe('c a b')
    expect(state().commitPreview()).toBe(true)
    expect(state().ride!.aim).toBe('theirs')
    expect(layout(state().ride!, 'song')).toBe('c a b')
  })

  it('leaves a shared ride that is looked at on the screen', () => {
    const { state, follow } = open()
    state().receiveRide({ ...ride, id: 'shared', title: 'shared' })
    follow((now) => ({ ...now, aim: 'theirs' }))
    expect(state()).toMatchObject({ shown: { title: 'shared' }, ride: { aim: 'theirs' } })
  })

  it('gives both windows the same ride in the end, and loses no edit of either that the other did not make too', () => {
    const turns = fc.array(fc.record({ mine: arbitraryRecipes(), theirs: arbitraryRecipes() }), { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(arbitraryRide(), turns, (from, each) => {
        const [one, two] = [aStore(), aStore()]
        let stored = from
        const save = ({ state }: typeof one) => {
          const { ride: mine, base } = state()
          const merged = base === stored ? mine! : mergeWindows(base!, mine!, stored).merged
          stored = merged
          state().follow(mine!, merged)
        }
        for (const window of [one, two]) window.state().openRide(from)
        const ids = [countedIds('m'), countedIds('t')] as const
        for (const { mine, theirs } of each) {
          for (const recipe of mine) one.state().run(commandOf(recipe, one.state().ride!, ids[0]))
          for (const recipe of theirs) two.state().run(commandOf(recipe, two.state().ride!, ids[1]))
          save(one)
          save(two)
        }
        save(one)
        expect(one.state().ride).toEqual(stored)
        expect(two.state().ride).toEqual(stored)
        // Undoing everything here takes back nothing the other window did alone.
        while (one.state().undo());
        save(one)
        save(two)
        expect(two.state().ride).toEqual(one.state().ride)
      }),
      { numRuns: 60 },
    )
  }, 60_000)
})
