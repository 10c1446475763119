import { describe, expect, it } from 'vitest'
import { countWords } from '#engine/cues/countWords.ts'
import { tokensOf } from '#engine/cues/tokens.ts'
import { numberAt, rateAt } from '#engine/speech/english/claims/numberAt.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import { placeWords, sizeWords } from '#engine/speech/english/settingWords.ts'

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
    ['none', 0],
    ['a hundred', 100],
    ['two hundred', 200],
    ['one hundred and thirty', 130],
    ['one hundred thirty-five', 135],
    ['one hundred and a half', 100.5],
    ['a third', 1 / 3],
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

  it('reads “one ten” of legs and beats alone', () => {
    expect(rateAt(tokensOf('one ten'), 0)).toMatchObject({ value: 110, next: 2 })
    expect(rateAt(tokensOf('one twenty-eight'), 0)).toMatchObject({ value: 128, next: 3 })
    expect(numberAt(tokensOf('one ten'), 0)).toMatchObject({ value: 1, next: 1 })
  })

  it('stops where a clause ends', () => {
    expect(numberAt(tokensOf('One hundred, and thirty seconds'), 0)).toMatchObject({ value: 100, next: 2 })
    expect(numberAt(tokensOf('One point, five left'), 0)).toMatchObject({ value: 1, next: 1 })
    expect(numberAt(tokensOf('One hundred and up'), 0)).toMatchObject({ value: 100, next: 2 })
  })

  it('makes no decimal of numbers that are counted down', () => {
    expect(tokensOf('5,4,3,2,1').map(({ word }) => word)).toEqual(['5', '4', '3', '2', '1'])
    expect(tokensOf('Add 1,5.').map(({ word }) => word)).toEqual(['add', '1,5'])
  })

  it.each(['a', 'on', 'quick', 'to', 'third', ''])('reads no number in %j', (text) => {
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

describe('words and where their clauses end', () => {
  it.each([
    ['Ready? Go.', 0, { ends: true, stops: true, asks: true }],
    ['Up, down', 0, { ends: true, stops: false, asks: false }],
    ['Done. Sit', 0, { ends: true, stops: true, asks: false }],
    ['thirty-second push', 0, { ends: false, joined: true }],
    ['3–4 turns', 0, { ends: false, joined: true }],
    ['hold - breathe', 0, { ends: true, joined: false }],
    ['+¾ on', 0, { sign: 1 }],
    ['−1½ off', 0, { sign: -1 }],
    ['3-4', 1, { word: '4' }],
  ])('cuts %j', (text, at, expected) => {
    expect(tokensOf(text)[at]).toMatchObject(expected)
  })

  it('takes the dash between two numbers for no sign', () => {
    expect(tokensOf('3-4')[1]).not.toHaveProperty('sign')
  })
})
