import { expect, it } from 'vitest'
import { readTempo } from '#formats/playlist/readTempo.ts'

it.each([
  ['20 bpm', 20],
  ['400 bpm', 400],
  ['@127.5', 127.5],
])('%s is a tempo', (text, value) => {
  expect(readTempo(text)).toEqual({ ok: true, value })
})

it.each(['19.9 bpm', '400.1 bpm'])('%s is none that music has', (text) => {
  expect(readTempo(text)).toMatchObject({ ok: false })
})

it('words are no tempo', () => {
  expect(readTempo('fast')).toBeUndefined()
})
