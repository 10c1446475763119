// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import type { Finding } from '#engine/report.ts'
import { Findings } from '#features/drafting/findings/Findings.tsx'
import { EVERYTHING, filtered, sortFindings } from '#features/drafting/findings/sorting.ts'
import type { Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aBlock, aSection, countedIds, inSeconds, smallRide } from '#tests/support/smallRide.ts'

let page: Rendered
const go = vi.fn()
function open(ride: Ride, readOnly = false) {
  const store = createAppStore({ newId: countedIds(), shelf: null })
  if (readOnly) store.getState().receiveRide(ride)
  else store.getState().openRide(ride)
  page = rendered(store, <Findings readOnly={readOnly} onGo={go} />)
  return store
}
afterEach(() => page.close())

const rows = () => [...page.host.querySelectorAll('.findings > ul > li')].map((row) => row.querySelector('p')!.textContent ?? '')
const asides = () => [...page.host.querySelectorAll<HTMLElement>('button[aria-label^="it is meant so"]')]

describe('findings', () => {
  it('are narrowed by weight and by song, each with how many there are', () => {
    const store = open(demoRide('spark'))
    const found = store.getState().report!.findings
    const weighed = found.filter(({ severity }) => severity === 'warning')
    expect(rows()).toHaveLength(8)
    page.press(page.find('button', `show all ${found.length}`))
    expect(rows()).toHaveLength(found.length)
    page.press(page.find('button', `${weighed.length} to weigh`))
    expect(rows()).toHaveLength(weighed.length)
    expect(page.find('button', '0 to mend')).toHaveProperty('disabled', true)

    page.press(page.find('button', `all ${found.length}`))
    const place = page.host.querySelector<HTMLSelectElement>('.finding-filter select')!
    const inSong = found.filter(({ sectionId }) => sectionId === 's3')
    expect([...place.options].map(({ text }) => text)).toContain(`3. Tin Orchard Run (${inSong.length})`)
    page.choose(place, 's3')
    expect(rows()).toHaveLength(inSong.length)
    page.press(page.find('button', '0 to weigh'))
    expect(rows()).toHaveLength(inSong.length)
  })

  it('that are meant so are put aside as one step, and brought back from the end of the list', () => {
    const store = open(demoRide('ridge'))
    const before = rows()
    page.press(asides()[0]!)
    expect(store.getState().past).toHaveLength(1)
    expect(store.getState().ride!.setAside).toHaveLength(1)
    expect(rows()).not.toContain(before[0])
    expect(page.text()).toContain('meant so: 1')
    page.press(page.find('button', 'bring back'))
    expect(rows()).toEqual(before)
    expect(page.text()).not.toContain('meant so')
    act(() => void store.getState().undo())
    expect(store.getState().ride!.setAside).toHaveLength(1)
  })

  it('about the whole wait in a fold until the ride is filled', () => {
    const block = aBlock('hard', { ...inSeconds(60), effort: { from: 9, to: 9 }, resistance: { kind: 'total', from: 8, to: 8 } })
    open({ ...smallRide(), slotMinutes: 30, sections: [aSection('s', { blocks: [block] })] })
    expect(page.text()).toMatch(/when the ride is filled: [2-9]/)
    expect(rows().join()).not.toContain('cool-down')
  })

  it('can only be read in a ride that was received', () => {
    open({ ...demoRide('ridge'), setAside: ['water:ride'] }, true)
    expect(rows().length).toBeGreaterThan(0)
    expect(asides()).toEqual([])
    expect(page.host.querySelector('.finding-fixes')).toBeNull()
    expect(page.text()).toContain('meant so: 1')
  })

  it('show what a repair does while it is pointed at, and make it one step when pressed', () => {
    const store = open(demoRide('ridge'))
    const repair = [...page.host.querySelectorAll<HTMLElement>('.finding-fixes button')].find((button) =>
      button.textContent!.startsWith('Extend'),
    )!
    page.point(repair)
    expect(store.getState().previewing).toMatch(/^Extended/)
    expect(store.getState().shown).not.toBe(store.getState().ride)
    page.point(null)
    expect(store.getState().previewing).toBeNull()
    const before = store.getState().ride
    page.press(repair)
    expect(store.getState().past.map(({ ride }) => ride)).toEqual([before])
    expect(store.getState().previewing).toBeNull()
  })
})

describe('sorting', () => {
  const finding = (id: string, change: Partial<Finding> = {}): Finding => ({
    id,
    rule: id,
    severity: 'hint',
    text: '',
    why: '',
    at: 0,
    fixes: [],
    ...change,
  })

  it('puts each in one place: aside before later, later before open', () => {
    const all = [finding('a'), finding('b', { later: true }), finding('c', { later: true }), finding('d')]
    const { open: now, later, aside } = sortFindings(all, ['c', 'd', 'gone'])
    expect([now, later, aside].map((list) => list.map(({ id }) => id))).toEqual([['a'], ['b'], ['c', 'd']])
  })

  it('leaves everything where nothing is asked for, and knows the ride from its sections', () => {
    const all = [finding('a'), finding('b', { sectionId: 's1' }), finding('c', { sectionId: 's1', severity: 'problem' })]
    expect(filtered(all, EVERYTHING)).toEqual(all)
    expect(filtered(all, { severity: 'all', place: 'ride' }).map(({ id }) => id)).toEqual(['a'])
    expect(filtered(all, { severity: 'problem', place: 's1' }).map(({ id }) => id)).toEqual(['c'])
  })
})
