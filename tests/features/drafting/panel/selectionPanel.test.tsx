// @vitest-environment happy-dom
import fc from 'fast-check'
import { act, Profiler, type ReactNode } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { moveItem } from '#plan/commands/moveItem.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { idsOf } from '#plan/places.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

// Counts how often a row that no drag elsewhere concerns is drawn.
let drawn = 0
vi.mock('#ui/Segmented.tsx', async (original) => {
  const actual = await original<typeof import('#ui/Segmented.tsx')>()
  const Counted = (props: Parameters<typeof actual.Segmented>[0]): ReactNode => (
    <Profiler
      id="row"
      onRender={() => {
        drawn++
      }}
    >
      <actual.Segmented {...props} />
    </Profiler>
  )
  return { ...actual, Segmented: Counted }
})

let panel: Panel
afterEach(() => panel.close())

describe('a set', () => {
  it('has rounds and what each adds, and leads to its parts', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('set'))
    panel.type('rounds', '4 rounds')
    panel.type('each round adds', '¼')
    panel.type('name', 'waves')
    const set = panel.ride().sections[2]!.blocks[0]!
    expect(set).toMatchObject({ rounds: 4, perRound: { steps: 1 }, label: 'waves' })
    panel.type('each round adds', '0')
    expect(panel.ride().sections[2]!.blocks[0]).not.toHaveProperty('perRound')
    act(() => panel.host.querySelector<HTMLButtonElement>('.panel-part')!.click())
    expect(panel.store.getState().selection.ids).toEqual(['push'])
    expect(panel.text()).toContain('round 1 of 4')
  })

  it.each([
    ['rounds', '0', 'The number of rounds must be between 1 and 100.'],
    ['each round adds', 'a bit', 'Write turns, such as 1½.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('set'))
    panel.type(label, text)
    expect(panel.under(label)).toBe(sentence)
  })

  it('is changed in every round, or in one that is taken out of it', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('push'))
    expect(panel.text()).toContain('all 3 rounds')
    panel.choose('applies to', '2')
    const { blocks } = panel.ride().sections[2]!
    expect(blocks).toHaveLength(7)
    expect(panel.store.getState().selection.ids).toEqual([blocks[2]!.id])
    panel.press('effort', '9')
    expect(blocks.map((item) => 'effort' in item && item.effort.from)).toEqual([4, 4, 4, 4, 4, 4, 4])
    expect(panel.ride().sections[2]!.blocks.map((item) => 'effort' in item && item.effort.from)).toEqual([4, 4, 9, 4, 4, 4, 4])
  })

  it('is played out into blocks of its own', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('set'))
    panel.click('expand rounds')
    expect(panel.ride().sections[2]!.blocks).toHaveLength(7)
  })
})

