// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSet, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
const openSection = (ride: Ride, id: string) => {
  panel = openPanel(ride, (store) => store.getState().selectSection(id))
}
const openItem = (ride: Ride, id: string) => {
  panel = openPanel(ride, (store) => store.getState().selectItem(id))
}
const openRide = (ride: Ride) => {
  panel = openPanel(ride)
}
afterEach(() => panel.close())

const counts = (id: string) => {
  const { length } = panel.block(id)
  return 'counts' in length ? length.counts : null
}
const one = (blocks: Parameters<typeof aSection>[1]): Ride => ({
  ...smallRide(),
  sections: [aSection('s', { song: aSong('tune'), ...blocks })],
})

describe('blocks fitted to their song', () => {
  it('are listed with what they become, and take their lengths as one step', () => {
    openSection(one({ blocks: [aBlock('a', { length: { counts: 200 } }), aBlock('b', { length: { counts: 200 } })] }), 's')
    expect(panel.text()).toContain('a 25 → 30 eights')
    panel.click('Fit the blocks')
    expect([counts('a'), counts('b')]).toEqual([240, 240])
    expect(panel.steps()).toBe(1)
    expect(panel.text()).not.toContain('fit blocks to the song')
  })

  it('say why they cannot, and what is nearest', () => {
    const set = aSet('set', [aBlock('on', { length: { counts: 32 } }), aBlock('off', { length: { counts: 32 } })], { rounds: 2 })
    openSection(one({ blocks: [set], outCount: 136 }), 's')
    expect(panel.text()).toContain('The song leaves 17 eights; the nearest these blocks can fill are 16 eights and 18 eights.')
    panel.click('End the song after 16 eights')
    expect(panel.ride().sections[0]!.outCount).toBe(128)
    expect(panel.text()).not.toContain('fit blocks to the song')
  })

  it('are not offered where they fill the song, or are measured in seconds', () => {
    openSection(demoRide('ridge'), 's3')
    expect(panel.text()).not.toContain('fit blocks to the song')
    panel.close()
    openSection(smallRide(), 'clock')
    expect(panel.text()).not.toContain('fit blocks to the song')
  })
})

describe('another song', () => {
  it('says what it keeps, what falls off its end and how the clock moves before it is taken', () => {
    openSection(demoRide('ridge'), 's3')
    expect(panel.text()).toContain('Write a title to see what falls off the end.')
    panel.type('new title', 'Copper Weather')
    panel.type('new tempo', '150')
    panel.type('new length', '3:00')
    const said = panel.text()
    expect(said).toContain('All 8 blocks keep their counts, 64 eights in all.')
    expect(said).toContain('All of “ease” falls off the end (8 eights).')
    expect(said).toContain('What follows starts 15 s earlier.')
    expect(said).toContain('The ride ends at 43:28, 1:32 under class length.')
    expect(panel.steps()).toBe(0)
    panel.click('replace the song')
    expect(panel.ride().sections[2]!.song!.title).toBe('Copper Weather')
    expect(panel.steps()).toBe(1)
    expect((panel.field('new title') as HTMLInputElement).value).toBe('')
  })
})

describe('a section', () => {
  it('says how much of it is talked through, and by what most', () => {
    openSection(demoRide('ridge'), 's3')
    expect(panel.text()).toMatch(/talking 10% of the song; longest 3\.9 s: “Sit\. One and a quarter off\./)
  })
})

describe('the leader’s own total', () => {
  const range = { resistance: { kind: 'total' as const, from: 12, to: 16 } }

  it('stands beside what the class is told', () => {
    openItem(one({ blocks: [aBlock('a', range)] }), 'a')
    expect(panel.field('you ride').getAttribute('placeholder')).toBe('3–4, same as class')
    panel.type('you ride', '3½')
    expect(panel.block('a').ownTotal).toBe(14)
    expect(panel.host.querySelector('.panel-total')!.textContent).toContain('you 3½')
    panel.type('you ride', '3-4')
    expect(panel.under('you ride')).toBe('You ride one setting. The range is for the class.')
    panel.type('you ride', '')
    expect(panel.block('a')).not.toHaveProperty('ownTotal')
  })

  it('is none of its own where it is the one the class is told', () => {
    openItem(one({ blocks: [aBlock('a', { resistance: { kind: 'total', from: 12, to: 12 } })] }), 'a')
    panel.type('you ride', '3')
    expect(panel.steps()).toBe(0)
  })
})

