// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import type { Panel } from '#tests/features/drafting/panel/openPanel.tsx'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { memoryProfiles, openSetup } from './openSetup.tsx'

let page: Panel
afterEach(() => page.close())

const withTotal = (): Ride => ({
  ...smallRide(),
  sections: [aSection('song', { song: aSong('first'), blocks: [aBlock('a', { resistance: { kind: 'total', from: 6, to: 6 } })] })],
})
const settle = () => act(() => new Promise<void>((resolve) => setTimeout(resolve, 0)))

describe('the bike of the ride', () => {
  it.each([
    ['name', '', 'A bike needs a name.'],
    ['unit', '', 'A scale needs a unit, such as turn or level.'],
    ['base', '30', 'The base (30) must be between 0 and 20.'],
    ['base', '2.3', 'This bike has no such step: the nearest are 2¼ and 2½.'],
    ['highest', '1', 'The base (2) must be between 0 and 1.'],
    ['lowest', '20', 'The lowest setting (20) must be below the highest (20).'],
    ['steps', '0', 'The number of steps must be between 1 and 100 per unit.'],
    ['measured at', '20', 'Cadence must be between 40 and 130 rpm.'],
    ['watts at 3', '40', 'Watts rise with the setting: 3 can’t have fewer than the 50 at 2.'],
    ['watts at 3', '180', 'Watts rise with the setting: 4 can’t have fewer than the 180 at 3.'],
    ['add a point at', '3', 'There’s already a point at that setting.'],
    ['add a point at', '25', 'This bike goes from 0 to 20.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    page = openSetup(withTotal(), 'bike')
    page.type(label, text)
    expect(page.under(label)).toBe(sentence)
    expect(page.steps()).toBe(0)
  })

  it('keeps totals in its unit when its steps change', () => {
    page = openSetup(withTotal(), 'bike')
    page.type('steps', '2')
    expect(page.block('a').resistance).toMatchObject({ from: 3, to: 3 })
    expect(page.ride().bike.stepsPerUnit).toBe(2)
  })

  it('refuses steps its settings do not fit', () => {
    const ride = withTotal()
    page = openSetup({ ...ride, bike: { ...ride.bike, base: 2.25 } }, 'bike')
    page.type('steps', '2')
    expect(page.under('steps')).toBe('With 2 steps per turn there is no 2.25; change that setting first.')
  })

  it('steps its base by whole steps inside its range', () => {
    page = openSetup(withTotal(), 'bike')
    page.press('base', 'ArrowUp')
    expect(page.ride().bike.base).toBe(2.25)
    page.press('lowest', 'ArrowDown')
    expect(page.ride().bike.min ?? 0).toBe(0)
  })

  it('says that typical watts are typical, until one is changed', () => {
    page = openSetup(withTotal(), 'bike')
    expect(page.text()).toContain('Typical values.')
    page.type('watts at 3', '120')
    expect(page.ride().bike.points).toContainEqual([3, 120])
    expect(page.text()).not.toContain('Typical values.')
    expect(page.steps()).toBe(1)
  })

  it('takes points out, and puts one in where the curve runs', () => {
    page = openSetup(withTotal(), 'bike')
    page.click('remove the point at 6')
    page.type('add a point at', '3½')
    expect(page.ride().bike.points).toEqual([
      [0, 8],
      [1, 22],
      [2, 50],
      [3, 110],
      [3.5, 140],
      [4, 170],
      [5, 230],
    ])
    expect((page.field('add a point at') as HTMLInputElement).value).toBe('')
  })

  it('has feel anchors in the order of their settings', () => {
    page = openSetup(withTotal(), 'bike')
    page.choose('feel to add', 'solid hill')
    page.type('where solid climb is', '4')
    page.type('where base is', '2')
    expect(page.ride().bike.feelAnchors).toEqual([
      { feel: 'base', setting: 2 },
      { feel: 'solid hill', setting: 4 },
    ])
    page.click('remove base')
    page.click('remove solid climb')
    expect(page.ride().bike).not.toHaveProperty('feelAnchors')
  })

  it('is read and not typed while the ride is someone else’s', () => {
    page = openSetup(withTotal(), 'bike')
    act(() => page.store.getState().receiveRide({ ...withTotal(), bike: { ...DEFAULT_BIKE, name: 'theirs' } }, 'setup'))
    expect((page.field('name') as HTMLInputElement).value).toBe('theirs')
    expect(page.host.querySelector('fieldset.setup-body')?.hasAttribute('disabled')).toBe(true)
  })
})

describe('bikes on this device', () => {
  it('are kept, used for the ride, and removed', async () => {
    const shelf = memoryProfiles()
    const back = { ...DEFAULT_BIKE, id: 'back', name: 'back room', base: 3 }
    shelf.kept.set('bike.back', { kind: 'bike', id: 'bike.back', name: 'back room', bike: back })
    page = openSetup(withTotal(), 'bike', shelf)
    await act(() => page.store.getState().refreshProfiles())
    page.click(`save ${DEFAULT_BIKE.name}`)
    await settle()
    expect(shelf.kept.get('bike.knob')).toMatchObject({ bike: DEFAULT_BIKE })
    expect(page.text()).toContain('in this ride')

    page.click('use back room for this ride')
    expect(page.ride().bike).toEqual(back)
    page.click('remove back room from this device')
    await settle()
    expect([...shelf.kept.keys()]).toEqual(['bike.knob'])
    expect(page.ride().bike).toEqual(back)
  })

  it('begin as copies under an id of their own', () => {
    page = openSetup(withTotal(), 'bike')
    page.click('start from a copy of this one')
    expect(page.ride().bike).toMatchObject({ name: `${DEFAULT_BIKE.name} (another)`, points: DEFAULT_BIKE.points })
    expect(page.ride().bike.id).not.toBe(DEFAULT_BIKE.id)
  })
})
