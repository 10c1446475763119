// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { constantGroups } from '#engine/constantGroups.ts'
import { CONSTANTS, type ConstantName } from '#engine/constants.ts'
import { parseRule, withRule } from '#features/setup/rules/houseRules.ts'
import type { Ride } from '#plan/model.ts'
import type { Panel } from '#tests/features/drafting/panel/openPanel.tsx'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { memoryProfiles, openSetup } from './openSetup.tsx'

let page: Panel
const open = (ride: Ride) => {
  page = openSetup(ride, 'rules')
}
const rulesFound = () => page.store.getState().report!.findings.map(({ rule }) => rule)

describe('the groups of constants', () => {
  it('hold every editable constant once, and no other', () => {
    const grouped = constantGroups().flatMap(({ names }) => names)
    const editable = (Object.keys(CONSTANTS) as ConstantName[]).filter((name) => CONSTANTS[name].editable)
    expect([...grouped].sort()).toEqual([...editable].sort())
  })
})

describe('a rule’s number', () => {
  it('is read in decimals and fractions, with its unit or without', () => {
    expect(parseRule('1 ½', CONSTANTS.largestAdded)).toEqual({ ok: true, value: 1.5 })
    expect(parseRule('2,25 turns', CONSTANTS.largestAdded)).toEqual({ ok: true, value: 2.25 })
    expect(parseRule('95 rpm', CONSTANTS.standingMaxRpm)).toEqual({ ok: true, value: 95 })
    expect(parseRule('often', CONSTANTS.walkSeconds)).toMatchObject({ ok: false })
  })

  it('is not kept where it is the default, and no rules are none', () => {
    expect(withRule({ walkSeconds: 90 }, 'walkSeconds', 60)).toBeUndefined()
    expect(withRule({ walkSeconds: 90, fromLater: 3 }, 'walkSeconds', 60)).toEqual({ fromLater: 3 })
    expect(withRule(undefined, 'walkSeconds', 90)).toEqual({ walkSeconds: 90 })
  })
})

describe('house rules', () => {
  afterEach(() => page.close())

  it('change what is found, one at a time, and go back one at a time or all at once', () => {
    open(demoRide('ridge'))
    expect(rulesFound()).not.toContain('longStanding')
    page.type('longest time standing', '30')
    expect(page.ride().houseRules).toEqual({ longestStanding: 30 })
    expect(rulesFound()).toContain('longStanding')
    page.type('fastest standing cadence', '90')
    page.click('reset longest time standing')
    expect(page.ride().houseRules).toEqual({ standingMaxRpm: 90 })
    expect(rulesFound()).not.toContain('longStanding')
    page.click('reset all numbers')
    expect(page.ride()).not.toHaveProperty('houseRules')
  })

  it.each([
    ['longest time standing', '5', 'Must be between 30 and 1800 s.'],
    ['longest time standing', 'a song', 'Write a number, such as 300.'],
    ['slowest seated cadence', '110.5', 'Must be between 30 and 110 rpm.'],
    ['fastest standing cadence', '59', 'Must be between 60 and 160 rpm.'],
    ['easy means effort up to', '8', '“work starts at effort” is 7; this can’t be above it.'],
    ['a hard effort starts at', '6', '“work starts at effort” is 7; this can’t be below it.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    open(smallRide())
    page.type(label, text)
    expect(page.under(label)).toBe(sentence)
    expect(page.steps()).toBe(0)
  })

  it('name moves to avoid, once each, which become findings', () => {
    const jumps = aBlock('corner', { move: { name: 'jumps', counts: 8 } })
    open({ ...smallRide(), sections: [aSection('song', { song: aSong('first'), blocks: [jumps] })] })
    page.click('avoid jump')
    expect(page.ride().avoidMoves).toEqual(['jump'])
    expect(rulesFound()).toContain('avoidedMoves')
    page.type('avoid another move', 'Jumps')
    expect(page.under('avoid another move')).toBe('It’s already on the list.')
    page.type('avoid another move', 'scissors')
    expect(page.ride().avoidMoves).toEqual(['jump', 'scissors'])
    page.click('allow jump')
    page.click('allow scissors')
    expect(page.ride()).not.toHaveProperty('avoidMoves')
    expect(rulesFound()).not.toContain('avoidedMoves')
  })

  it('are kept for a room, and used in another ride as one step', async () => {
    const shelf = memoryProfiles()
    shelf.kept.set('barn', { kind: 'rules', id: 'barn', name: 'the barn', houseRules: { walkSeconds: 90 }, avoidMoves: ['press'] })
    page = openSetup(smallRide(), 'rules', shelf)
    await act(() => page.store.getState().refreshProfiles())
    expect(page.text()).toContain('1 number of its own, 1 move to avoid')
    page.click('use the barn for this ride')
    expect(page.ride()).toMatchObject({ houseRules: { walkSeconds: 90 }, avoidMoves: ['press'] })
    expect(page.steps()).toBe(1)
    expect(page.text()).toContain('in this ride')
  })
})
