import { parseText } from 'media-captions'
import { describe, expect, test } from 'vitest'
import { writeWebVtt } from '#formats/webvtt/writeWebVtt.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

/** The first and last moment of a caption, as they are written. */
const timesOf = (from: number, to: number) => /^(\S+) --> (\S+)$/m.exec(writeWebVtt([{ from, to, text: 'a' }]))!.slice(1)
const vttTimestamp = (seconds: number) => timesOf(0, seconds)[1]

checkRows('WebVTT', rows, { 'vtt.ts2': ({ seconds }: { seconds: number }) => vttTimestamp(seconds) })

/** As a player would read it: any complaint is an error. */
const readBack = (text: string) => parseText(text, { type: 'vtt', strict: true, errors: true })

describe('timestamps (W3C WebVTT)', () => {
  test.each([
    [59.9994, '00:00:59.999'],
    [3599.9996, '01:00:00.000'],
    [100 * 3600 + 0.5, '100:00:00.500'],
  ])('%d s is %s', (seconds, written) => expect(vttTimestamp(seconds)).toBe(written))

  test('from zero on, and nothing before it', () => {
    expect(timesOf(0, 1)).toEqual(['00:00:00.000', '00:00:01.000'])
    expect(timesOf(-0.1, 1)).toEqual(['00:00:00.000', '00:00:01.000'])
  })
})

describe('a caption file read back by an independent parser', () => {
  const cues = [
    { id: 'second', from: 61.25, to: 3725.5, text: 'Ben & “Tin” <b>Kites</b> --> up' },
    { id: 'first', from: 0, to: 61.25, text: 'Two lines\n\nwithout the gap between\r\nthem' },
  ]

  test('starts with the signature and a blank line, and has no arrow outside its timings', () => {
    const text = writeWebVtt(cues, 'A --> B')
    expect(text.split('\n').slice(0, 2)).toEqual(['WEBVTT - A → B', ''])
    expect(text.split('\n').filter((line) => line.includes('-->'))).toHaveLength(cues.length)
  })

  test('holds the same cues in order of time', async () => {
    const { cues: read, errors } = await readBack(writeWebVtt(cues))
    expect(errors).toEqual([])
    expect(read.map(({ id, startTime, endTime }) => [id, startTime, endTime])).toEqual([
      ['first', 0, 61.25],
      ['second', 61.25, 3725.5],
    ])
    expect(read[0]!.text).toBe('Two lines\nwithout the gap between\nthem')
    expect(read[1]!.text).toContain('&lt;b&gt;')
  })

  test('those that start together in the order in which they end, and those alike in their own', async () => {
    const at = (id: string, from: number, to: number) => ({ id, from, to, text: id })
    const given = [at('long', 5, 20), at('same', 5, 9), at('short', 5, 7), at('again', 5, 9), at('before', 4, 30)]
    const { cues: read } = await readBack(writeWebVtt(given))
    expect(read.map(({ id }) => id)).toEqual(['before', 'short', 'same', 'again', 'long'])
  })

  test('names and the title stand on one line each, without an arrow', () => {
    const text = writeWebVtt([{ id: ' a\nb --> c ', from: 0, to: 1, text: 'x' }], ' two\n lines ')
    expect(text).toBe('WEBVTT - two lines\n\na b → c\n00:00:00.000 --> 00:00:01.000\nx\n')
    expect(writeWebVtt([{ from: 0, to: 1, text: ' <x> & \n\n y ' }])).toBe('WEBVTT\n\n00:00:00.000 --> 00:00:01.000\n&lt;x&gt; &amp;\ny\n')
  })

  test('leaves out what would end as it starts, and refuses what ends before', async () => {
    const text = writeWebVtt([{ from: 1, to: 1.0001, text: 'no time' }, ...cues])
    expect(text).not.toContain('no time')
    expect((await readBack(text)).cues).toHaveLength(2)
    expect(() => writeWebVtt([{ from: 2, to: 1, text: 'backwards' }])).toThrow(RangeError)
  })

  test('holds at zero what would start before it, and leaves out what is over by then', async () => {
    const early = writeWebVtt([
      { from: -3, to: -1, text: 'over' },
      { from: -2, to: 4, text: 'early' },
    ])
    expect(early).not.toContain('over')
    expect((await readBack(early)).cues).toMatchObject([{ startTime: 0, endTime: 4, text: 'early' }])
  })
})
