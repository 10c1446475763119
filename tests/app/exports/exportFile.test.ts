import { parse } from 'csv-parse/sync'
import { XMLParser } from 'fast-xml-parser'
import { strFromU8, unzipSync } from 'fflate'
import ICAL from 'ical.js'
import { Parser } from 'm3u8-parser'
import { lexer } from 'marked'
import { parseText } from 'media-captions'
import { describe, expect, test } from 'vitest'
import { exportFile } from '#app/exports/exportFile.ts'
import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import { EXPORTS, type ExportId } from '#features/sheet/exportKinds.ts'
import type { Ride } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { rightToLeftRide } from '#tests/support/sheetRides.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const spark = demoRide('spark')
const ridge = demoRide('ridge')
const MOMENT = { day: '2026-11-26', startsAt: '12:10', now: Date.UTC(2026, 10, 25, 8, 30), today: '25 November 2026' }
const fileOf = (id: ExportId, ride: Ride = spark) => exportFile(id, ride, computeRide(ride), MOMENT)
const textOf = (id: ExportId, ride: Ride = spark) => fileOf(id, ride).data as string
const captions = async (text: string) => {
  const { cues, errors } = await parseText(text, { type: 'vtt', strict: true, errors: true })
  expect(errors).toEqual([])
  return cues
}

test('every export is made of every ride, the emptiest too', () => {
  for (const { id } of EXPORTS) {
    for (const ride of [spark, ridge, smallRide()]) expect(fileOf(id, ride).data.length, `${id} of ${ride.title}`).toBeGreaterThan(0)
    expect(() => fileOf(id, { ...smallRide(), sections: [] })).not.toThrow()
  }
})

describe('the sheet as text', () => {
  test('has a line a change in columns that line up, and what the sheet says', () => {
    const lines = textOf('text').split('\n')
    expect(lines[0]).toBe('Twenty-Minute Spark')
    const rows = lines.filter((line) => /^ *\d+:\d\d {2,}/.test(line))
    expect(rows).toHaveLength(42)
    expect(rows[15]).toMatch(/^ 6:19 {2}3:39 {3}8 {7}7 {8}1½ {2}\+¾ +standing run \(standing, hands wide\)\. Three quarters on, up light/)
    expect(textOf('text')).toContain('version ')
  })

  test('as Markdown it is one table a section', () => {
    const tokens = lexer(textOf('markdown'))
    const tables = tokens.filter(({ type }) => type === 'table') as { rows: unknown[] }[]
    expect(tables.map(({ rows }) => rows.length)).toEqual([5, 9, 10, 7, 9, 2])
    expect(tokens.filter((token) => token.type === 'heading').map((token) => ('depth' in token ? token.depth : 0))).toEqual([
      1, 2, 2, 2, 2, 2, 2,
    ])
  })
})

test('as CSV every change is a row of numbers that add up', () => {
  const rows: Record<string, string>[] = parse(textOf('csv'), { columns: true, bom: true })
  const report = computeRide(spark)
  expect(rows).toHaveLength(42)
  const sum = rows.reduce((total, row) => total + Number(row.length_s), 0)
  expect(sum).toBeCloseTo(
    report.blocks.reduce((total, { from, to }) => total + to - from, 0),
    1,
  )
  expect(rows[15]).toMatchObject({
    section: '3',
    song: 'Tin Orchard Run',
    block: 'standing run',
    counts: '64',
    total: '1.5',
    call: "'+¾",
    unit: 'turn',
    rpm_from: '79',
  })
  expect(rows.find((row) => row.terrain === 'push')).toMatchObject({ effort_from: '9', leader: 'Remy Castellane-Voss' })
})

test('a title of several lines takes one, where a line means something', () => {
  const [first, ...rest] = spark.sections
  const ride: Ride = { ...spark, title: 'Two\nlines', sections: [{ ...first!, title: 'Also\r\ntwo' }, ...rest] }
  expect(textOf('chapterText', ride).trim().split('\n')).toHaveLength(spark.sections.length)
  expect(textOf('chapterText', ride)).toMatch(/^0:00 Also two\n/)
  const lines = textOf('text', ride).split('\n')
  expect(lines).toHaveLength(textOf('text').split('\n').length)
  expect([lines[0], lines[5]]).toEqual(['Two lines', expect.stringMatching(/^1 Also two, /)])
})

