// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import type { RuleName } from '#engine/findings/ruleNames.ts'
import type { Finding } from '#engine/report.ts'
import { Findings } from '#features/drafting/findings/Findings.tsx'
import { EVERYTHING, filtered, sortFindings } from '#features/drafting/findings/sorting.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aBlock, aSection, countedIds, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { say } from '#words/said.ts'

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

/** A demo ride taught to a camera in less time, without a form cue or a feel: it is told much, and several things more than once. */
function withManyKinds(): Ride {
  const ride = { ...demoRide('spark'), slotMinutes: 18 }
  const bare = ({ feel: _, ...block }: Block): Block => ({ ...block, cues: block.cues.filter(({ moment }) => moment !== 'form') })
  const sections = ride.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((item) => (isSet(item) ? { ...item, parts: item.parts.map(bare) } : bare(item))),
  }))
  return { ...ride, room: 'online', sections }
}

const rows = () => [...page.host.querySelectorAll('.findings > ul > li')].map((row) => row.querySelector('p')!.textContent ?? '')
const asides = () => [...page.host.querySelectorAll<HTMLElement>('.finding-aside')]

describe('findings', () => {
  it('of one kind share a row with their places behind it', () => {
    const store = open(withManyKinds())
    const short = store.getState().report!.findings.filter(({ rule }) => rule === 'recoveryDebt')
    expect(short.length).toBeGreaterThan(1)
    expect(rows().filter((text) => text.startsWith('Recoveries that are too short'))).toHaveLength(1)
    const count = page.host.querySelector<HTMLElement>('[data-kind="recoveryDebt"] .finding-count')!
    expect(count.textContent).toBe(`${short.length} places`)
    expect(count.getAttribute('aria-expanded')).toBe('false')
    page.press(count)
    const places = [...count.closest('li')!.querySelectorAll('.finding-places > li p')].map((place) => place.textContent!)
    expect(places).toHaveLength(short.length)
    for (const [index, { text }] of short.entries()) expect(places[index]).toContain(told(text))
    page.press(count)
    expect(count.closest('li')!.querySelectorAll('.finding-places > li')).toHaveLength(0)
  })

  it('of one kind are repaired in one step, each as it stands after the ones before it', () => {
    const store = open(withManyKinds())
    const rule = 'moveWithoutForm'
    const before = store.getState().report!.findings.filter((finding) => finding.rule === rule)
    expect(before.length).toBeGreaterThan(1)
    const row = page.host.querySelector(`[data-kind="${rule}"]`)!
    page.press([...row.querySelectorAll<HTMLElement>('button')].find(({ textContent }) => textContent === `Fix all ${before.length}`)!)
    expect(store.getState().past).toHaveLength(1)
    expect(store.getState().report!.findings.filter((finding) => finding.rule === rule)).toEqual([])
  })

  it('of one kind are put aside in one step', () => {
    const store = open(withManyKinds())
    const row = page.host.querySelector('[data-kind="recoveryDebt"]')!
    page.press(row.querySelector<HTMLElement>('button[aria-label^="These are intentional"]')!)
    expect(store.getState().past).toHaveLength(1)
    expect(store.getState().ride!.setAside!.every((id) => id.startsWith('recoveryDebt:'))).toBe(true)
    expect(page.host.querySelector('[data-kind="recoveryDebt"]')).toBeNull()
  })

  it('are narrowed by weight and by song, each with how many there are', () => {
    const store = open(withManyKinds())
    const found = store.getState().report!.findings.filter(({ later }) => !later)
    const kinds = new Set(found.map(({ rule, severity }) => `${severity} ${rule}`)).size
    const weighed = found.filter(({ severity }) => severity === 'warning')
    expect(rows()).toHaveLength(8)
    page.press(page.find('button', `show all ${kinds} kinds`))
    expect(rows()).toHaveLength(kinds)
    page.press(page.find('button', `consider (${weighed.length})`))
    expect(rows()).toHaveLength(new Set(weighed.map(({ rule }) => rule)).size)
    page.press(page.find('button', `all (${found.length})`))
    const place = page.host.querySelector<HTMLSelectElement>('.finding-filter select')!
    const inSong = found.filter(({ sectionId }) => sectionId === 's3')
    expect([...place.options].map(({ text }) => text)).toContain(`3. Tin Orchard Run (${inSong.length})`)
    page.choose(place, 's3')
    expect(inSong.every(({ severity }) => severity !== 'problem')).toBe(true)
    expect(page.find('button', 'fix (0)')).toHaveProperty('disabled', true)
    expect(rows()).toHaveLength(new Set(inSong.map(({ rule, severity }) => `${severity} ${rule}`)).size)
  })

  it('are those of an offer while one stands, and nothing can be done to it there', () => {
    const store = open(demoRide('ridge'))
    const before = store.getState().report!.findings
    const emptied = makeCommand('Emptied', (ride) => ({ ...ride, sections: ride.sections.slice(0, 1) }))
    act(() => store.getState().preview(emptied, 'offer'))
    expect(page.text()).toContain('checks with this change')
    expect(store.getState().shownReport!.findings).not.toEqual(before)
    expect(page.host.querySelector('.finding-fixes')).toBeNull()
    act(() => store.getState().preview(emptied))
    expect(page.text()).not.toContain('checks with this change')
    act(() => store.getState().dropPreview())
    expect(asides().length).toBeGreaterThan(0)
  })

  it('that are intentional are hidden as one step, and unhidden from the end of the list', () => {
    const store = open(demoRide('ridge'))
    const before = rows()
    const drink = before.findIndex((text) => text.includes('water break'))
    page.press(asides()[drink]!)
    expect(store.getState().past).toHaveLength(1)
    expect(store.getState().ride!.setAside).toEqual(['water:ride'])
    expect(rows()).not.toContain(before[drink])
    expect(page.text()).toContain('hidden (1)')
    page.press(page.find('button', 'unhide'))
    expect(rows()).toEqual(before)
    expect(page.text()).not.toContain('hidden')
    act(() => void store.getState().undo())
    expect(store.getState().ride!.setAside).toHaveLength(1)
  })

  it('about the whole wait in a fold until the ride is filled', () => {
    const block = aBlock('hard', { ...inSeconds(60), effort: { from: 9, to: 9 }, resistance: { kind: 'total', from: 8, to: 8 } })
    open({ ...smallRide(), slotMinutes: 30, sections: [aSection('s', { blocks: [block] })] })
    expect(page.text()).toMatch(/checked once the ride is full \([2-9]\)/)
    expect(rows().join()).not.toContain('cool-down')
  })

  it('can only be read in a ride that was received', () => {
    open({ ...demoRide('ridge'), setAside: ['water:ride'] }, true)
    expect(rows().length).toBeGreaterThan(0)
    expect(asides()).toEqual([])
    expect(page.host.querySelector('.finding-fixes')).toBeNull()
    expect(page.text()).toContain('hidden (1)')
  })

  it('show what a repair does while it is pointed at, and make it one step when pressed', () => {
    const store = open(demoRide('spark'))
    page.press(page.host.querySelector<HTMLElement>('[data-kind="moveWithoutForm"] .finding-count')!)
    const repair = [...page.host.querySelectorAll<HTMLElement>('.finding-fixes button')].find((button) =>
      button.textContent!.startsWith('Add “'),
    )!
    page.point(repair)
    expect(told(store.getState().previewing!)).toMatch(/^Added a form cue/)
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
    rule: id as RuleName,
    severity: 'hint',
    text: say('names.nothing'),
    why: say('names.nothing'),
    at: 0,
    fixes: [],
    proposed: [],
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
