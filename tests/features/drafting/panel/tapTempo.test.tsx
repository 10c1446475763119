// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { actionsOnSection } from '#features/drafting/panel/section/actionsOnSection.ts'
import { BeatTools } from '#features/drafting/panel/section/BeatTools.tsx'
import { TapTempo } from '#features/drafting/panel/section/tapping/TapTempo.tsx'
import { tempoOf } from '#plan/model.ts'
import { aStore } from '#tests/support/aStore.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'

let page: Rendered
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

function open() {
  const { store, state } = aStore()
  const song = aSong('song', { strikesPerBeat: 1, lengthSeconds: 210 })
  state().openRide({ ...smallRide(), sections: [aSection('s', { song, blocks: [aBlock('a')] })] })
  const songNow = () => state().ride!.sections[0]!.song!
  return { store, state, song, songNow, does: actionsOnSection(store, 's') }
}

/** A key as it goes down at a second of the page's clock. */
function down(element: Element, key: string, second: number): void {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })
  Object.defineProperty(event, 'timeStamp', { value: second * 1000 })
  act(() => void element.dispatchEvent(event))
}

describe('tapping a tempo', () => {
  it('takes the taps’ tempo and first beat as one step that keeps the counts', () => {
    const { store, state, song, songNow, does } = open()
    page = rendered(store, <TapTempo song={song} blocks={[]} houseRules={undefined} does={does} />)
    page.press(page.find('button', 'tap the tempo'))
    const pad = page.host.querySelector('.tap-pad')!
    down(pad, '0', 10)
    const period = 60 / 127.5
    for (let beat = 0; beat < 32; beat++) down(pad, beat % 4 === 0 ? '1' : ' ', 10.25 + 8 * period + beat * period)
    expect(page.text()).toContain('127.5')
    expect(page.text()).toContain('Steady enough')
    expect(page.text()).toContain('63.8 rpm')
    expect(page.text()).toContain('The first bar begins 0.25 s into the song.')
    page.press(page.find('button', 'use 127.5 bpm'))
    expect(tempoOf(songNow().grid!)).toBeCloseTo(127.5, 6)
    expect(songNow().grid!.anchors[0]![1]).toBeCloseTo(0.25, 3)
    expect(state().ride!.sections[0]!.blocks[0]).toMatchObject({ length: { counts: 64 } })
    expect(state().past).toHaveLength(1)
  })

  it('leaves alone what keys move about with, and starts again', () => {
    const { store, song, does } = open()
    page = rendered(store, <TapTempo song={song} blocks={[]} houseRules={undefined} does={does} />)
    page.press(page.find('button', 'tap the tempo'))
    const pad = page.host.querySelector('.tap-pad')!
    for (const key of ['Tab', 'Enter', 'Shift', 'ArrowLeft']) down(pad, key, 1)
    expect(page.text()).toContain('on every beat')
    for (let beat = 0; beat < 4; beat++) down(pad, 'x', 2 + beat / 2)
    expect(page.text()).toContain('4 of at least 5 taps')
    down(pad, 'Backspace', 5)
    expect(page.text()).toContain('on every beat')
  })
})

describe('taps that are no usual tempo', () => {
  const tapEvery = (...gaps: number[]) => {
    const { store, song, does } = open()
    page = rendered(store, <TapTempo song={song} blocks={[]} houseRules={undefined} does={does} />)
    page.press(page.find('button', 'tap the tempo'))
    const pad = page.host.querySelector('.tap-pad')!
    let at = 10
    for (let tap = 0; tap < 12; tap++) {
      down(pad, ' ', at)
      at += gaps[tap % gaps.length]!
    }
  }

  it('say what they may be where they are slower than songs are counted', () => {
    tapEvery(1.5)
    expect(page.text()).toContain('40 bpm is slower than songs are usually counted (48 to 215 bpm); is it 80?')
    expect((page.find('button', 'half') as HTMLButtonElement).disabled).toBe(false)
    page.press(page.find('button', 'half'))
    // 10 bpm is no tempo of a ride.
    expect((page.find('button', 'half') as HTMLButtonElement).disabled).toBe(true)
  })

  it.each([
    ['too slow to be followed', [3]],
    ['too fast', [0.1]],
  ])('say that there is no beat in them where they are %s', (_what, gaps) => {
    tapEvery(...gaps)
    expect(page.text()).toContain('12 taps, no beat yet')
    expect(page.text()).toContain('Those taps aren’t a steady beat between 30 and 300 bpm. Keep tapping evenly, or start again.')
  })
})

describe('the beats put right', () => {
  it('in small steps, at half and at double the tempo', () => {
    const { store, songNow } = open()
    page = rendered(store, <BeatTools sectionId="s" grid={songNow().grid!} />)
    page.press(page.find('button', '+10 ms'))
    expect(songNow().grid!.anchors[0]![1]).toBeCloseTo(0.01, 6)
    page.press(page.find('button', /^double/))
    expect(tempoOf(songNow().grid!)).toBeCloseTo(240, 6)
    expect(songNow().strikesPerBeat).toBe(0.5)
  })
})