test('a call alone stands as a sentence before the options', () => {
  const silent = spark.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((item) => ('cues' in item ? { ...item, cues: [], easier: { text: 'Stay seated.' } } : item)),
  }))
  const text = textOf('text', { ...spark, sections: silent })
  expect(text).toMatch(/standing run \(standing, hands wide\)\. Three quarters on\. (Feel: .*\. )?Easier: Stay seated\.$/m)
})

test('names in a right-to-left script are isolated in every text for people, and in no other', () => {
  const ride = rightToLeftRide()
  const song = ride.sections[1]!.song!.title
  for (const id of ['text', 'markdown', 'captions', 'chapters', 'chapterText', 'calendar'] as const) {
    const text = textOf(id, ride).replaceAll('\r\n ', '')
    if (id !== 'captions') expect(text, id).toContain(`\u2068${song}\u2069`)
    // As many opened as closed, none inside another, and no name outside.
    expect(text.replace(/\u2068[^\u2068\u2069]*\u2069/g, ''), id).not.toMatch(/[\u2068\u2069\u0590-\u08ff]/)
    expect(textOf(id), id).not.toMatch(/[\u2068\u2069]/)
  }
  // Programs read these: a title is the title.
  for (const id of ['csv', 'xspf', 'm3u8'] as const) expect(textOf(id, ride)).not.toMatch(/[\u2068\u2069]/)
})

test('the welcome, the wipe-down and who leads stand in the sheet as text', () => {
  const text = textOf('text', { ...spark, briefingSeconds: 120, clearUpSeconds: 60 })
  expect(text).toContain('Odalys Thornquill and Remy Castellane-Voss')
  expect(text).toMatch(/^ 0:00 +welcome and bike setup, 2:00$/m)
  expect(text).toMatch(/^21:36 +wipe-down, 1:00$/m)
})

describe('read on another bike', () => {
  const onLevels = (id: ExportId) => exportFile(id, spark, onAnotherBike(spark, computeRide(spark), LEVELS_BIKE), MOMENT).data as string

  test('CSV keeps calls and totals in the ride’s own unit and adds what the other bike reads', () => {
    const own: Record<string, string>[] = parse(textOf('csv'), { columns: true, bom: true })
    const read: Record<string, string>[] = parse(onLevels('csv'), { columns: true, bom: true })
    expect(read.map(({ other_bike, other_total, other_unit, other_feel, ...rest }) => rest)).toEqual(own)
    expect(read[15]).toMatchObject({ other_bike: LEVELS_BIKE.name, other_unit: 'level', other_total: expect.stringMatching(/^about \d+$/) })
  })

  test('captions say no turns', async () => {
    const cues = await captions(onLevels('captions'))
    expect(cues.some(({ text }) => /To about \w+, up light, twenty-four seconds\.$/.test(text))).toBe(true)
    expect(cues.filter(({ text }) => /turn|quarter|half/i.test(text.replace('Halfway', ''))).map(({ text }) => text)).toEqual([])
  })
})

