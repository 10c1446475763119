import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parsePlaylist } from '#formats/parsePlaylist.ts'
import { recordsOf } from '#formats/playlist/recordsOf.ts'
import { told } from '#tests/support/told.ts'

const only = (line: string) => {
  const { songs, problems } = parsePlaylist(line)
  expect(problems).toEqual([])
  expect(songs).toHaveLength(1)
  return songs[0]
}

describe('a line of a playlist', () => {
  const WHOLE = { title: 'Paper Lanterns', artist: 'The Odd Socks', lengthSeconds: 225, bpm: 128 }
  it.each([
    'Paper Lanterns – The Odd Socks 3:45 128 bpm',
    'Paper Lanterns - The Odd Socks 3:45 128 bpm',
    'Paper Lanterns — The Odd Socks — 3:45 — 128 BPM',
    'Paper Lanterns - The Odd Socks (3:45, 128 bpm)',
    'Paper Lanterns – The Odd Socks [128bpm] 3:45',
    'Paper Lanterns – The Odd Socks 3:45 128',
    '1. Paper Lanterns, The Odd Socks, 3:45, 128',
    '01) Paper Lanterns – The Odd Socks, 3:45, 128 bpm',
    '#7 Paper Lanterns – The Odd Socks 3:45 @128',
    '12 - Paper Lanterns – The Odd Socks 3:45 128bpm',
    '• Paper Lanterns – The Odd Socks · 3:45 · 128 bpm',
    'Paper Lanterns\tThe Odd Socks\t3:45\t128',
    '3\tPaper Lanterns\tThe Odd Socks\tAn Album\t3:45\t128',
    'Paper Lanterns | The Odd Socks | 225 s | 128 bpm',
    'Paper Lanterns; The Odd Socks; 3:45; 128',
    'Paper Lanterns, The Odd Socks, 225, 128',
    '"Paper Lanterns","The Odd Socks","3:45","128"',
    '3:45 Paper Lanterns – The Odd Socks 128bpm',
    '128 bpm 3:45 Paper Lanterns – The Odd Socks',
    'Paper Lanterns – The Odd Socks 3\'45" 128 bpm',
    'Paper Lanterns – The Odd Socks 3’45” 128 bpm',
    'Paper Lanterns – The Odd Socks 3m45s 128 bpm',
    'Paper Lanterns – The Odd Socks, 3 min 45 sec, bpm: 128',
    'Paper Lanterns – The Odd Socks, PT3M45S, tempo 128',
    'Paper Lanterns – The Odd Socks, 3.75 min, 128',
    'Paper\u00a0Lanterns – The Odd Socks 3:45 128\u00a0bpm',
  ])('is read whole: %s', (line) => expect(only(line)).toEqual(WHOLE))

  it.each([
    ['Paper Lanterns', { title: 'Paper Lanterns' }],
    ['Paper Lanterns – The Odd Socks', { title: 'Paper Lanterns', artist: 'The Odd Socks' }],
    ['Paper Lanterns 3:45', { title: 'Paper Lanterns', lengthSeconds: 225 }],
    ['Paper Lanterns 128 bpm', { title: 'Paper Lanterns', bpm: 128 }],
    ['Paper Lanterns, 128', { title: 'Paper Lanterns', bpm: 128 }],
    ['Paper Lanterns | 225 s', { title: 'Paper Lanterns', lengthSeconds: 225 }],
    ['Paper Lanterns, 225, 128 bpm', { title: 'Paper Lanterns', lengthSeconds: 225, bpm: 128 }],
    ['3:45 Paper Lanterns 127,5 bpm', { title: 'Paper Lanterns', lengthSeconds: 225, bpm: 127.5 }],
    ['Paper Lanterns 1:02:03', { title: 'Paper Lanterns', lengthSeconds: 3723 }],
    ['Room 52 4:10 128', { title: 'Room 52', lengthSeconds: 250, bpm: 128 }],
    ['99 Paper Boats 4:10', { title: '99 Paper Boats', lengthSeconds: 250 }],
    ['1999 - The Odd Socks 4:10', { title: '1999', artist: 'The Odd Socks', lengthSeconds: 250 }],
    ['Hello, Moon 4:10 100 bpm', { title: 'Hello, Moon', lengthSeconds: 250, bpm: 100 }],
    ['Hello, Moon, The Odd Socks, 4:10', { title: 'Hello, Moon', artist: 'The Odd Socks', lengthSeconds: 250 }],
    ['Half-Light (Long Mix) – The Odd Socks 5:00', { title: 'Half-Light (Long Mix)', artist: 'The Odd Socks', lengthSeconds: 300 }],
    ['Lamp (Long Mix) 5:00', { title: 'Lamp (Long Mix)', lengthSeconds: 300 }],
    ['Lamp – Long Mix – The Odd Socks 5:00', { title: 'Lamp – Long Mix', artist: 'The Odd Socks', lengthSeconds: 300 }],
    ['夜の海 – 波 3:05', { title: '夜の海', artist: '波', lengthSeconds: 185 }],
    ['"Stop, ""Go""", The Odd Socks, 3:05', { title: 'Stop, "Go"', artist: 'The Odd Socks', lengthSeconds: 185 }],
  ])('is read as far as it goes: %s', (line, song) => expect(only(line)).toEqual(song))

  it.each([
    ['The Odd Socks – Lamp – Long Mix 5:00', { title: 'Lamp – Long Mix', artist: 'The Odd Socks', lengthSeconds: 300 }],
    ['The Odd Socks, Hello, Moon, 4:10', { title: 'Hello, Moon', artist: 'The Odd Socks', lengthSeconds: 250 }],
    ['The Odd Socks\tPaper Lanterns\t3:45\t128', { title: 'Paper Lanterns', artist: 'The Odd Socks', lengthSeconds: 225, bpm: 128 }],
    ['Paper Lanterns 3:45', { title: 'Paper Lanterns', lengthSeconds: 225 }],
  ])('may begin with the artist: %s', (line, song) => expect(parsePlaylist(line, 'artist').songs).toEqual([song]))

  it('says whether the order alone told titles from artists', () => {
    expect(parsePlaylist('Paper Lanterns – The Odd Socks').guessed).toBe(true)
    expect(parsePlaylist('Paper Lanterns 3:45').guessed).toBeUndefined()
    const table = 'Artist,Title\nThe Odd Socks,Paper Lanterns'
    expect(parsePlaylist(table).guessed).toBeUndefined()
    expect(parsePlaylist(table, 'artist').songs).toEqual(parsePlaylist(table).songs)
  })

  it.each([
    ['3:45', 'no title'],
    ['128 bpm', 'no title'],
    ['– – –', 'no title'],
    ['Paper Lanterns 3:75', '3:75 has more than 59 seconds'],
    ['Paper Lanterns 0:00', '0:00 doesn’t'],
    ['Paper Lanterns 999 bpm', '999 bpm isn’t'],
    ['Paper Lanterns, 3:45, 7', '7 isn’t'],
    ['Paper Lanterns 0:30 3:45', 'two lengths, 0:30 and 3:45'],
    ['Paper Lanterns 128 bpm 140 bpm', 'two tempos, 128 bpm and 140 bpm'],
    ['Paper Lanterns, 3.45, 128', 'isn’t clear how long 3.45 is'],
    ['x'.repeat(400), 'too long'],
  ])('says what is wrong with it: %s', (line, reason) => {
    const { songs, problems } = parsePlaylist(line)
    expect(songs).toEqual([])
    expect(problems.map(({ sentence, ...problem }) => ({ ...problem, sentence: told(sentence) }))).toEqual([
      { line: 1, text: line, sentence: expect.stringContaining(reason) },
    ])
  })
})

