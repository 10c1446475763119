// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Cue, Ride } from '#plan/model.ts'
import type { AppStore } from '#store/state.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { openPanel, type Panel } from './openPanel.tsx'

let panel: Panel
const open = (ride: Ride, select: (store: AppStore) => void) => {
  panel = openPanel(ride, select)
}
const openBlock = (id: string, ride = smallRide()) => open(ride, (store) => store.getState().selectItem(id))
afterEach(() => panel.close())

/** The small ride with its first block changed. */
function rideWith(change: Parameters<typeof aBlock>[1], song = {}): Ride {
  const ride = smallRide()
  return {
    ...ride,
    sections: [
      aSection('song', { song: aSong('first', song), blocks: [aBlock('a', change), aBlock('b'), aBlock('c')] }),
      ...ride.sections.slice(1),
    ],
  }
}

describe('the header of a block', () => {
  it('says what it is, where it stands, its total and its call', () => {
    const ride = demoRide('spark')
    const run = ride.sections[2]!.blocks[1]!
    openBlock(run.id, ride)
    expect(panel.host.querySelector('h2')!.textContent).toBe('standing run')
    expect(panel.text()).toContain('6:19 · 8 eights · 24 s · song 3, on the phrase')
    expect(panel.host.querySelector('.panel-total')!.textContent).toBe('1½ turns over base')
    expect(panel.host.querySelector('.panel-call')!.textContent).toBe('three quarters on ¾ → 1½')
  })

  it('counts one turn and less in the singular', () => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 2 } }))
    expect(panel.host.querySelector('.panel-total')!.textContent).toBe('½ turn over base')
  })

  it('says of a part which round it is shown in, and that a change changes all', () => {
    openBlock('push')
    expect(panel.text()).toContain('part 1 of a set, round 1 of 3; a change here changes every round')
  })
})