describe('captions', () => {
  test('in ride time are all that is said, each until its change', async () => {
    const report = computeRide(spark)
    const cues = await captions(textOf('captions'))
    expect(cues.length).toBeGreaterThanOrEqual(report.cues.lines.length)
    const line = report.cues.lines.find(({ cue }) => cue.text.startsWith('Three quarters on, up light'))!
    const shown = cues.find(({ text }) => text.includes('Three quarters on, up light'))!
    expect(shown.startTime).toBeCloseTo(line.from, 3)
    expect(shown.endTime).toBeCloseTo(line.change, 3)
    expect(shown.text).toBe('Odalys Thornquill: Three quarters on, up light, twenty-four seconds.')
  })

  test('in song time are one file a song on the clock of its own file', async () => {
    const ride: Ride = { ...spark, sections: spark.sections.map((section, index) => (index === 2 ? { ...section, inCount: 32 } : section)) }
    const report = computeRide(ride)
    const files = unzipSync(fileOf('songCaptions', ride).data as Uint8Array)
    expect(Object.keys(files)).toHaveLength(6)
    expect(Object.keys(files)[2]).toBe('03-tin-orchard-run.vtt')
    const cues = await captions(strFromU8(files['03-tin-orchard-run.vtt']!))
    const line = report.cues.lines.find(({ cue }) => cue.text.startsWith('Three quarters on, up light'))!
    const shown = cues.find(({ text }) => text.includes('Three quarters on, up light'))!
    const zero = report.sections[2]!.one - secondAt(ride.sections[2]!.song!.grid!, 32)
    expect(shown.startTime).toBeCloseTo(line.from - zero, 3)
    for (const { startTime, endTime } of cues) {
      expect(startTime).toBeGreaterThanOrEqual(0)
      expect(endTime).toBeLessThanOrEqual(report.sections[2]!.to - zero + 1e-3)
    }
  })

  test('chapters are the sections by name, end to end', async () => {
    const ride = { ...ridge, briefingSeconds: 120, clearUpSeconds: 60 }
    const cues = await captions(textOf('chapters', ride))
    expect(cues.map(({ text }) => text)).toEqual([
      'welcome and bike setup',
      ...ridge.sections.map(({ song, title }) => title ?? song!.title),
      'wipe-down',
    ])
    for (const [index, cue] of cues.entries()) if (index > 0) expect(cue.startTime).toBeCloseTo(cues[index - 1]!.endTime, 3)
    expect(cues.at(-1)!.endTime).toBeCloseTo(computeRide(ride).overall.total, 3)
    expect(textOf('chapterText', ride).split('\n').slice(0, 3)).toEqual([
      '0:00 welcome and bike setup',
      '2:00 Postcards from Level Sea',
      '5:07 Marmalade Signal',
    ])
  })

  test('a change nobody has words for is called by itself', async () => {
    const silent: Ride = {
      ...spark,
      sections: spark.sections.map((section) => ({
        ...section,
        blocks: section.blocks.map((item) => ('cues' in item ? { ...item, cues: [] } : item)),
      })),
    }
    const cues = await captions(textOf('captions', silent))
    expect(cues.some(({ text }) => text === 'standing run: three quarters on')).toBe(true)
    expect(cues.every(({ text }) => !/: stay$/.test(text))).toBe(true)
  })
})

test('playlists name the songs in order with the length of their files', () => {
  const { playlist } = new XMLParser().parse(textOf('xspf', ridge))
  const tracks = playlist.trackList.track as { title: string; creator: string; duration: number }[]
  const songs = ridge.sections.flatMap(({ song }) => (song ? [song] : []))
  expect(tracks.map(({ title, creator }) => [title, creator])).toEqual(songs.map(({ title, artist }) => [title, artist]))
  expect(tracks.map(({ duration }) => duration)).toEqual(songs.map(({ lengthSeconds }) => Math.round(lengthSeconds * 1000)))
  const parser = new Parser()
  parser.push(textOf('m3u8', ridge))
  parser.end()
  expect(parser.manifest.segments).toHaveLength(songs.length)
})

test('the calendar has the class on its day by the clock of the room, the same entry for the same class', () => {
  const event = (text: string) => new ICAL.Event(new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent('vevent')!)
  const entry = event(textOf('calendar'))
  expect([entry.summary, entry.startDate.toString(), entry.endDate.toString()]).toEqual([
    'Twenty-Minute Spark',
    '2026-11-26T12:10:00',
    '2026-11-26T12:30:00',
  ])
  expect(entry.description).toContain('6:07 Tin Orchard Run')
  expect(event(textOf('calendar', { ...spark, title: 'Renamed' })).uid).toBe(entry.uid)
  expect(entry.location).toBeNull()
  expect(event(textOf('calendar', { ...spark, location: 'Studio B, Quay Street' })).location).toBe('Studio B, Quay Street')
})
