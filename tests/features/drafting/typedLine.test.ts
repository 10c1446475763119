import { describe, expect, it } from 'vitest'
import { finished, finishing } from '#features/drafting/typedLine/finishing.ts'
import { patternsFound } from '#features/drafting/typedLine/patternsFound.ts'
import { addedPattern, typedBlocks, typedEdit } from '#features/drafting/typedLine/typedCommand.ts'
import { itemsOfLines } from '#plan/line/readLine.ts'
import { writeLine } from '#plan/line/writeLine.ts'
import { isSet } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'

function open() {
  const store = createAppStore({ newId: countedIds('new'), shelf: null })
  store.getState().openRide(demoRide('spark'))
  return store
}

describe('typed lines', () => {
  it('become blocks after the selection, as one step, and those that name no block stay', () => {
    const store = open()
    store.getState().selectItem('s1b2')
    const { command, ids, rest, problems } = typedBlocks(store.getState(), 'climb 8\nwhatever\nrest 4')
    expect(ids).toHaveLength(2)
    expect(rest).toBe('whatever')
    expect(problems.map(({ line, kind }) => [line, kind])).toEqual([
      [2, 'unknown'],
      [2, 'noKind'],
    ])
    store.getState().run(command!)
    expect(
      store
        .getState()
        .ride!.sections[0]!.blocks.map(({ id }) => id)
        .slice(1, 4),
    ).toEqual(['s1b2', ...ids])
    store.getState().undo()
    expect(store.getState().ride).toEqual(demoRide('spark'))
  })

  it('change nothing of a block whose line is as it was written, and only what is typed otherwise', () => {
    const store = open()
    const { ride } = store.getState()
    for (const section of ride!.sections)
      for (const block of section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))) {
        const line = writeLine(block, en.lineWords, { ride: ride!, section }).text
        expect(typedEdit(store.getState(), line, block.id)).toMatchObject({ command: null, problems: [] })
      }
    const block = ride!.sections[0]!.blocks[1]!
    if (isSet(block)) throw new Error('a set')
    const line = writeLine(block, en.lineWords, { ride: ride!, section: ride!.sections[0]! }).text
    const { command } = typedEdit(store.getState(), line.replace(/effort \S+/, 'effort 6'), block.id)
    expect(command!.apply(ride!).sections[0]!.blocks[1]).toEqual({ ...block, effort: { from: 6, to: 6 } })
  })
})

describe('a line of several blocks', () => {
  it('leaves in the field the parts that name no block, and shows a set before all of it is there', () => {
    const store = open()
    store.getState().selectItem('s1b2')
    expect(typedBlocks(store.getState(), 'climb 8 / wat / rest 4')).toMatchObject({ rest: 'wat', ready: true, ids: { length: 2 } })
    const unready = typedBlocks(store.getState(), '3 rounds: push 4 / wat')
    expect(unready).toMatchObject({ ready: false, ids: { length: 1 } })
    expect(unready.command).not.toBeNull()
    const { command, ids } = typedBlocks(store.getState(), '3 rounds: push 4 / rest 4')
    const made = command!.apply(store.getState().ride!).sections[0]!.blocks.find(({ id }) => id === ids[0])
    expect(made).toMatchObject({ rounds: 3, parts: [{ terrain: 'push' }, { terrain: 'recover' }] })
  })

  it('gives a block that becomes another kind the name of that kind, unless it had a name of its own', () => {
    const store = open()
    const { ride } = store.getState()
    const blocks = ride!.sections[0]!.blocks
    const flat = blocks.find((item) => !isSet(item) && item.label === 'flat')!
    const becomes = (id: string, line: string) =>
      typedEdit(store.getState(), line, id)
        .command!.apply(ride!)
        .sections[0]!.blocks.find((item) => item.id === id)
    expect(becomes(flat.id, 'standing climb 8 effort 7')).toMatchObject({ terrain: 'hill', label: 'standing climb' })
    const named = blocks.find((item) => !isSet(item) && item.label === 'settle')!
    expect(becomes(named.id, 'standing climb 8 effort 7')).toMatchObject({ terrain: 'hill', label: 'settle' })
  })
})

describe('the examples beside the field', () => {
  it.each([
    ['English', en],
    ['German', de],
  ] as const)('are understood in %s', (_, catalogue) => {
    const store = open()
    for (const { line } of [...catalogue.typedLine.examples, { line: catalogue.typedLine.placeholder }]) {
      const section = store.getState().ride!.sections[1]!
      const { items, problems } = itemsOfLines(line, catalogue.lineWords, { ride: store.getState().ride!, section }, () => 'new')[0]!
      expect({ line, problems }).toEqual({ line, problems: [] })
      expect(items).not.toEqual([])
    }
  })
})

describe('words that are begun', () => {
  it('are finished with those of the line, and stay once they are words', () => {
    expect(finishing('seated cl', en.lineWords)).toContain('climb')
    expect(finishing('seated climb', en.lineWords)).toEqual([])
    expect(finishing('s', en.lineWords)).toEqual([])
    expect(finished('seated cl', 'climb')).toBe('seated climb ')
    expect(finishing('Erh', de.lineWords)).toEqual(['Erholung'])
  })
})

describe('patterns by the beginning of their names', () => {
  const profiles = { profiles: [] }
  const names = (text: string) => patternsFound(text, profiles).map(({ name }) => name)

  it('are found by any word, those that begin with it first, and not where the line says it itself', () => {
    expect(names('cl')).toEqual(['seated climb', 'standing climb'])
    expect(names('st cl')).toEqual(['standing climb'])
    expect(names('fl')).toEqual(['flat', 'flush', 'standing flat'])
    expect(names('flat')).toEqual(['standing flat'])
    expect(names('jumps 4')).toEqual(['jumps on 4'])
    expect([names(''), names('4 to 2 fl')]).toEqual([[], []])
  })

  it('are added after the selection as one step, in a ride without songs too', () => {
    const store = open()
    store.getState().selectItem('s1b2')
    const { command, ids } = addedPattern(store.getState(), patternsFound('hov', profiles)[0]!)
    store.getState().run(command!)
    expect(store.getState().ride!.sections[0]!.blocks[2]!.id).toBe(ids[0])
    store.getState().undo()
    expect(store.getState().ride).toEqual(demoRide('spark'))
    store.getState().openRide({ ...demoRide('spark'), sections: [] })
    const first = addedPattern(store.getState(), patternsFound('hov', profiles)[0]!)
    store.getState().run(first.command!)
    expect(store.getState().ride!.sections.map(({ blocks }) => blocks.map(({ id }) => id))).toEqual([first.ids])
  })
})
