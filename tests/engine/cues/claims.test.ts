import { describe, expect, it } from 'vitest'
import type { Claim } from '#engine/cues/claim.ts'
import { readClaims } from '#engine/cues/claims.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { numberAt } from '#engine/cues/numberPhrase.ts'
import { tokensOf } from '#engine/cues/tokens.ts'
import { numberWords } from '#engine/ledger/numberWords.ts'
import { placeWords, sizeWords } from '#engine/ledger/settingWords.ts'

const claims = (text: string, unit = 'turn') =>
  readClaims(text, unit).map(({ from, to, figures: _, ...claim }) => ({ ...claim, words: text.slice(from, to) }))
type About<A extends Claim['about']> = Partial<Extract<Claim, { about: A }>> & { about: A; words: string }
const change = (value: number, words: string, verb = false): About<'change'> => ({ about: 'change', value, verb, words })

describe('numbers as they are spoken', () => {
  it.each([
    ['one', 1],
    ['twenty-four', 24],
    ['forty five', 45],
    ['ninety', 90],
    ['1½', 1.5],
    ['1 ½', 1.5],
    ['¾', 0.75],
    ['3/4', 0.75],
    ['2.5', 2.5],
    ['2,5', 2.5],
    ['half', 0.5],
    ['a half', 0.5],
    ['a quarter', 0.25],
    ['three quarters', 0.75],
    ['one and a quarter', 1.25],
    ['one and three quarters', 1.75],
    ['two and a half', 2.5],
    ['2 and a half', 2.5],
    ['twelve', 12],
    ['nought', 0],
    ['a hundred', 100],
    ['two hundred', 200],
    ['one hundred and thirty', 130],
    ['one hundred thirty-five', 135],
    ['one hundred and a half', 100.5],
    ['five sixths', 5 / 6],
    ['1 1/4', 1.25],
    ['nought point eight', 0.8],
    ['one point nought five', 1.05],
    ['twelve point three', 12.3],
  ])('reads %s as %d', (text, value) => {
    expect(numberAt(tokensOf(text), 0)?.value).toBeCloseTo(value, 12)
    expect(numberAt(tokensOf(text), 0)?.next).toBe(tokensOf(text).length)
  })

  it('reads every number it says itself, as whole numbers, sizes and places of any scale', () => {
    const readsAs = (text: string, value: number, places = 3) => {
      const read = numberAt(tokensOf(text), 0)
      expect(read?.value, text).toBeCloseTo(value, places)
      return read!.next
    }
    for (let value = 0; value <= 999; value++) expect(readsAs(numberWords(value), value)).toBe(tokensOf(numberWords(value)).length)
    for (let stepsPerUnit = 1; stepsPerUnit <= 10; stepsPerUnit++) {
      const bike = { unit: 'turn', stepsPerUnit }
      for (let steps = 1; steps <= 40; steps++) {
        readsAs(sizeWords(steps, bike), steps / stepsPerUnit)
        expect(readsAs(placeWords(steps, bike), steps / stepsPerUnit)).toBe(tokensOf(placeWords(steps, bike)).length)
      }
    }
  })

  it.each([
    ['A turn and a half on.', change(1.5, 'A turn and a half on')],
    ['Two turns and a quarter off.', change(-2.25, 'Two turns and a quarter off')],
    ['Add a turn and a quarter.', change(1.25, 'Add a turn and a quarter', true)],
    ['1 1/4 on.', change(1.25, '1 1/4 on')],
    ['A turn on.', change(1, 'A turn on')],
    ['Add a full turn.', change(1, 'Add a full turn', true)],
    ['Take a whole turn off.', change(-1, 'Take a whole turn off', true)],
  ])('reads the unit inside %s', (text, read) => {
    expect(claims(text)).toEqual([read])
  })

  it('stops where a clause ends', () => {
    expect(numberAt(tokensOf('One hundred, and thirty seconds'), 0)).toMatchObject({ value: 100, next: 2 })
    expect(numberAt(tokensOf('One point, five left'), 0)).toMatchObject({ value: 1, next: 1 })
    expect(numberAt(tokensOf('One hundred and up'), 0)).toMatchObject({ value: 100, next: 2 })
  })

  it.each(['a', 'on', 'quick', 'to', ''])('reads no number in %j', (text) => {
    expect(numberAt(tokensOf(text), 0)).toBeNull()
  })

  it.each([
    ['Light base, hands soft.', 4],
    ['Twenty-four seconds.', 3],
    ['24 seconds', 3],
    ['1½ on', 5],
    ['¾ off', 3],
    ['4-3-2-1', 4],
    ['125 watts', 6],
    ["Don't bounce", 2],
    ['', 0],
    ['…', 0],
  ])('counts %j as %d words', (text, words) => {
    expect(countWords(text)).toBe(words)
  })
})

