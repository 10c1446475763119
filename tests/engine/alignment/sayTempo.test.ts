import { describe, expect, it } from 'vitest'
import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { told } from '#tests/support/told.ts'

describe('a tempo', () => {
  it.each([48, 90, 128.37, 215])('of %s needs no word', (bpm) => {
    expect(sayTempo(bpm)).toBeNull()
  })

  it.each([
    [47.99, '47.99 bpm is slower than songs are usually counted (48 to 215 bpm); is it 95.98?'],
    [216, '216 bpm is faster than songs are usually counted (48 to 215 bpm); is it 108?'],
    // Twice that is none either.
    [20, '20 bpm is slower than songs are usually counted (48 to 215 bpm).'],
  ])('of %s is asked about', (bpm, sentence) => {
    expect(told(sayTempo(bpm)!)).toBe(sentence)
  })
})
