import { XMLParser, XMLValidator } from 'fast-xml-parser'
import { Parser } from 'm3u8-parser'
import { describe, expect, test } from 'vitest'
import type { Track } from '#formats/playlist/track.ts'
import { writeM3u8 } from '#formats/playlist/writeM3u8.ts'
import { writeXspf } from '#formats/playlist/writeXspf.ts'

const tracks: Track[] = [
  { title: 'Brickworks & “Elevator” <live>', artist: 'Nine Tin Kites', seconds: 218.1818, note: '132 bpm' },
  { title: '#1: Quarter to\nMagnesium, 50 % \u0007\ud800', seconds: 219.5 },
]

describe('XSPF read back by an independent parser (XSPF version 1)', () => {
  const text = writeXspf('A & B', tracks)

  test('is well-formed XML of version 1', () => {
    expect(XMLValidator.validate(text)).toBe(true)
    const { playlist } = new XMLParser({ ignoreAttributes: false }).parse(text)
    expect([playlist['@_version'], playlist['@_xmlns'], playlist.title]).toEqual(['1', 'http://xspf.org/ns/0/', 'A & B'])
  })

  test('names the songs in order, lengths in whole milliseconds', () => {
    const { playlist } = new XMLParser({ trimValues: false, processEntities: true }).parse(text)
    expect(playlist.trackList.track).toMatchObject([
      { title: tracks[0]!.title, creator: 'Nine Tin Kites', annotation: '132 bpm', trackNum: 1, duration: 218182 },
      { title: '#1: Quarter to\nMagnesium, 50 % \ufffd', trackNum: 2, duration: 219500 },
    ])
  })

  test('what is not known has no element', () => expect(text.match(/<creator>/g)).toHaveLength(1))
})

describe('M3U8 read back by an independent parser (RFC 8216)', () => {
  const text = writeM3u8(tracks)

  test('starts with its signature and keeps a line for each thing', () => {
    expect(text.split('\n').map((line) => line.slice(0, 5))).toEqual(['#EXTM', '#EXTI', '01%20', '#EXTI', '02%20', ''])
  })

  test('gives lengths, titles and relative addresses back', () => {
    const parser = new Parser()
    parser.push(text)
    parser.end()
    const segments = parser.manifest.segments as { duration: number; title: string; uri: string }[]
    expect(segments.map(({ duration, title }) => [duration, title])).toEqual([
      [218, 'Nine Tin Kites - Brickworks & “Elevator” <live>'],
      [220, expect.stringMatching(/^#1: Quarter to Magnesium, 50 %/)],
    ])
    // Section 4.1: no control characters, letters in composed form.
    expect(text).toMatch(/^[^\p{Cc}\n]*(\n[^\p{Cc}\n]*)*$/u)
    expect(writeM3u8([{ title: 'Cafe\u0301 \u0007One', seconds: 60 }])).toContain('#EXTINF:60,Café One\n')
    for (const { uri } of segments) expect(new URL(uri, 'file:///music/').pathname.startsWith('/music/')).toBe(true)
    expect(segments.map(({ uri }) => decodeURIComponent(uri))).toEqual([
      '01 Nine Tin Kites - Brickworks & “Elevator” _live_.mp3',
      '02 #1_ Quarter to Magnesium, 50 % _\uFFFD.mp3',
    ])
  })

  test('file names hold nothing a file system refuses', () => {
    const nine = Array.from({ length: 9 }, () => ({ title: 'a/b\\c:d*e?f"g<h>i|j', seconds: 1 }))
    expect(decodeURIComponent(writeM3u8(nine, 'm4a').trimEnd().split('\n').at(-1)!)).toBe('09 a_b_c_d_e_f_g_h_i_j.m4a')
  })
})