describe('what a cue claims', () => {
  it.each([
    ['Half turn on. Feel the road.', [change(0.5, 'Half turn on')]],
    ['One and a quarter on, then go.', [change(1.25, 'One and a quarter on')]],
    ['Half a turn off', [change(-0.5, 'Half a turn off')]],
    ['¾ off, sip.', [change(-0.75, '¾ off')]],
    ['1½ turns on', [change(1.5, '1½ turns on')]],
    ['A quarter of a turn on', [change(0.25, 'A quarter of a turn on')]],
    ['Two more turns? No: two turns more.', [change(2, 'two turns more')]],
    ['Add one and a half.', [change(1.5, 'Add one and a half', true)]],
    ['Take half a turn off and sit.', [change(-0.5, 'Take half a turn off', true)]],
    ['Take one off', [change(-1, 'Take one off', true)]],
    ['Add a quarter turn on four', [change(0.25, 'Add a quarter turn on', true)]],
    ['Sit. Same gear.', [{ about: 'stay', words: 'Same gear' }]],
    ['Sit, keep it on.', [{ about: 'stay', words: 'keep it on' }]],
  ])('reads the resistance in %j', (text, expected) => {
    expect(claims(text)).toEqual(expected)
  })

  it('knows the bike’s own unit', () => {
    expect(claims('Two levels on', 'level')).toEqual([change(2, 'Two levels on')])
    expect(claims('Two cogs on', 'cog')).toEqual([change(2, 'Two cogs on')])
    expect(claims('Back to five to six turns')).toEqual([{ about: 'total', low: 5, high: 6, words: 'five to six turns' }])
    expect(claims('up to two and a half')).toEqual([{ about: 'total', low: 2.5, high: 2.5, words: 'two and a half' }])
    expect(claims('to at least three turns')).toEqual([{ about: 'total', low: 3, high: null, words: 'at least three turns' }])
    expect(claims('be at two and a half or more')).toEqual([{ about: 'total', low: 2.5, high: null, words: 'two and a half or more' }])
    expect(claims('at least three rounds')).toEqual([{ about: 'rounds', value: 3, words: 'three rounds' }])
  })

  it.each([
    ['Twenty seconds.', 20, undefined],
    ['Hold one minute.', 60, undefined],
    ['Half a minute', 30, undefined],
    ['One and a half minutes', 90, undefined],
    ['Nearly a minute easy.', 60, 'near'],
    ['All under a minute.', 60, 'under'],
    ['90 s', 90, undefined],
    ['Last thirty.', 30, undefined],
    ['Up, thirty to the top.', 30, undefined],
    ['Over 40 seconds', 40, 'over'],
    ['A minute and a half.', 90, undefined],
    ['Under two minutes and a quarter', 135, 'under'],
  ])('reads the time in %j', (text, value, bound) => {
    expect(claims(text).filter(({ about }) => about === 'seconds')).toEqual([expect.objectContaining({ value, ...(bound && { bound }) })])
  })

  it.each([
    ['Three pushes next.', { about: 'ahead', value: 3, kind: 'push' }],
    ['Three small hills.', { about: 'ahead', value: 3, kind: 'hill' }],
    ['Four surges, then home.', { about: 'ahead', value: 4, kind: 'surge' }],
    ['Surge two.', { about: 'place', value: 2, kind: 'surge' }],
    ['Hill 1', { about: 'place', value: 1, kind: 'hill' }],
    ['Step two again.', { about: 'place', value: 2, kind: 'step' }],
    ['Last one. Go.', { about: 'left', value: 0 }],
    ['Last push!', { about: 'left', value: 0, kind: 'push' }],
    ['One climb left.', { about: 'left', value: 1, kind: 'climb' }],
    ['Two to go', { about: 'left', value: 2 }],
    ['Two pushes to go', { about: 'left', value: 2, kind: 'push' }],
    ['Three rounds.', { about: 'rounds', value: 3 }],
    ['Hips home, on fours.', { about: 'moveCounts', value: 4 }],
    ['Eight up, eight down.', { about: 'moveCounts', value: 8, pair: true }],
    ['Up sixteen, down sixteen.', { about: 'moveCounts', value: 16, pair: true }],
    ['Four of each.', { about: 'each', value: 4 }],
  ])('reads what is counted in %j', (text, expected) => {
    expect(claims(text)).toEqual([expect.objectContaining(expected)])
  })

  it.each([
    'Up in four.',
    'Left four, right four.',
    'Thirty on, forty off.',
    'Every thirty seconds a breath.',
    'Half way, ten seconds left.',
    'A step at a time.',
    'It is your turn on the floor.',
    'Twenty to thirty seconds.',
    'Right foot on the one.',
    'Left foot leads this one.',
    'Option: half a turn off, last one.',
    '',
  ])('claims nothing where words leave it open: %j', (text) => {
    expect(claims(text)).toEqual([])
  })
})
