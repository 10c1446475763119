import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Playlist } from '#formats/parsePlaylist.ts'
import { writeM3u8 } from '#formats/playlist/writeM3u8.ts'
import { writeXspf } from '#formats/playlist/writeXspf.ts'
import { readSongList } from '#formats/readSongList.ts'
import { told } from '#tests/support/told.ts'

const toldWhole = ({ line, text, sentence }: Playlist['problems'][number]) => ({ line, text: told(text), sentence: told(sentence) })

describe('a list of songs', () => {
  it('is read from XSPF as players write it', () => {
    // By hand, after the examples of the XSPF version 1 specification: prefixes, entities, sections, unknown elements.
    const text = `<?xml version="1.0" encoding="UTF-8"?>
<!-- made by hand -->
<playlist version="1" xmlns="http://xspf.org/ns/0/">
  <title>not a song</title>
  <trackList>
    <track><location>file:///a/b.mp3</location><title>Brickworks &amp; Elevator</title><creator>Nine Tin Kites</creator><duration>215500</duration></track>
    <track>
      <creator><![CDATA[Salt & <Lantern>]]></creator>
      <title>Caf&#xe9; &#8212; late</title>
      <extension application="x"><y>7</y></extension>
    </track>
    <track><creator>nobody</creator></track>
  </trackList>
</playlist>`
    const { songs, problems } = readSongList(text)
    expect(songs).toEqual([
      { title: 'Brickworks & Elevator', artist: 'Nine Tin Kites', lengthSeconds: 215.5 },
      { title: 'Café — late', artist: 'Salt & <Lantern>' },
    ])
    expect(problems.map(toldWhole)).toEqual([{ line: 3, text: 'a track without a title', sentence: 'This line has no title.' }])
  })

  it('is read to its limits, and says where they are', () => {
    const tracks = readSongList(`<playlist>${'<track><title>a</title></track>'.repeat(2_003)}</playlist>`)
    expect([tracks.songs.length, tracks.problems.map(toldWhole)]).toEqual([
      2_000,
      [{ line: 2_001, text: 'the tracks from here on', sentence: 'Only the first 2,000 tracks were read.' }],
    ])
    const lines = readSongList(`#EXTM3U\n${'#EXTINF:200,a\n'.repeat(6_001)}`)
    expect([lines.songs.length, toldWhole(lines.problems.at(-1)!).sentence]).toEqual([5_999, 'Only the first 6,000 lines were read.'])
  })

  it('takes no length no song has, and no address for a song however long it is', () => {
    const address = `https://example.org/${'x'.repeat(3_000)}`
    const read = readSongList(`#EXTM3U\n#EXTINF:99999,Endless\n${address}\n#EXTINF:200,Quay\n${address}\n#NOTE ${'y'.repeat(3_000)}\n`)
    expect(read.songs).toEqual([{ title: 'Quay', lengthSeconds: 200 }])
    expect(read.problems.map(({ line, sentence }) => [line, told(sentence)])).toEqual([
      [2, 'A song lasts from 1 second to 6 hours, and 99999 s doesn’t.'],
    ])
  })

  it('is read from M3U, with and without the extended lines', () => {
    const text =
      '\ufeff#EXTM3U\r\n#PLAYLIST:Tuesday\r\n#EXTINF:215,Nine Tin Kites - Brickworks Elevator\r\nC:\\music\\01.mp3\r\n#EXTINF:-1 tvg-id="x",Only a Title\r\nhttp://example.org/2\r\n03%20Salt%20Lantern%20-%20Low%20Tide.ogg\r\n'
    expect(readSongList(text).songs).toEqual([
      { title: 'Brickworks Elevator', artist: 'Nine Tin Kites', lengthSeconds: 215 },
      { title: 'Only a Title' },
      { title: 'Low Tide', artist: 'Salt Lantern' },
    ])
  })

  it('is read from a table and from plain lines', () => {
    expect(readSongList('title;artist;bpm\nLow Tide;Salt Lantern;128').songs).toEqual([
      { title: 'Low Tide', artist: 'Salt Lantern', bpm: 128 },
    ])
    expect(readSongList('Salt Lantern - Low Tide 3:45').songs).toHaveLength(1)
  })

  it('comes back from what the page itself writes', () => {
    const words = fc.stringMatching(/^[A-Za-z&<>'" é]{0,12}[a-z]$/).map((text) => text.replace(/\s+/g, ' ').trim())
    const tracks = fc.array(fc.record({ title: words, artist: words, seconds: fc.integer({ min: 30, max: 600 }) }), { maxLength: 8 })
    fc.assert(
      fc.property(tracks, (list) => {
        const expected = list.map(({ title, artist, seconds }) => ({ title, artist, lengthSeconds: seconds }))
        expect(readSongList(writeXspf('t', list)).songs).toEqual(expected)
        expect(readSongList(writeM3u8(list)).songs).toEqual(expected)
      }),
    )
  })

  it('never throws', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('', '<playlist>', '#EXTM3U\n', '<playlist><track><title>'),
        fc.string({ unit: 'binary' }),
        (start, rest) => {
          expect(() => readSongList(start + rest)).not.toThrow()
        },
      ),
    )
  })
})
