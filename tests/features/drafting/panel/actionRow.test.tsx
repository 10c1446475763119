// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest'
import { DraftToolsContext } from '#features/drafting/actions/draftGround.ts'
import { SelectionPanel } from '#features/drafting/panel/SelectionPanel.tsx'
import type { Ride } from '#plan/model.ts'
import type { AppStore } from '#store/state.ts'
import { NO_DRAFT_TOOLS } from '#tests/support/noDraftTools.ts'
import { aBlock, aSection, layout, smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
let focused: string[]
afterEach(() => panel.close())

function open(select: (store: AppStore) => void, ride: Ride = smallRide()) {
  focused = []
  panel = openPanel(
    ride,
    select,
    <DraftToolsContext.Provider value={{ ...NO_DRAFT_TOOLS, focus: (id) => focused.push(id) }}>
      <SelectionPanel />
    </DraftToolsContext.Provider>,
  )
}

const item = (id: string) => (store: AppStore) => store.getState().selectItem(id)
const chosen = () => panel.store.getState().selection.ids
const offered = () => [...panel.host.querySelectorAll<HTMLButtonElement>('.panel-action')].map((button) => button.textContent)
const possible = (words: string) =>
  ![...panel.host.querySelectorAll<HTMLButtonElement>('.panel-action')].find(({ textContent }) => textContent === words)!.disabled

describe('what can be done to a block without a keyboard', () => {
  it('copies it, and goes on to the copy', () => {
    open(item('b'))
    panel.click('duplicate')
    const [, copy] = /^a b (n\d+) c$/.exec(layout(panel.ride(), 'song'))!
    expect(chosen()).toEqual([copy])
    expect(focused).toEqual([copy])
    expect(panel.steps()).toBe(1)
  })

  it('splits it and joins it again, staying on it', () => {
    open(item('b'))
    panel.click('split')
    expect(panel.block('b').length).toEqual({ counts: 32 })
    panel.click('merge')
    expect(panel.block('b').length).toEqual({ counts: 64 })
    expect(chosen()).toEqual(['b'])
    expect(focused).toEqual(['b', 'b'])
    expect(panel.steps()).toBe(2)
  })

  it('makes rounds of it, and goes to the set, whose rounds are asked for next', () => {
    open(item('b'))
    panel.click('repeat')
    const [set] = chosen()
    expect(layout(panel.ride(), 'song')).toBe(`a ${set}(b) c`)
    expect(focused.at(-1)).toBe(set)
    panel.type('rounds', '5')
    expect(panel.ride().sections[0]!.blocks[1]).toMatchObject({ rounds: 5 })
  })

  it('deletes it and goes on to the block after it, from the last to the one before', () => {
    open(item('b'))
    panel.click('delete')
    expect([layout(panel.ride(), 'song'), chosen(), focused]).toEqual(['a c', ['c'], ['c']])
    open(item('z'))
    panel.click('delete')
    expect([chosen(), focused]).toEqual([['ease'], ['ease']])
  })

  it('goes to the section when its last block is gone, and says that it is the section which would go next', () => {
    const only: Ride = { ...smallRide(), sections: [aSection('alone', { blocks: [aBlock('one', { length: { seconds: 30 } })] })] }
    open(item('one'), only)
    panel.click('delete')
    expect(focused).toEqual(['alone'])
    expect(offered()).toEqual(['type a block', 'duplicate song', 'delete song', 'more…'])
  })

  it('cuts the section in two before it, in one step, staying on it', () => {
    const [led, ...others] = smallRide().sections
    open(item('b'), { ...smallRide(), sections: [{ ...led!, lead: 'left' }, ...others] })
    panel.click('split song here')
    const [first, second] = panel.ride().sections
    expect([first!.blocks.map(({ id }) => id), second!.blocks.map(({ id }) => id)]).toEqual([['a'], ['b', 'c']])
    // The song goes on where the first section leaves it.
    expect([first!.outCount, second!.inCount, second!.leadInSeconds, second!.lead, second!.song?.id]).toEqual([
      64,
      64,
      0,
      'left',
      first!.song?.id,
    ])
    expect([chosen(), focused, panel.steps()]).toEqual([['b'], ['b'], 1])
    open(item('b'))
    panel.click('split song here')
    expect(possible('split song here')).toBe(false)
  })

  it('offers nothing that would change nothing', () => {
    open(item('c'))
    expect([possible('merge'), possible('repeat'), possible('split')]).toEqual([false, true, true])
    open(item('ease'))
    expect([possible('merge'), possible('repeat'), possible('split song here')]).toEqual([false, false, false])
    open(item('a'), {
      ...smallRide(),
      sections: [aSection('short', { blocks: [aBlock('a', { length: { seconds: 1 } }), aBlock('b', { length: { seconds: 1 } })] })],
    })
    expect([possible('merge'), possible('split')]).toEqual([true, false])
  })
})

it('a set and several blocks are copied and deleted whole', () => {
  open(item('set'))
  expect(offered()).toEqual(['type a block', 'duplicate', 'save as pattern', 'fill the song', 'split song here', 'delete', 'more…'])
  expect(possible('split song here')).toBe(false)
  panel.click('duplicate')
  expect(layout(panel.ride(), 'waves')).toMatch(/^set\(push ease\) n\d+\(n\d+ n\d+\) z$/)
  open((store) => store.getState().selectItems(['a', 'b']))
  panel.click('delete')
  expect([layout(panel.ride(), 'song'), chosen(), focused]).toEqual(['c', ['c'], ['c']])
})

it('a section is cut before a set too, also from one of its parts', () => {
  const ride = smallRide()
  const waves = ride.sections[2]!
  const behind: Ride = { ...ride, sections: [{ ...waves, blocks: [waves.blocks[1]!, waves.blocks[0]!] }] }
  for (const chosenId of ['set', 'ease']) {
    open(item(chosenId), behind)
    panel.click('split song here')
    expect(panel.ride().sections.map(({ blocks }) => blocks.map(({ id }) => id))).toEqual([['z'], ['set']])
  }
})

it('a section is copied and deleted whole, and the copy, or the next one, is chosen', () => {
  open((store) => store.getState().selectSection('clock'))
  panel.click('duplicate song')
  expect(panel.ride().sections).toHaveLength(4)
  const copy = panel.store.getState().selection.sectionId
  expect(panel.ride().sections.map(({ id }) => id)).toEqual(['song', 'clock', copy, 'waves'])
  panel.click('delete song')
  expect(panel.ride().sections.map(({ id }) => id)).toEqual(['song', 'clock', 'waves'])
  expect(panel.store.getState().selection.sectionId).toBe(focused.at(-1))
})

it('nothing is offered where nothing is chosen', () => {
  open(() => undefined)
  expect(offered()).toEqual([])
})