describe('the knob', () => {
  it.each([
    ['1 3/4', 7],
    ['1¾', 7],
    ['1.75', 7],
    ['1,75 turns', 7],
  ])('takes a total written %s', (text, steps) => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 2 } }))
    panel.type('to', text)
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: steps, to: steps })
    expect(panel.steps()).toBe(1)
    expect(panel.host.querySelector('.panel-total b')!.textContent).toBe('1¾')
  })

  it('keeps what it cannot read, says why, and changes nothing', () => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 2 } }))
    panel.type('to', '1.3')
    expect((panel.field('to') as HTMLInputElement).value).toBe('1.3')
    expect(panel.field('to').getAttribute('aria-invalid')).toBe('true')
    expect(panel.under('to')).toBe('This bike has no such step: the nearest are 1¼ and 1½.')
    expect(panel.steps()).toBe(0)
    panel.press('to', 'Escape')
    expect((panel.field('to') as HTMLInputElement).value).toBe('½')
    expect(panel.field('to').getAttribute('aria-invalid')).toBe('false')
  })

  it('refuses a total the bike does not have', () => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 2 } }))
    panel.type('to', '19')
    expect(panel.under('to')).toBe('On this bike resistance goes from −2 to 18 turns.')
  })

  it('takes a range and an aim inside it, and drops an aim that a new range leaves out', () => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 2 } }))
    panel.type('to', '1-2')
    panel.type('aim at', '2½')
    expect(panel.under('aim at')).toBe('Aim at one setting from 1–2.')
    panel.type('aim at', '1½')
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 4, to: 8, aim: 6 })
    panel.type('to', '2-3')
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 8, to: 12 })
  })

  it('turns a total into the change it stands for, and back', () => {
    openBlock('b', rideWith({ resistance: { kind: 'total', from: 3, to: 3 } }))
    panel.choose('knob', 'total')
    panel.type('to', '1½')
    panel.choose('knob', 'add')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'exact', steps: 3 })
    panel.choose('knob', 'total')
    expect(panel.block('b').resistance).toEqual({ kind: 'total', from: 6, to: 6 })
  })

  it('reads the direction of a change from what is typed, else keeps it', () => {
    openBlock('a', rideWith({ resistance: { kind: 'change', mode: 'exact', steps: -3 } }))
    panel.type('by', '½')
    expect(panel.block('a').resistance).toMatchObject({ steps: -2 })
    panel.type('by', '+1/4')
    expect(panel.block('a').resistance).toMatchObject({ steps: 1 })
    panel.type('by', '¾ off')
    expect(panel.block('a').resistance).toMatchObject({ steps: -3 })
    panel.type('by', '0')
    expect(panel.under('by')).toBe('A change is at least one step. For none, choose “stay”.')
  })

  it('keeps a checkpoint with a change, and takes it away when it is emptied', () => {
    openBlock('a', rideWith({ resistance: { kind: 'change', mode: 'exact', steps: 4 } }))
    panel.choose('how', 'atLeast')
    panel.type('should be at', '5–6')
    expect(panel.block('a').resistance).toEqual({ kind: 'change', mode: 'atLeast', steps: 4, checkpoint: { from: 20, to: 24 } })
    panel.choose('knob', 'takeOff')
    expect(panel.block('a').resistance).toMatchObject({ steps: -4, checkpoint: { from: 20, to: 24 } })
    panel.type('should be at', '')
    expect(panel.block('a').resistance).toEqual({ kind: 'change', mode: 'exact', steps: -4 })
  })

  it.each(['3+', '3 or more', 'at least 3', 'to at least 3 turns'])('takes %s as a total without an upper end', (text) => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 2, to: 4, aim: 3 } }))
    panel.type('to', text)
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 12, to: 12, orMore: true })
    expect((panel.field('to') as HTMLInputElement).value).toBe('3 or more')
    expect(panel.host.querySelector('.panel-total b')!.textContent).toBe('3 or more')
    expect(panel.host.querySelector('.panel-call')!.textContent).toContain('to at least three')
    expect(panel.host.textContent).not.toContain('aim at')
    panel.press('to', 'ArrowUp')
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 13, to: 13, orMore: true })
    panel.type('to', '2')
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 8, to: 8 })
    expect(panel.steps()).toBe(3)
  })

  it('takes an open total by feel and as a checkpoint, and refuses it where one total is meant', () => {
    openBlock('a', rideWith({ resistance: { kind: 'byFeel', from: 2, to: 4 } }))
    panel.type('about', '2 or more')
    expect(panel.block('a').resistance).toEqual({ kind: 'byFeel', from: 8, to: 8, orMore: true })
    panel.choose('knob', 'total')
    expect(panel.block('a').resistance).toEqual({ kind: 'total', from: 8, to: 8, orMore: true })
    panel.type('should be at', 'at least 3')
    expect(panel.block('a').resistance).toMatchObject({ checkpoint: { from: 12, to: 12, orMore: true } })
    panel.type('you ride', '3+')
    expect(panel.under('you ride')).toBe('You ride one setting. The range is for the class.')
    expect((panel.field('you ride') as HTMLInputElement).value).toBe('3+')
    panel.type('to', '2–4')
    panel.type('aim at', '3+')
    expect(panel.under('aim at')).toBe('Aim at one setting from 2–4.')
    expect(panel.block('a').resistance).toMatchObject({ kind: 'total', from: 8, to: 16 })
  })

  it('keeps a checkpoint with a stay and a total, through every kind that says one', () => {
    openBlock('b', rideWith({ resistance: { kind: 'total', from: 4, to: 4 } }))
    panel.type('should be at', '1–2')
    const checkpoint = { from: 4, to: 8 }
    expect(panel.block('b').resistance).toEqual({ kind: 'keep', checkpoint })
    panel.choose('knob', 'total')
    expect(panel.block('b').resistance).toEqual({ kind: 'total', from: 4, to: 4, checkpoint })
    panel.choose('knob', 'add')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'exact', steps: 2, checkpoint })
    panel.choose('knob', 'stay')
    expect(panel.block('b').resistance).toEqual({ kind: 'keep', checkpoint })
    for (const kind of ['byFeel', 'allOff']) {
      panel.choose('knob', kind)
      expect(panel.host.textContent).not.toContain('should be at')
      expect(panel.block('b').resistance).not.toHaveProperty('checkpoint')
    }
    act(() => void panel.store.getState().undo())
    act(() => void panel.store.getState().undo())
    expect(panel.block('b').resistance).toEqual({ kind: 'keep', checkpoint })
  })

  it('says "at least" and "if you have it" of one way only', () => {
    const added = { kind: 'change', mode: 'atLeast', steps: 4 } as const
    openBlock('b', rideWith({ resistance: { kind: 'total', from: 8, to: 8 } }))
    panel.choose('knob', 'add')
    panel.choose('how', 'atLeast')
    panel.type('by', '1')
    expect(panel.block('b').resistance).toEqual(added)
    panel.choose('knob', 'takeOff')
    expect(panel.block('b').resistance).toEqual({ ...added, mode: 'exact', steps: -4 })
    panel.choose('how', 'ifYouHaveIt')
    panel.type('by', '½ on')
    expect(panel.block('b').resistance).toEqual({ ...added, mode: 'exact', steps: 2 })
    panel.choose('how', 'atLeast')
    panel.choose('knob', 'total')
    expect(panel.block('b').resistance).toEqual({ kind: 'total', from: 10, to: 10 })
    panel.choose('knob', 'add')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'exact', steps: 2 })
    panel.type('by', '½ or more')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'atLeast', steps: 2 })
    panel.press('by', 'ArrowUp')
    expect(panel.block('b').resistance).toEqual({ kind: 'change', mode: 'atLeast', steps: 3 })
    panel.type('by', '1–2')
    expect(panel.under('by')).toBe('A change is one amount, such as ½. For at least that much, write ½ or more.')
    expect(panel.block('b').resistance).toMatchObject({ steps: 3 })
  })

  it('steps with the arrows, a whole unit with Shift, and never off the bike', () => {
    openBlock('a', rideWith({ resistance: { kind: 'total', from: 66, to: 70 } }))
    panel.press('to', 'ArrowUp')
    expect(panel.block('a').resistance).toMatchObject({ from: 67, to: 71 })
    panel.press('to', 'ArrowUp', { shiftKey: true })
    expect(panel.block('a').resistance).toMatchObject({ from: 68, to: 72 })
  })
})