describe('a move', () => {
  const move = { move: { name: 'sway', counts: 8 } }
  const ride = one({ blocks: [aBlock('a', move), aBlock('b'), aBlock('c', { ...move, posture: 'standing' })] })

  it('leads to its first showing and to where it comes again', () => {
    openItem(ride, 'c')
    expect(panel.text()).toContain('first shown 0:00 a seated')
    panel.click('0:00 a')
    expect(panel.store.getState().selection.ids).toEqual(['a'])
    expect(panel.text()).toContain('comes again 1:04 c standing')
  })

  it('keeps its showings linked when it is called something else', () => {
    openItem(ride, 'c')
    panel.type('its name', 'swing')
    expect([panel.block('a').move!.name, panel.block('c').move!.name]).toEqual(['swing', 'swing'])
    expect(panel.steps()).toBe(1)
    expect(panel.text()).toContain('first shown')
  })
})

describe('a set', () => {
  it('counts its rounds down', () => {
    openItem(smallRide(), 'set')
    expect(panel.text()).toContain('three, two, last one')
    panel.type('rounds', '4')
    expect(panel.text()).toContain('four, three, two, last one')
  })
})

describe('a pace that changes without the knob', () => {
  it('is called beside it', () => {
    const blocks = [aBlock('a', { ...inSeconds(60), cadence: { rpm: 80 } }), aBlock('b', { ...inSeconds(60), cadence: { rpm: 92 } })]
    openItem({ ...smallRide(), sections: [aSection('s', { blocks })] }, 'b')
    expect([...panel.host.querySelectorAll('.panel-call q')].map((call) => call.textContent)).toEqual(['stay', 'faster, to 92'])
  })
})

describe('the words of a cue', () => {
  const cue = (text: string): Cue => ({ id: 'c', moment: 'announce', lead: { counts: 8 }, text })
  const saying = (text: string) =>
    one({ blocks: [aBlock('a'), aBlock('b', { resistance: { kind: 'change', mode: 'exact', steps: 3 }, cues: [cue(text)] })] })

  it('are mended in one press where they speak a wrong number', () => {
    openItem(saying('Half a turn on.'), 'b')
    expect(panel.text()).toContain('“Half a turn on” where the plan is “Three quarters of a turn on”')
    panel.click('Say “Three quarters of a turn on.”')
    expect(panel.block('b').cues[0]!.text).toBe('Three quarters of a turn on.')
    expect(panel.steps()).toBe(1)
    expect(panel.text()).not.toContain('where the plan is')
  })

  it('are offered where nothing is said, and taken in one press', () => {
    const ride = saying('')
    openItem(
      { ...ride, sections: ride.sections.map((section) => ({ ...section, blocks: [aBlock('a'), aBlock('b', { posture: 'standing' })] })) },
      'b',
    )
    panel.click('announce “Up.”')
    panel.click('add a count-in')
    expect(panel.block('b').cues.map(({ moment, text }) => [moment, text])).toEqual([
      ['announce', 'Up.'],
      ['countIn', ''],
    ])
    expect(panel.steps()).toBe(2)
  })

  it('go round the leader’s own form points', () => {
    openItem(one({ blocks: [aBlock('a', { length: { counts: 128 } })] }), 'a')
    panel.click('another form cue')
    panel.click(`form cue “${english.sentences.formPoints[1]}”`)
    expect(panel.block('a').cues).toMatchObject([{ moment: 'form', text: english.sentences.formPoints[1] }])
  })

  it('may be a story anywhere, with the room it has beside it', () => {
    openItem(one({ blocks: [aBlock('a', { length: { counts: 128 }, effort: { from: 2, to: 2 } })] }), 'a')
    expect(panel.text()).toContain('Room for 1:04 from 0:00, up to 149 words.')
    panel.type('add a story', 'We ride out before the town wakes.')
    expect(panel.block('a').cues).toMatchObject([{ moment: 'story', text: 'We ride out before the town wakes.' }])
    expect(panel.text()).toContain('0:00, song 0:00')
    panel.type('add a story', 'And home after it does.')
    expect(panel.block('a').cues).toHaveLength(2)
  })

  it('says where riders work too hard to listen, or nothing is free', () => {
    const hard = { length: { counts: 128 }, effort: { from: 9, to: 9 } }
    openItem(one({ blocks: [aBlock('a', hard), aBlock('b', hard)] }), 'b')
    expect(panel.text()).toContain('The build-up is too high here for riders to listen.')
    panel.type('add a story', 'Once upon a hill.')
    expect(panel.block('b').cues).toMatchObject([{ moment: 'story' }])
    openItem(one({ blocks: [aBlock('a', { length: { counts: 16 } }), aBlock('b')] }), 'a')
    expect(panel.text()).toContain('No room for a story here: 8 s free at most.')
  })
})

