// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { SelectionPanel } from '#features/drafting/panel/SelectionPanel.tsx'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import type { Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { formatClock } from '#units/formatClock.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
const open = (ride: Ride = smallRide()) => {
  panel = openPanel(ride)
}
afterEach(() => panel.close())

describe('the ride, when nothing is chosen', () => {
  it('says for how long nothing is planned, which no estimate counts', () => {
    const song = aSong('first')
    const planned = aSection('s', { song, blocks: [aBlock('a', { length: { counts: 480 } })] })
    open({ ...smallRide(), sections: [planned] })
    const note = () => [...panel.host.querySelectorAll('.panel-note')].find((one) => one.textContent?.includes('planned yet'))
    expect(note()).toBeUndefined()
    panel.close()
    open({ ...smallRide(), sections: [planned, aSection('t', { song: aSong('second') })] })
    expect(note()?.textContent).toContain('4:00 of this class isn’t planned yet.')
  })

  it('commits on Enter or on leaving, as one step each', () => {
    open()
    panel.type('title', 'Ridge')
    panel.draft('class length', '50 min')
    expect(panel.ride().slotMinutes).toBe(45)
    panel.leave('class length')
    expect(panel.ride()).toMatchObject({ title: 'Ridge', slotMinutes: 50 })
    expect(panel.steps()).toBe(2)
    act(() => void panel.store.getState().undo())
    expect(panel.ride()).toMatchObject({ title: 'Ridge', slotMinutes: 45 })
  })

  it.each([
    ['title', '', 'A ride needs a title.'],
    ['class length', 'long', 'Class length must be a number, such as 45.'],
    ['class length', '500', 'Class length must be between 1 and 360 minutes.'],
    ['starts at', 'evening', 'Write the time of day as 6:30 pm or 18:30.'],
    ['welcome', '2:75', 'Seconds after the colon run from 00 to 59.'],
    ['wipe-down', '90 min', 'At most an hour.'],
    ['speaks', '7', 'Speaking rate must be between 40 and 400 words per minute.'],
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
    panel.type('welcome', '2 min 30 s')
    panel.press('wipe-down', 'ArrowUp')
    expect(panel.ride()).toMatchObject({ startsAt: '18:30', briefingSeconds: 150, clearUpSeconds: 15 })
    panel.type('starts at', '')
    expect(panel.ride()).not.toHaveProperty('startsAt')
  })

  it('says that private notes stay here', () => {
    open()
    panel.type('notes', 'knee of the rider in row two')
    expect(panel.ride().privateNotes).toBe('knee of the rider in row two')
    expect(panel.under('notes')).toBe('Kept on this device; never in a link.')
  })

  it('has one leader or two, and gives the blocks of one who goes to the other', () => {
    open(demoRide('spark'))
    expect(panel.ride().leaders).toHaveLength(2)
    panel.click('teach without Remy Castellane-Voss')
    expect(panel.ride().leaders.map(({ name }) => name)).toEqual(['Odalys Thornquill'])
    panel.click('add a second instructor')
    expect(panel.ride().leaders.map(({ name }) => name)).toEqual(['Odalys Thornquill', 'second instructor'])
  })
})

describe('the bike', () => {
  const withTotal = (): Ride => ({
    ...smallRide(),
    sections: [aSection('song', { song: aSong('first'), blocks: [aBlock('a', { resistance: { kind: 'total', from: 6, to: 6 } })] })],
  })

  it('reads totals anew when they count from the loose wheel', () => {
    open(withTotal())
    panel.choose('count from', 'loose')
    expect(panel.block('a').resistance).toMatchObject({ from: 14, to: 14 })
  })

  it('is told in short, with a way to where it is described', () => {
    open(withTotal())
    expect(panel.text()).toContain('¼ turn, base 2 of 20, friction')
    panel.click('change or calibrate the bike')
    expect(panel.store.getState()).toMatchObject({ place: 'setup', setupPart: 'bike' })
  })
})

describe('the riders, in short', () => {
  it('say how near they come to their limits, where, and that all of it is estimated', () => {
    open(demoRide('ridge'))
    const text = panel.text()
    expect(text).toContain('estimates for modeled people')
    expect(text).toMatch(/least left in the legs48%0–\d+92%0–100100%\d+–100/)
    const { energy, band } = panel.store.getState().report!.riders[1]!
    const tens = (kcal: number) => 10 * Math.round(kcal / 10)
    expect(text).toContain(`${tens(energy.kcal)}${tens(band.energy.low)}–${tens(band.energy.high)}`)
    expect(text).toContain('they allow for 30% either way in the watts of a bike nobody has calibrated')
    expect(text).toMatch(/9:16 of 41:29 minutes of the new rider are outside the 50 to 200 watts/)
    expect(text).toContain('Plans read lower than measured classes')
    expect(text).toContain('52–88% of maximal oxygen uptake and 65–90% of maximal heart rate')
    const seconds = panel.store.getState().report!.riders[1]!.response.secondsByClass
    expect(text).toContain(formatClock(seconds.vigorous))
    panel.click('change the riders')
    expect(panel.store.getState()).toMatchObject({ place: 'setup', setupPart: 'riders' })
  })

  it('lead to the block where the reserve is lowest', () => {
    const shown: string[] = []
    panel = openPanel(demoRide('ridge'), undefined, <SelectionPanel onShow={(id) => shown.push(id)} />)
    panel.click('lowest for the new rider in standing summit at 20:46: show')
    const summit = panel.store.getState().report!.blocks.find(({ block }) => block.label === 'standing summit')!
    expect(shown).toEqual([summit.block.id])
  })

  it('say where it runs out', () => {
    const ride = demoRide('ridge')
    open({ ...ride, riders: [{ ...DEFAULT_RIDERS[1]!, criticalPower: 110, wPrime: 4000 }] })
    expect(panel.text()).toMatch(/least left in the legs0%/)
    expect(panel.text()).toContain('runs out')
  })
})