describe('length', () => {
  it('is typed in eights and counts under a song', () => {
    openBlock('a')
    panel.type('length', '8+4')
    expect(panel.block('a').length).toEqual({ counts: 68 })
    panel.type('length', '36 counts')
    expect(panel.block('a').length).toEqual({ counts: 36 })
    expect((panel.field('length') as HTMLInputElement).value).toBe('4+4')
  })

  it('is typed in minutes and seconds off the beat', () => {
    openBlock('x')
    panel.type('length', '1:30')
    expect(panel.block('x').length).toEqual({ seconds: 90 })
    panel.type('length', '1:75')
    expect(panel.under('length')).toBe('Seconds after the colon run from 00 to 59.')
  })

  it('steps to the next whole eight, or by counts with Shift', () => {
    openBlock('a', rideWith({ length: { counts: 66 } }))
    panel.press('length', 'ArrowUp')
    expect(panel.block('a').length).toEqual({ counts: 72 })
    panel.press('length', 'ArrowDown', { shiftKey: true })
    expect(panel.block('a').length).toEqual({ counts: 71 })
    panel.press('length', 'ArrowDown')
    expect(panel.block('a').length).toEqual({ counts: 64 })
  })
})

describe('cadence', () => {
  it('follows the song until it is stated, and returns to it', () => {
    openBlock('a')
    expect((panel.field('cadence') as HTMLSelectElement).selectedOptions[0]!.textContent).toBe('with the song, 60 rpm')
    panel.choose('cadence', 'stated')
    expect(panel.block('a')).toMatchObject({ cadence: { rpm: 60 }, strikesPerBeat: null })
    panel.type('ramp to', '85')
    expect(panel.block('a').cadence).toEqual({ rpm: 60, rampTo: 85 })
    panel.choose('cadence', 'song')
    expect(panel.block('a')).not.toHaveProperty('cadence')
    expect(panel.block('a')).not.toHaveProperty('strikesPerBeat')
  })

  it('may be strikes of its own, or legs still', () => {
    openBlock('a')
    panel.choose('cadence', 'two')
    expect(panel.block('a').strikesPerBeat).toBe(2)
    panel.choose('cadence', 'still')
    expect(panel.block('a').cadence).toBe('legsStill')
    expect(panel.block('a')).not.toHaveProperty('strikesPerBeat')
  })
})

