import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readTags } from '#audio/readTags.ts'

const clip = (name: string) => new Blob([readFileSync(new URL(`./clips/${name}`, import.meta.url))])

it.each([
  ['clip-96.mp3', { title: 'Brickworks Elevator', artist: 'Nine Tin Kites' }],
  ['clip-132.ogg', { title: 'Low Tide', artist: 'Salt Lantern', bpm: 132 }],
  ['clip-110.flac', { title: 'Slate Roof', artist: 'Salt Lantern', bpm: 110 }],
  ['clip-124.wav', {}],
])('the tags of %s are read as they were written', async (name, tags) => {
  expect(await readTags(clip(name))).toEqual(tags)
})

it('a file that is no music is refused', async () => {
  await expect(readTags(new Blob(['no music at all']))).rejects.toThrow()
})
