// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
const open = (ride: Ride = smallRide()) => {
  panel = openPanel(ride)
}
afterEach(() => panel.close())

describe('the ride, when nothing is chosen', () => {
  it('commits on Enter or on leaving, as one step each', () => {
    open()
    panel.type('title', 'Ridge')
    panel.draft('slot', '50 min')
    expect(panel.ride().slotMinutes).toBe(45)
    panel.leave('slot')
    expect(panel.ride()).toMatchObject({ title: 'Ridge', slotMinutes: 50 })
    expect(panel.steps()).toBe(2)
    act(() => void panel.store.getState().undo())
    expect(panel.ride()).toMatchObject({ title: 'Ridge', slotMinutes: 45 })
  })

  it.each([
    ['title', '', 'A ride needs a title.'],
    ['slot', 'long', 'The slot is a number, such as 45.'],
    ['slot', '500', 'The slot is between 1 and 360 minutes.'],
    ['starts at', 'evening', 'Write the time of day as 18:30 or 6:30 pm.'],
    ['briefing', '2:75', 'Seconds after the colon run from 00 to 59.'],
    ['clear-up', '90 min', 'At most an hour.'],
    ['speaks', '7', 'A speaking rate is between 40 and 400 words a minute.'],
    ['base', '30', 'The base (30) has to lie from 0 to 20.'],
    ['base', '2.3', 'This bike has no such step: the nearest are 2¼ and 2½.'],
    ['highest', '1', 'The base (2) has to lie from 0 to 1.'],
    ['lowest', '20', 'The lowest setting (20) has to be under the highest (20).'],
    ['steps', '0', 'Steps is between 1 and 100 a unit.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    open()
    panel.type(label, text)
    expect(panel.under(label)).toBe(sentence)
    expect((panel.field(label) as HTMLInputElement).value).toBe(text)
    expect(panel.steps()).toBe(0)
  })

  it('reads clocks and times of day in common forms', () => {
    open()
    panel.type('starts at', '6:30 pm')
    panel.type('briefing', '2 min 30 s')
    panel.press('clear-up', 'ArrowUp')
    expect(panel.ride()).toMatchObject({ startsAt: '18:30', briefingSeconds: 150, clearUpSeconds: 15 })
    panel.type('starts at', '')
    expect(panel.ride()).not.toHaveProperty('startsAt')
  })

  it('says that private notes stay here', () => {
    open()
    panel.type('notes', 'knee of the rider in row two')
    expect(panel.ride().privateNotes).toBe('knee of the rider in row two')
    expect(panel.under('notes')).toBe('Kept on this machine; never in a link.')
  })

  it('has one leader or two, and gives the blocks of one who goes to the other', () => {
    open(demoRide('spark'))
    expect(panel.ride().leaders).toHaveLength(2)
    panel.click('teach without Remy Castellane-Voss')
    expect(panel.ride().leaders.map(({ name }) => name)).toEqual(['Odalys Thornquill'])
    panel.click('add a second leader')
    expect(panel.ride().leaders.map(({ name }) => name)).toEqual(['Odalys Thornquill', 'second leader'])
  })
})

describe('the bike', () => {
  const withTotal = (): Ride => ({
    ...smallRide(),
    sections: [aSection('song', { song: aSong('first'), blocks: [aBlock('a', { resistance: { kind: 'total', from: 6, to: 6 } })] })],
  })

  it('keeps totals in its unit when its steps change', () => {
    open(withTotal())
    panel.type('steps', '2')
    expect(panel.block('a').resistance).toMatchObject({ from: 3, to: 3 })
    expect(panel.ride().bike.stepsPerUnit).toBe(2)
  })

  it('refuses steps its settings do not fit', () => {
    const ride = withTotal()
    open({ ...ride, bike: { ...ride.bike, base: 2.25 } })
    panel.type('steps', '2')
    expect(panel.under('steps')).toBe('With 2 steps a turn there is no 2.25; change that setting first.')
  })

  it('reads totals anew when they count from the loose wheel', () => {
    open(withTotal())
    panel.choose('count from', 'loose')
    expect(panel.block('a').resistance).toMatchObject({ from: 14, to: 14 })
  })

  it('steps its base by whole steps inside its range', () => {
    open(withTotal())
    panel.press('base', 'ArrowUp')
    expect(panel.ride().bike.base).toBe(2.25)
    panel.press('lowest', 'ArrowDown')
    expect(panel.ride().bike.min ?? 0).toBe(0)
  })
})
