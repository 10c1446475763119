import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { drinkMoments, drinkStops } from '#engine/cues/drinkWords.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told as asTold } from '#tests/support/told.ts'

/** Whether a text, announced, is one that tells riders to drink. */
const tellsToDrink = (text: string): boolean => {
  const cue: Cue = { id: 'c', moment: 'announce', lead: { seconds: 8 }, text }
  return drinkMoments([], [{ cue, moment: 'announce', from: 0 } as CueLine], english).length > 0
}

describe('telling riders to drink', () => {
  it.each([
    'Drink.',
    'Sit. One and a quarter off. Drink.',
    'Grab a sip.',
    'Three quarters off. Sip. Rolling hills next.',
    'Hydrate!',
    'Bottles up.',
    'Reach for your bottle.',
    'Water.',
    'Water break.',
    'Easy legs, water if you need it.',
    'Get some water.',
    'Quick water, then we climb.',
    'Don’t forget to drink.',
    'Drink as much as you like.',
    'Take a sip before the climb.',
  ])('is %j', (text) => {
    expect(tellsToDrink(text)).toBe(true)
  })

  it.each([
    'Legs like water over rocks.',
    'Smooth as water.',
    'The road runs along the water.',
    'Water runs over the rocks below us.',
    'Drink it in, this view is yours.',
    'Don’t drink yet.',
    'No water until the top.',
    'Drink later.',
    'Water after this one.',
    'Don’t bottle it up.',
    'Hold your line.',
    '',
  ])('is not %j', (text) => {
    expect(tellsToDrink(text)).toBe(false)
  })
})

describe('a class without a drink', () => {
  /** Fifty minutes of ten-minute blocks. */
  const ride = (cue?: Partial<Cue> & { text: string }): Ride => ({
    ...smallRide(),
    sections: [
      aSection('s', {
        blocks: ['a', 'b', 'c', 'd', 'e'].map((id) =>
          aBlock(id, {
            ...inSeconds(600),
            cues: id === 'c' && cue ? [{ id: 'x', moment: 'announce', lead: { seconds: 8 }, ...cue }] : [],
          }),
        ),
      }),
    ],
  })
  const dry = (one: Ride) => computeRide(one).findings.find(({ rule }) => rule === 'water')

  it('has one where a cue says so, at the moment it says it', () => {
    expect(asTold(dry(ride())?.text)).toBe('No water break for 50:00. In a warm room, sooner is better.')
    // Said ten seconds before the third block.
    expect(asTold(dry(ride({ text: 'Grab a sip.' }))?.text)).toContain('30:09')
    expect(asTold(dry(ride({ text: 'Grab a sip.', moment: 'form', lead: { seconds: 300 } }))?.text)).toMatch(/^No water break for 25:0\d\./)
  })

  it('has none in a story, a preview or a comparison', () => {
    for (const moment of ['story', 'preview'] as const)
      expect(asTold(dry(ride({ text: 'We stop and drink.', moment }))?.text)).toContain('50:00')
    expect(asTold(dry(ride({ text: 'Legs like water.' }))?.text)).toContain('50:00')
  })

  it('counts a marked drink as before', () => {
    const marked = ride()
    Object.assign(marked.sections[0]!.blocks, { 2: { ...aBlock('c', inSeconds(600)), water: true } })
    expect(asTold(dry(marked)?.text)).toContain('30:00')
  })
})

it('counts a drink that is marked and told as one, as it does one told twice within a minute', () => {
  const told = (text: string, from: number) => ({ cue: { id: 'c', moment: 'announce', text }, moment: 'announce', from }) as CueLine
  const marked = { block: { water: true }, from: 300, to: 360 } as PlayedBlock
  const lines = [told('Grab a sip.', 310), told('Bottles up.', 700), told('Drink some more.', 730), told('Drink.', 1200)]
  expect(drinkMoments([marked], lines, english)).toEqual([300, 310, 700, 730, 1200])
  expect(drinkStops([marked], lines, english)).toEqual([300, 700, 1200])
  expect(drinkStops([{ ...marked, to: 300 }], [], english)).toEqual([])
})
