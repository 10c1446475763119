// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest'
import { type Ride, tempoOf } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
const open = (id: string, ride: Ride = smallRide()) => {
  panel = openPanel(ride, (store) => store.getState().selectSection(id))
}
const section = (id: string) => panel.ride().sections.find((found) => found.id === id)!
const lengths = (id: string) => section(id).blocks.map((item) => ('parts' in item ? 'set' : Object.values(item.length)[0]))
afterEach(() => panel.close())

describe('a section', () => {
  it('says where it stands and how its blocks fill its song', () => {
    open('song')
    expect(panel.host.querySelector('.panel-header')!.textContent).toContain('song 1 · 0:00 to 4:00 · 60 eights')
    expect(panel.text()).toContain('36 eights of the song not covered')
  })

  it('keeps counts when the tempo changes', () => {
    open('song')
    panel.type('tempo', '127.6')
    expect(tempoOf(section('song').song!.grid!)).toBeCloseTo(127.6, 9)
    expect(lengths('song')).toEqual([64, 64, 64])
    expect((panel.field('tempo') as HTMLInputElement).value).toBe('127.6')
    panel.press('tempo', 'ArrowUp', { shiftKey: true })
    expect(tempoOf(section('song').song!.grid!)).toBeCloseTo(127.7, 9)
  })

  it.each([
    ['40', '40 bpm is slower than songs are usually counted (48 to 215 bpm); is it 80?'],
    ['250', '250 bpm is faster than songs are usually counted (48 to 215 bpm); is it 125?'],
  ])('takes %s bpm, and says what to think of it', (bpm, sentence) => {
    open('song')
    panel.type('tempo', bpm)
    expect(tempoOf(section('song').song!.grid!)).toBeCloseTo(Number(bpm), 9)
    expect(panel.text()).toContain(sentence)
    panel.type('tempo', '128')
    expect(panel.text()).not.toContain('songs are usually counted')
  })

  it('may be a mix as long as the class, typed and stepped', () => {
    open('song')
    panel.type('length', '1:15:00')
    expect(section('song').song!.lengthSeconds).toBe(4500)
    panel.press('length', 'ArrowUp')
    expect(section('song').song!.lengthSeconds).toBe(4501)
  })

  it('becomes seconds without a tempo, and eights again with one', () => {
    open('song')
    panel.type('tempo', '')
    expect(section('song').song).not.toHaveProperty('grid')
    expect(lengths('song')).toEqual([32, 32, 32])
    panel.type('tempo', '120')
    expect(lengths('song')).toEqual([64, 64, 64])
  })

  it.each([
    ['tempo', 'fast', 'Tempo must be a number, such as 128 or 127.6.'],
    ['tempo', '12', 'Tempo must be between 20 and 400 bpm.'],
    ['length', '0', 'A song lasts from 1 second to 6 hours. Write minutes and seconds, such as 3:45.'],
    ['length', '6:00:01', 'A song lasts from 1 second to 6 hours. Write minutes and seconds, such as 3:45.'],
    ['first beat', '-1', 'The first beat must be between 0 and 120 seconds into the song.'],
    ['lead-in', 'short', 'The lead-in must be a number, such as 2, or −4 for a crossfade.'],
    ['play from', '0', 'Write the number of the eight, from 1, such as 9 or 9+4.'],
    ['play from', '61', 'This song is played to eight 60. Start before that.'],
    ['play to', '61', 'The song ends after eight 60.'],
    ['play to', '0', 'This song is played from eight 1. End after that.'],
    ['no-talk zones', '40-33', '“40-33” ends before it starts.'],
    ['markers', 'chorus', '“chorus” isn’t a marker. Write one per line, such as 33 chorus.'],
    ['song', '', 'A song needs a title. To ride without one, remove the song below.'],
  ])('%s refuses “%s”', (label, text, sentence) => {
    open('song')
    panel.type(label, text)
    expect(panel.under(label)).toBe(sentence)
    expect(panel.steps()).toBe(0)
  })

  it('takes in- and out-point, quiet windows and marks by the numbers of the ruler', () => {
    open('song')
    panel.type('play from', '5')
    panel.type('play to', '52+4')
    expect(section('song')).toMatchObject({ inCount: 32, outCount: 420 })
    panel.type('no-talk zones', '33–40, 9 to 12')
    panel.type('markers', '33 chorus\n1 intro')
    expect(section('song').song).toMatchObject({
      quiet: [
        { from: 64, to: 96 },
        { from: 256, to: 320 },
      ],
      marks: [
        { count: 0, label: 'intro' },
        { count: 256, label: 'chorus' },
      ],
    })
    panel.type('play from', '')
    panel.type('no-talk zones', '')
    expect(section('song')).not.toHaveProperty('inCount')
    expect(section('song').song).not.toHaveProperty('quiet')
  })

  it('shows the cadence each number of strikes gives, and whether it suits the blocks', () => {
    const ride = demoRide('spark')
    open(ride.sections[2]!.id, ride)
    const said = [...panel.host.querySelectorAll('.panel-strikes label')].map((label) =>
      [...label.children]
        .map((part) => part.textContent)
        .filter(Boolean)
        .join(' | '),
    )
    expect(said).toEqual([
      '½, half time | 40 rpm | too slow',
      '1, on the beat | 79 rpm | fits all 10 blocks',
      '2, double time | 158 rpm | too fast',
      'off the beat | cadence is set',
    ])
    panel.click('½, half time40 rpmtoo slow')
    expect(section(ride.sections[2]!.id).song!.strikesPerBeat).toBe(0.5)
  })

  it('moves the whole beat grid with its first beat', () => {
    const anchors: [number, number][] = [
      [0, 1],
      [64, 33],
      [128, 60],
    ]
    const ride = smallRide()
    open('song', {
      ...ride,
      sections: [aSection('song', { song: aSong('first', { grid: { anchors, beatsPerBar: 4 } }), blocks: [aBlock('a')] })],
    })
    panel.type('first beat', '1.5')
    expect(section('song').song!.grid!.anchors).toEqual([
      [0, 1.5],
      [64, 33.5],
      [128, 60.5],
    ])
  })

  it('crossfades into the song before', () => {
    open('waves')
    panel.type('lead-in', '-4')
    expect(section('waves').leadInSeconds).toBe(-4)
    expect(panel.text()).toContain('s, a crossfade')
  })

  it('swaps its song and keeps the counts', () => {
    open('song')
    expect(panel.text()).toContain('Blocks keep their counts, and the clock follows the new tempo.')
    panel.type('new title', 'Copper Weather')
    panel.type('new tempo', '140')
    panel.click('replace the song')
    expect(section('song').song).toMatchObject({ title: 'Copper Weather', lengthSeconds: 210, strikesPerBeat: 1 })
    expect(lengths('song')).toEqual([64, 64, 64])
    expect(panel.steps()).toBe(1)
  })

  it('takes its song away, the blocks staying as long as they were', () => {
    open('song')
    panel.click('remove “first”')
    expect(section('song').song).toBeNull()
    expect(lengths('song')).toEqual([32, 32, 32])
  })

  it('is given a song', () => {
    open('clock')
    panel.type('title', 'Copper Weather')
    panel.type('tempo', '120')
    panel.click('add the song')
    expect(section('clock').song!.title).toBe('Copper Weather')
    expect(lengths('clock')).toEqual([120, 88])
  })
})