describe('a table with named columns', () => {
  it('is read by its names, in any order', () => {
    const { songs, problems } = parsePlaylist(
      'BPM,Artist,Album,Duration,Title\r\n128,The Odd Socks,Drawer,3:45,Paper Lanterns\r\n,"Socks, Odd",,225,"Hello, Moon"\r\n',
    )
    expect(problems).toEqual([])
    expect(songs).toEqual([
      { title: 'Paper Lanterns', artist: 'The Odd Socks', lengthSeconds: 225, bpm: 128 },
      { title: 'Hello, Moon', artist: 'Socks, Odd', lengthSeconds: 225 },
    ])
  })

  it.each([
    ['Title\tLength (ms)', 'Paper Lanterns\t225000', 225],
    ['Track name;Duration (min)', 'Paper Lanterns;3,75', 225],
    ['Song|Time', 'Paper Lanterns|225', 225],
    ['Titel;Interpret;Länge (ms)', 'Paper Lanterns;;225000', 225],
  ])('counts in the unit of its column: %s', (header, row, lengthSeconds) => {
    expect(parsePlaylist(`${header}\n${row}`)).toEqual({
      songs: [{ title: 'Paper Lanterns', lengthSeconds }],
      songLines: [2],
      problems: [],
    })
  })

  it('keeps a row it cannot read as a problem with its line', () => {
    const { songs, problems } = parsePlaylist('title,length,bpm\n\nA,later,120\nB,3.5,120\nC,3:00,fast\n,3:00,120\nD,3:00,120')
    expect(songs).toEqual([{ title: 'D', lengthSeconds: 180, bpm: 120 }])
    expect(problems.map(({ line, sentence }) => [line, told(sentence)])).toEqual([
      [3, '“later” isn’t a length. Write minutes and seconds, such as 3:45.'],
      [4, 'It isn’t clear how long 3.5 is. Write minutes and seconds, such as 3:45.'],
      [5, '“fast” isn’t a tempo. Write beats per minute, such as 128.'],
      [6, 'This line has no title.'],
    ])
  })
})