describe('effort', () => {
  it('is a slider of eleven levels in own words, and may be a ramp', () => {
    openBlock('a')
    expect(panel.field('effort').getAttribute('aria-valuetext')).toBe('4 of 10, steady, full sentences')
    panel.press('effort', '7')
    expect(panel.block('a').effort).toEqual({ from: 7, to: 7 })
    expect(panel.text()).toContain('7 of 10, short phrases')
    panel.click('make it a ramp')
    expect(panel.block('a').effort).toEqual({ from: 7, to: 8 })
    panel.press('effort, end', '9')
    expect(panel.block('a').effort).toEqual({ from: 7, to: 9 })
    panel.click('make it level')
    expect(panel.block('a').effort).toEqual({ from: 9, to: 9 })
    expect(panel.steps()).toBe(4)
  })
})

describe('demand', () => {
  it('is about what the block asks of each rider, to the nearest half level, in a range', () => {
    const ride = demoRide('spark')
    const run = ride.sections[2]!.blocks[1]!
    openBlock(run.id, ride)
    const { blocks, riders } = computeRide(ride)
    const index = blocks.findIndex(({ block }) => block.id === run.id)
    const rows = [...panel.host.querySelectorAll('.panel-demand li')].map((row) => row.textContent!.split(' '))
    expect(rows.map(([name]) => name)).toEqual(['new', 'regular', 'strong'])
    const numberOf = (level: string) => Number(level.replace('½', '.5'))
    for (const [row, [, about, level, range]] of rows.entries()) {
      expect(about).toBe('about')
      expect(Math.abs(numberOf(level!) - riders[row]!.demand[index]!.mean)).toBeLessThanOrEqual(0.25)
      const [low, high] = range!.split('–').map(numberOf)
      expect(low).toBeLessThan(numberOf(level!))
      expect(high).toBeGreaterThan(numberOf(level!))
    }
  })
})

describe('posture, foot and move', () => {
  it('are chosen by name', () => {
    openBlock('a')
    panel.click('standing')
    panel.click('ends')
    panel.choose('lead foot', 'swap')
    expect(panel.block('a')).toMatchObject({ posture: 'standing', hands: 'ends', lead: 'swap' })
    panel.choose('lead foot', 'keep')
    expect(panel.block('a')).not.toHaveProperty('lead')
  })

  it('says which foot lands on the one', () => {
    const ride = demoRide('spark')
    openBlock(ride.sections[2]!.blocks[6]!.id, ride)
    expect(panel.text()).toContain('right lands on beat 1, said to riders')
  })

  it('takes a move of the trade with its usual counts, or one of one’s own', () => {
    openBlock('a')
    panel.choose('move', 'travel-back')
    expect(panel.block('a').move).toEqual({ name: 'travel-back', counts: 4 })
    panel.type('on', '8')
    panel.choose('first side', 'left')
    panel.click('then alternate sides')
    expect(JSON.stringify(panel.block('a').move)).toBe('{"name":"travel-back","counts":8,"side":"left","then":"alternate"}')
    panel.choose('move', 'own')
    panel.type('its name', 'windmill')
    expect(panel.block('a').move).toMatchObject({ name: 'windmill', counts: 8 })
    panel.choose('move', 'none')
    expect(panel.block('a')).not.toHaveProperty('move')
  })
})