describe('several blocks', () => {
  it('show what they share, and change together in one step', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['a', 'b']))
    expect(panel.field('effort').getAttribute('aria-valuetext')).toBe('4 of 10, steady, full sentences')
    panel.press('effort', '8')
    panel.click('standing')
    panel.choose('terrain', 'hill')
    for (const id of ['a', 'b']) expect(panel.block(id)).toMatchObject({ effort: { from: 8, to: 8 }, posture: 'standing', terrain: 'hill' })
    expect(panel.steps()).toBe(3)
  })

  it('say “mixed” where they differ, and count the parts of a set', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['a', 'set']))
    expect(panel.host.querySelector('h2')!.textContent).toBe('3 blocks')
    act(() => panel.store.getState().selectItem('a'))
    panel.press('effort', '9')
    act(() => panel.store.getState().selectItems(['a', 'b']))
    expect(panel.field('effort').getAttribute('aria-valuetext')).toBe('mixed')
  })

  it('shift their totals by what is typed', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['b', 'c']))
    panel.type('shift resistance', '+½')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'exact', steps: 2 })
    expect(panel.block('c').resistance).toEqual({ kind: 'keep' })
    expect((panel.field('shift resistance') as HTMLInputElement).value).toBe('')
    panel.type('shift resistance', 'more')
    expect(panel.under('shift resistance')).toBe('Write turns, such as 1½.')
  })

  it('keep what is each one’s own where they differ, and change one field of all in one step', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('a'))
    panel.choose('move', 'jump')
    panel.choose('knob', 'total')
    panel.type('name', 'first')
    panel.type('length', '4')
    act(() => panel.store.getState().selectItem('b'))
    panel.choose('move', 'press')
    panel.choose('knob', 'total')
    panel.type('to', '2')
    const steps = panel.steps()
    act(() => panel.store.getState().selectItems(['a', 'b']))
    const mixed = (label: string) => (panel.field(label) as HTMLInputElement).placeholder
    expect([mixed('name'), mixed('length'), mixed('to')]).toEqual(['mixed', 'mixed', 'mixed'])
    expect((panel.field('move') as HTMLSelectElement).selectedOptions[0]!.textContent).toBe('mixed')
    panel.type('length', '6')
    panel.type('on', '16')
    panel.type('to', '1–1½')
    panel.choose('lead foot', 'swap')
    panel.type('name', 'both')
    expect(panel.steps()).toBe(steps + 5)
    for (const id of ['a', 'b'])
      expect(panel.block(id)).toMatchObject({ length: { counts: 48 }, lead: 'swap', label: 'both', resistance: { from: 4, to: 6 } })
    expect([panel.block('a').move, panel.block('b').move]).toEqual([
      { name: 'jump', counts: 16 },
      { name: 'press', counts: 16 },
    ])
    expect(panel.block('c')).toEqual(smallRide().sections[0]!.blocks[2])
  })

  it('change one end of their ramps by itself', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('a'))
    panel.press('effort', '7')
    act(() => panel.store.getState().selectItems(['a', 'b']))
    panel.click('start and end')
    panel.press('effort, end', '9')
    expect([panel.block('a').effort, panel.block('b').effort]).toEqual([
      { from: 7, to: 9 },
      { from: 4, to: 9 },
    ])
    expect(panel.field('effort, end').getAttribute('aria-valuetext')).not.toBe('mixed')
    expect(panel.field('effort, start').getAttribute('aria-valuetext')).toBe('mixed')
  })

  it('tick what only some of them have for all', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('a'))
    panel.click('water riders drink here')
    act(() => panel.store.getState().selectItems(['a', 'b']))
    const box = [...panel.host.querySelectorAll<HTMLInputElement>('[type=checkbox]')][0]!
    expect([box.checked, box.indeterminate]).toEqual([false, true])
    act(() => box.click())
    expect([panel.block('a').water, panel.block('b').water]).toEqual([true, true])
    expect(box.indeterminate).toBe(false)
  })

  it('count in the beat of whatever song each is in, and leave what has none alone', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['a', 'x', 'z']))
    panel.choose('cadence', 'half')
    expect([panel.block('a').strikesPerBeat, panel.block('x').strikesPerBeat, panel.block('z').strikesPerBeat]).toEqual([
      0.5,
      undefined,
      0.5,
    ])
    expect(panel.steps()).toBe(1)
    panel.choose('cadence', 'stated')
    expect(panel.block('a')).toMatchObject({ strikesPerBeat: null })
    expect(panel.block('x')).not.toHaveProperty('strikesPerBeat')
    panel.type('rpm', '77')
    for (const id of ['a', 'x', 'z']) expect(panel.block(id).cadence).toEqual({ rpm: 77 })
  })

  it('become a set, which is then chosen', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['a', 'b']))
    panel.click('repeat as a set of 2 rounds')
    expect(panel.ride().sections[0]!.blocks[0]).toMatchObject({ rounds: 2, parts: [{ id: 'a' }, { id: 'b' }] })
    expect(panel.text()).toContain('expand rounds')
  })

  it('say why they cannot become a set', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItems(['a', 'c']))
    panel.click('repeat as a set of 2 rounds')
    expect(panel.text()).toContain('A set is made of single blocks that stand side by side in one song.')
  })
})

describe('the panel', () => {
  it('cannot be used on a ride that was received', () => {
    panel = openPanel(smallRide(), (store) => {
      store.getState().receiveRide(smallRide())
      store.getState().selectItem('a')
    })
    expect(panel.host.querySelector('fieldset')!.disabled).toBe(true)
    panel.press('effort', '9')
    expect(panel.block('a').effort).toEqual({ from: 4, to: 4 })
  })

  it('does not draw its rows anew while another block is dragged', () => {
    panel = openPanel(smallRide(), (store) => store.getState().selectItem('b'))
    const { ride, preview } = panel.store.getState()
    drawn = 0
    act(() => preview(moveItem(ride!, { itemId: 'a', sectionId: 'song', index: 2 })))
    act(() => preview(resizeBlock(ride!, { blockId: 'a', length: { counts: 128 } })))
    expect(panel.text()).toContain('1:04 · 8 eights')
    expect(drawn).toBe(0)
    act(() => preview(resizeBlock(ride!, { blockId: 'b', length: { counts: 128 } })))
    expect(drawn).toBeGreaterThan(0)
  })

  it('takes back every text it shows without changing the ride, whatever is chosen', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 2, parts: 2 }), fc.nat(), (ride, pick) => {
        const ids = [...idsOf(ride)]
        const id = ids[pick % (ids.length + 1)]
        panel = openPanel(ride, (store) => {
          if (id === undefined) return
          store.getState().selectItem(id)
          if (store.getState().selection.ids.length === 0) store.getState().selectSection(id)
        })
        for (const field of panel.host.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input[type=text], textarea')) {
          if (field.value === '') continue
          act(() => {
            Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')!.set!.call(field, `${field.value} `)
            field.dispatchEvent(new Event('input', { bubbles: true }))
            field.dispatchEvent(new FocusEvent('focusout', { bubbles: true }))
          })
          expect(field.getAttribute('aria-invalid'), `${field.value} of ${field.labels?.[0]?.textContent}`).toBe('false')
        }
        expect(panel.store.getState().past.map(({ label }) => label)).toEqual([])
        panel.close()
      }),
      { numRuns: 20 },
    )
  })
})