describe('a line break inside a quoted cell', () => {
  const SONG = { title: 'Paper Lanterns (Live)', artist: 'The Odd Socks', lengthSeconds: 225, bpm: 128 }

  it.each(['\n', '\r\n', '\r', '\u2028'])('belongs to the cell, whatever ends a line: %j', (end) => {
    const rows = ['Title,Artist,Length,BPM', `"Paper Lanterns${end}(Live)",The Odd Socks,3:45,128`, 'Two,"Tin ""Oil"" Can",3:00,130']
    expect(parsePlaylist(rows.join(end))).toEqual({
      songs: [SONG, { title: 'Two', artist: 'Tin "Oil" Can', lengthSeconds: 180, bpm: 130 }],
      songLines: [2, 4],
      problems: [],
    })
  })

  it('belongs to it in a table without named columns, and beside doubled quotes', () => {
    expect(only('"Paper Lanterns\n(Live)","The Odd Socks","3:45","128"')).toEqual(SONG)
    expect(only('"Say ""Go""\n""Now""";The Odd Socks;3:45')).toMatchObject({ title: 'Say "Go" "Now"', artist: 'The Odd Socks' })
    expect(only('Two\t"The Odd\nSocks"\t3:45')).toMatchObject({ title: 'Two', artist: 'The Odd Socks' })
  })

  it('may be in the names of the columns too', () => {
    expect(parsePlaylist('"Track\nname",Artist,Length\nTwo,The Odd Socks,3:00').songs).toEqual([
      { title: 'Two', artist: 'The Odd Socks', lengthSeconds: 180 },
    ])
  })

  it('keeps to its row where the row cannot be read, and names the line it begins on', () => {
    const { songs, problems } = parsePlaylist('title,length\n"One\nmore",later\nTwo,3:00')
    expect(songs).toEqual([{ title: 'Two', lengthSeconds: 180 }])
    expect(problems).toEqual([expect.objectContaining({ line: 2, text: '"One more",later' })])
  })

  it.each([
    ['"Heroes 3:45\nTwo 3:00', ['"Heroes', 'Two']],
    ['Seven 7" 3:45\n"Two" 3:00', ['Seven 7"', '"Two"']],
    ['"One, two 3:45\nThree" and four 3:00', ['"One, two', 'Three" and four']],
  ])('is looked for only where a quote is closed before the next cell: %j', (text, titles) =>
    expect(parsePlaylist(text).songs.map(({ title }) => title)).toEqual(titles),
  )

  it('is read as an independent reader reads it, in any table', () => {
    const cell = fc
      .array(fc.constantFrom('oak', 'tin', ' ', '"', ',', '\n', '\r\n', ';'), { minLength: 1, maxLength: 6 })
      .map((parts) => `w${parts.join('')}w`)
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`
    const plain = (text: string) => text.replace(/\s+/g, ' ')
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), fc.constantFrom('\n', '\r\n'), (rows, end) => {
        const table = ['title,artist', ...rows.map((row) => row.map(quoted).join(','))].join(end)
        const read = parse<{ title: string; artist: string }>(table, { columns: true })
        expect(parsePlaylist(table).songs.map(({ title, artist = '' }) => [plain(title), plain(artist)])).toEqual(
          read.map(({ title, artist }) => [plain(title), plain(artist)]),
        )
      }),
    )
  })
})

describe('any text', () => {
  const piece = fc.oneof(
    fc.constantFrom('3:45', '128 bpm', ' – ', ', ', '\t', '|', '"', '128', 'Title', '1. ', '\n', '\r\n', '(', ')', '@', "'", '\u0000'),
    fc.string({ unit: 'binary', maxLength: 8 }),
  )
  const text = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''))

  it('loses no line: each is a song or a problem, in order', () => {
    fc.assert(
      fc.property(text, (pasted) => {
        const { songs, problems } = parsePlaylist(pasted)
        const entries = recordsOf(pasted)
        expect(songs.length + problems.length).toBe(entries.filter((entry) => entry.text !== '').length)
        // Every line is in an entry, in order; one without quotes is an entry of its own.
        const lines = pasted.split(/\r\n|[\n\r\u2028\u2029]/).map((line) => line.replace(/[\u00a0\u2007\u202f\ufeff]/g, ' ').trim())
        expect(entries.map((entry) => entry.text).join(' ')).toBe(lines.join(' '))
        if (!pasted.includes('"')) expect(entries).toHaveLength(lines.length)
        for (const song of songs) expect(song.title).toMatch(/[\p{L}\p{N}]/u)
        for (const problem of problems) expect(told(problem.sentence)).toMatch(/^.+\.$/)
      }),
      { numRuns: 500 },
    )
  })

  it('takes no longer than its length allows', () => {
    const long = `${'1'.repeat(900)}${' - '.repeat(30)}\n`.repeat(200) + `${'9:'.repeat(450)}\n`.repeat(200)
    expect(parsePlaylist(long).songs.length + parsePlaylist(long).problems.length).toBe(400)
  })

  it('stops reading after 2000 lines and says so', () => {
    const { songs, problems } = parsePlaylist('A 3:00\n'.repeat(2001))
    expect(songs).toHaveLength(2000)
    expect(problems.map(({ line, text, sentence }) => [line, told(text), told(sentence)])).toEqual([
      [2001, 'A 3:00', 'Only the first 2,000 lines were read.'],
    ])
  })
})