describe('cues', () => {
  it('are added from the last line, which is then free for the next', () => {
    openBlock('a')
    panel.type('add a cue', 'Half turn on.')
    expect(panel.block('a').cues).toMatchObject([{ id: 'n1', moment: 'form', text: 'Half turn on.' }])
    // Said as the block begins; what is added next is said after it.
    expect(panel.text()).toContain('at 0:00')
    expect((panel.field('add a cue') as HTMLTextAreaElement).value).toBe('')
    panel.type('add a cue', 'Heels down.')
    expect(panel.block('a').cues.map(({ moment }) => moment)).toEqual(['form', 'form'])
    expect(panel.text()).toContain('at 0:02')
    panel.click('remove cue 1')
    expect(panel.block('a').cues.map(({ text }) => text)).toEqual(['Heels down.'])
    expect(panel.steps()).toBe(3)
  })

  describe('of one block', () => {
    const cue = (id: string, moment: Cue['moment'], counts: number): Cue => ({ id, moment, lead: { counts }, text: `${id} words` })
    const openThem = () =>
      openBlock('b', {
        ...rideWith({}),
        sections: [
          aSection('song', {
            song: aSong('first'),
            blocks: [
              aBlock('a'),
              aBlock('b', {
                cues: [cue('form', 'form', 20), cue('go', 'action', 0), cue('preview', 'preview', 32), cue('call', 'announce', 8)],
              }),
            ],
          }),
        ],
      })
    const listed = () => [1, 2, 3, 4].map((place) => (panel.field(`cue ${place}, words`) as HTMLTextAreaElement).value.split(' ')[0])

    it('stand in the order they are spoken, however they were written', () => {
      openThem()
      expect(listed()).toEqual(['preview', 'call', 'go', 'form'])
      expect(panel.block('b').cues.map(({ id }) => id)).toEqual(['form', 'go', 'preview', 'call'])
    })

    it('keep still under the hand that moves one, and settle when it is gone', () => {
      openThem()
      const lead = () => panel.field('cue 1, finishes before the change')
      act(() => lead().focus())
      panel.type('cue 1, finishes before the change', '4')
      expect(listed()).toEqual(['preview', 'call', 'go', 'form'])
      act(() => lead().blur())
      expect(listed()).toEqual(['call', 'preview', 'go', 'form'])
    })

    it('go where their moment usually stands when it is chosen, and back in one step', () => {
      openThem()
      act(() => panel.field('cue 2, moment').focus())
      panel.choose('cue 2, moment', 'form')
      expect(panel.block('b').cues[3]).toMatchObject({ moment: 'form', lead: { counts: 1000 } })
      expect(panel.field('cue 2, finishes before the change')).toHaveProperty('value', 'as it begins')
      act(() => panel.store.getState().undo())
      expect(panel.block('b').cues[3]).toMatchObject({ moment: 'announce', lead: { counts: 8 } })
    })

    it('step off the start of their block and back, and take it by name', () => {
      openThem()
      act(() => panel.field('cue 2, moment').focus())
      panel.choose('cue 2, moment', 'form')
      const lead = 'cue 2, finishes before the change'
      panel.press(lead, 'ArrowDown')
      // Two words take 2.5 counts of the block's 64 at two a second.
      expect(panel.block('b').cues[3]).toMatchObject({ lead: { counts: 60 } })
      panel.press(lead, 'ArrowUp')
      expect(panel.block('b').cues[3]).toMatchObject({ lead: { counts: 1000 } })
      panel.type(lead, '16')
      expect(panel.block('b').cues[3]).toMatchObject({ lead: { counts: 16 } })
      panel.type(lead, 'start')
      expect(panel.block('b').cues[3]).toMatchObject({ lead: { counts: 1000 } })
      panel.type(lead, 'sometime')
      expect(panel.under(lead)).toBe('Write counts, such as 8, seconds, such as 3 s, or “start”.')
      panel.type('cue 1, finishes before the change', 'start')
      expect(panel.under('cue 1, finishes before the change')).toBe('Write counts, such as 8, or seconds, such as 3 s.')
    })
  })

  it('are taken on Enter, and the line stays in hand', () => {
    openBlock('a')
    panel.draft('add a cue', 'Half turn on.')
    panel.press('add a cue', 'Enter')
    expect(panel.block('a').cues.map(({ text }) => text)).toEqual(['Half turn on.'])
    expect(document.activeElement).toBe(panel.field('add a cue'))
    expect((panel.field('add a cue') as HTMLTextAreaElement).value).toBe('')
  })

  it('say the seconds they need and have, and when they start on both clocks', () => {
    openBlock('b', {
      ...rideWith({}),
      sections: [
        aSection('song', {
          song: aSong('first'),
          blocks: [
            aBlock('a'),
            aBlock('b', { cues: [{ id: 'c', moment: 'announce', lead: { counts: 8 }, text: 'Half turn on and rise.' }] }),
          ],
        }),
      ],
    })
    // 64 counts at half a second; the words end 8 counts before; five short ones at 140 a minute take 1.6 s and a pause of 0.4 s.
    expect(panel.host.querySelector('.panel-cue')!.textContent).toContain('needs 2 s, has 28 s · at 0:26, song 0:26')
  })

  it('end so many counts or seconds before their change', () => {
    openBlock('a', rideWith({ cues: [{ id: 'c', moment: 'announce', lead: { counts: 8 }, text: 'On.' }] }))
    panel.type('cue 1, finishes before the change', '2 eights')
    expect(panel.block('a').cues[0]!.lead).toEqual({ counts: 16 })
    panel.type('cue 1, finishes before the change', '3 s')
    expect(panel.block('a').cues[0]!.lead).toEqual({ seconds: 3 })
    panel.type('cue 1, finishes before the change', 'soon')
    expect(panel.under('cue 1, finishes before the change')).toBe('Write counts, such as 8, or seconds, such as 3 s.')
    panel.choose('cue 1, moment', 'countIn')
    expect(panel.block('a').cues[0]).toMatchObject({ moment: 'countIn', count: 4 })
    panel.choose('cue 1, count-in', '8')
    expect(panel.block('a').cues[0]).toMatchObject({ moment: 'countIn', count: 8 })
    panel.choose('cue 1, moment', 'action')
    expect(panel.block('a').cues[0]).not.toHaveProperty('count')
  })
})