describe('the shape of the class', () => {
  it('is said in plain words, with how hard it is for its level', () => {
    openRide(demoRide('ridge'))
    const shape = panel.host.querySelector('[aria-label="shape"]')!.textContent!
    expect(shape).toContain('2 peaks, the last of the hardest efforts at 86% of the ride')
    expect(shape).toContain('24% of the riding at 7 or more; work : easy 0.44 : 1')
    expect(shape).toContain('36 of 100, within the 30 to 60 typical of a mixed class')
  })

  it('names what makes it hard, and the edit that moves it', () => {
    openRide({ ...demoRide('ridge'), level: 'beginner' })
    const reasons = [...panel.host.querySelectorAll('.panel-reasons li')]
    expect(reasons).toHaveLength(2)
    const edit = reasons.flatMap((reason) => [...reason.querySelectorAll<HTMLElement>('button')])[0]!
    const before = panel.store.getState().report!.difficulty.points
    act(() => edit.click())
    expect(panel.store.getState().report!.difficulty.points).toBeLessThan(before)
    expect(panel.steps()).toBe(1)
  })

  it('offers nothing easier in a class that is easy for its level', () => {
    openRide({ ...demoRide('ridge'), level: 'advanced' })
    expect(panel.text()).toContain('below the 60 to 100 typical of an advanced class')
    expect(panel.host.querySelectorAll('.panel-reasons button')).toHaveLength(0)
  })
})

describe('form points of one’s own', () => {
  it('are written one a line, kept for every ride, and added to the longer holds as one step', () => {
    openRide(one({ blocks: [aBlock('a', { length: { counts: 128 } }), aBlock('b'), aBlock('c', { length: { counts: 128 } })] }))
    panel.type('form cues, one per line', 'Heels quiet.\n\n  Eyes up.  ')
    expect(panel.store.getState().formPoints).toEqual(['Heels quiet.', 'Eyes up.'])
    expect(panel.steps()).toBe(0)
    panel.click('Add one to 2 longer holds')
    expect(['a', 'b', 'c'].map((id) => panel.block(id).cues.map(({ text }) => text))).toEqual([['Heels quiet.'], [], ['Eyes up.']])
    expect(panel.steps()).toBe(1)
    panel.type('form cues, one per line', 'x'.repeat(121))
    expect(panel.under('form cues, one per line')).toContain('too long to say in passing')
  })
})

describe('a version of another length', () => {
  it('leads back to the ride it was made from, while that is kept', async () => {
    const parent = demoRide('ridge')
    const variant = makeVariant(parent, 30, 'variant')
    openRide(variant.ride!)
    expect(panel.text()).not.toContain('made from')
    const openSaved = vi.fn()
    act(() =>
      panel.store.setState({
        openSaved,
        savedRides: [{ id: parent.id, title: parent.title, level: 'mixed', slotMinutes: 45, updated: 1 }],
      }),
    )
    expect(panel.text()).toContain('made from Ridge and Return, 45 minutes')
    panel.click('made from Ridge and Return, 45 minutes')
    expect(openSaved).toHaveBeenCalledWith(parent.id)
  })
})
