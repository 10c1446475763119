import { describe, expect, it } from 'vitest'
import { take, takeCue } from '#features/drafting/actions/clipboard/copyAndPaste.ts'
import { type DraftGround, selectedGround } from '#features/drafting/actions/draftGround.ts'
import { type How, paste } from '#features/drafting/clipboard/pasting.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { NO_DRAFT_TOOLS } from '#tests/support/noDraftTools.ts'
import { aBlock, aSection, countedIds, layout, smallRide } from '#tests/support/smallRide.ts'

function opened(ride: Ride) {
  const store = createAppStore({ newId: countedIds('new'), shelf: null })
  const notes: (string | null)[] = []
  const tools = { ...NO_DRAFT_TOOLS, note: (note: string | null) => void notes.push(note) }
  store.getState().openRide(ride)
  const ground = (): DraftGround => selectedGround(store, tools)
  const select = (...ids: string[]) => store.getState().selectItems(ids)
  const put = (carried: ReturnType<typeof take>, how: How = 'all') => paste(ground(), carried!, how)
  return { store, state: store.getState, ground, select, put, notes }
}

const blockOf = (ride: Ride, id: string): Block =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))).find((block) => block.id === id)!

describe('pasting', () => {
  it('goes among the parts of a set after one of them, and after the set where a set comes', () => {
    const page = opened(smallRide())
    page.select('a')
    const block = take(page.ground(), 'copy')
    page.select('push')
    page.put(block)
    expect(layout(page.state().ride!, 'waves')).toMatch(/^set\(push new\d+ ease\) z$/)
    page.state().undo()
    page.select('set')
    const set = take(page.ground(), 'copy')
    page.select('push')
    page.put(set)
    expect(page.state().ride!.sections[2]!.blocks).toHaveLength(3)
    expect(page.state().past).toHaveLength(1)
  })

  it('takes lines of text as blocks, names the ones that are none, and leaves all else alone', () => {
    const page = opened(smallRide())
    page.select('a')
    page.put({ html: '', text: 'My Thursday song\nclimb 8 effort 7 “Up we go.”\n2 rounds: push 4 / rest 4' })
    const { blocks } = page.state().ride!.sections[0]!
    const at = blocks.findIndex(({ id }) => id === 'a')
    expect(blocks.slice(at + 1, at + 3)).toMatchObject([
      { terrain: 'hill', effort: { from: 7, to: 7 }, cues: [{ text: 'Up we go.' }] },
      { rounds: 2, parts: [{ terrain: 'push' }, { terrain: 'recover' }] },
    ])
    expect(page.notes.at(-1)).toBe('“My Thursday song” names no block.')
    expect(page.state().past).toHaveLength(1)
    page.state().undo()
    page.put({ html: '<p>Shopping</p>', text: 'eggs\nmilk' })
    expect(page.state().ride).toEqual(smallRide())
    page.put({ html: '', text: 'climb 8' }, 'cues')
    expect(page.state().ride).toEqual(smallRide())
  })

  it('takes its own lines, as another program holds them, for the same blocks', () => {
    const page = opened(smallRide())
    page.select('a', 'b')
    const { text } = take(page.ground(), 'copy')!
    page.put({ html: '', text })
    const { blocks } = page.state().ride!.sections[0]!
    const at = blocks.findIndex(({ id }) => id === 'b')
    const plain = (item: (typeof blocks)[number]) => {
      const { terrain, posture, length, effort, resistance } = item as Block
      return { terrain, posture, length, effort, resistance }
    }
    expect(blocks.slice(at + 1, at + 3).map(plain)).toEqual(blocks.slice(at - 1, at + 1).map(plain))
  })

  it('makes a song of an empty ride', () => {
    const from = opened(smallRide())
    from.select('a', 'b')
    const carried = take(from.ground(), 'copy')
    const page = opened({ ...smallRide(), sections: [] })
    page.put(carried)
    expect(page.state().ride!.sections.map(({ blocks }) => blocks.length)).toEqual([2])
    expect(page.notes.at(-1)).toBe('Lengths are now in seconds: this song has no tempo.')
  })

  it('says that it runs past the end of the song, in the step’s own label', () => {
    const page = opened({
      ...smallRide(),
      sections: [{ ...smallRide().sections[0]!, blocks: [aBlock('long', { length: { counts: 480 } })] }],
    })
    page.select('long')
    page.put(take(page.ground(), 'copy'))
    expect(page.state().announcement).toContain('past the end of its song')
  })

  it('gives resistance one to one from the chosen block on, and says where blocks ran out', () => {
    const ride = smallRide()
    const call = (steps: number) => ({ resistance: { kind: 'change' as const, mode: 'exact' as const, steps } })
    const from = opened({
      ...ride,
      sections: [aSection('s', { song: ride.sections[0]!.song!, blocks: [1, 2, 3].map((n) => aBlock(`n${n}`, call(n))) })],
    })
    from.select('n1', 'n2', 'n3')
    const carried = take(from.ground(), 'copy')
    const page = opened(ride)
    page.select('b')
    page.put(carried, 'resistance')
    const after = page.state().ride!
    expect([blockOf(after, 'b'), blockOf(after, 'c'), blockOf(after, 'x')].map(({ resistance }) => resistance)).toEqual(
      [1, 2, 3].map((steps) => call(steps).resistance),
    )
    expect(page.state().past).toHaveLength(1)
    page.state().undo()
    page.select('z')
    page.put(carried, 'resistance')
    expect(page.notes.at(-1)).toBe('Pasted 1 of 3 copied blocks; there were no more blocks to paste onto.')
  })

  it('gives one block’s cues to all that are chosen', () => {
    const ride = smallRide()
    const cue = { id: 'cue', moment: 'action' as const, lead: { counts: 0 }, text: 'Push.' }
    const page = opened({
      ...ride,
      sections: ride.sections.with(0, { ...ride.sections[0]!, blocks: [aBlock('a', { cues: [cue] }), aBlock('b'), aBlock('c')] }),
    })
    const carried = takeCue(page.ground(), 'cue', 'copy')
    page.select('b', 'c')
    page.put(carried)
    expect(['b', 'c'].map((id) => blockOf(page.state().ride!, id).cues.map(({ text }) => text))).toEqual([['Push.'], ['Push.']])
    page.put(carried, 'resistance')
    expect(page.state().notice?.sentence).toBe('Only cues were copied. Select a block and paste them.')
    page.state().clearSelection()
    page.put(carried)
    expect(page.state().notice?.sentence).toBe('Select the block these cues belong to, then paste.')
  })

  it('refuses what a ride cannot hold, and leaves it as it is', () => {
    const blocks = Array.from({ length: 380 }, (_, i) => aBlock(`b${i}`, { length: { seconds: 1 } }))
    const page = opened({ ...smallRide(), sections: [aSection('full', { blocks })] })
    page.select(...blocks.slice(0, 40).map(({ id }) => id))
    const before = page.state().ride
    page.put(take(page.ground(), 'copy'))
    expect(page.state().ride).toBe(before)
    expect(page.state().notice?.sentence).toMatch(/^That doesn’t fit/)
  })
})