describe('what is rarely used', () => {
  it('is folded while empty and open where it holds something', () => {
    openBlock('a', rideWith({ easier: { text: 'stay seated' } }))
    const folds = [...panel.host.querySelectorAll('details')]
    expect(folds.map((fold) => [fold.querySelector('summary')!.textContent, fold.open])).toEqual([
      ['options and feel', true],
      ['water, walk, all-out', false],
      ['lock and fitting', false],
      ['notes', false],
    ])
  })

  it('hides no value when it is folded by hand', () => {
    openBlock('a', rideWith({ water: true, walk: true }))
    const fold = panel.host.querySelectorAll('details')[1]!
    act(() => {
      fold.open = false
      fold.dispatchEvent(new Event('toggle'))
    })
    expect(fold.querySelector('summary')!.textContent).toBe('water, walk, all-out water, walk')
  })

  it('takes fields out again', () => {
    openBlock('a', rideWith({ easier: { text: 'stay seated' }, water: true, minEights: 4, maxEights: 8, notes: 'n' }))
    panel.type('easier', '')
    panel.click('water riders drink here')
    panel.type('at least', '9')
    expect(panel.under('at least')).toBe('At least can’t be more than at most.')
    panel.type('at most', '')
    panel.type('at least', '9')
    const { easier, water, minEights, maxEights } = panel.block('a')
    expect({ easier, water, minEights, maxEights }).toEqual({ easier: undefined, water: undefined, minEights: 9, maxEights: undefined })
  })

  it('names who leads only when there are two', () => {
    openBlock('a')
    expect(panel.text()).not.toContain('on the mic')
    panel.close()
    const ride = demoRide('spark')
    openBlock(ride.sections[0]!.blocks[0]!.id, ride)
    const [first, second] = ride.leaders
    panel.choose('leads', second!.id)
    expect(panel.block(ride.sections[0]!.blocks[0]!.id).leader).toBe(second!.id)
    panel.choose('leads', first!.id)
    expect(panel.block(ride.sections[0]!.blocks[0]!.id)).not.toHaveProperty('leader')
  })
})
