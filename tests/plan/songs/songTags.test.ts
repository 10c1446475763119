import { expect, it } from 'vitest'
import { isMusicFile } from '#plan/songs/musicFile.ts'
import { namedByFile } from '#plan/songs/songTags.ts'

it.each([
  [{ title: 'Low Tide', artist: 'Salt Lantern' }, 'x.mp3', { title: 'Low Tide', artist: 'Salt Lantern' }],
  [{ title: ' Low\n Tide\u0000' }, 'Other - Name.mp3', { title: 'Low Tide' }],
  [{ artist: 'Salt Lantern' }, 'low_tide.flac', { title: 'low tide', artist: 'Salt Lantern' }],
  [{}, 'Salt Lantern - Low Tide.ogg', { title: 'Low Tide', artist: 'Salt Lantern' }],
  [{}, '03 - Low Tide.ogg', { title: 'Low Tide' }],
  [{}, '3. Salt Lantern - Low Tide.ogg', { title: 'Low Tide', artist: 'Salt Lantern' }],
  [{}, '1-03 - Salt Lantern - Low Tide.ogg', { title: 'Low Tide', artist: 'Salt Lantern' }],
  [{}, 'Salt - Lantern - Low Tide.ogg', { title: 'Salt - Lantern - Low Tide' }],
  [{}, '99 Bottles.wav', { title: '99 Bottles' }],
  [{}, '.mp3', { title: '.mp3' }],
])('a song is called by its tags, else by its file: %j %s', (tags, file, name) => {
  expect(namedByFile(tags, file)).toEqual(name)
})

it('a name is no longer than a ride takes', () => {
  expect(namedByFile({ title: 'a'.repeat(999) }, 'x.mp3').title).toHaveLength(300)
})

it.each([
  ['a.mp3', '', true],
  ['a.FLAC', '', true],
  ['a', 'audio/mp4', true],
  ['._a.mp3', 'audio/mpeg', false],
  ['list.m3u', 'audio/x-mpegurl', false],
  ['cover.jpg', 'image/jpeg', false],
  ['notes.txt', 'text/plain', false],
])('%s of type “%s” is music: %s', (name, type, music) => {
  expect(isMusicFile({ name, type })).toBe(music)
})
