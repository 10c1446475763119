import fc from 'fast-check'
import { expect, test } from 'vitest'
import { calendarOf } from '#app/exports/calendarOf.ts'
import { chaptersOf, songCaptions } from '#app/exports/captionsOf.ts'
import { computeRide } from '#engine/computeRide.ts'
import { checkpoints } from '#engine/prepare/checkpoints.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import { minutesWords } from '#features/sheet/substitute/minutesWords.ts'
import { substituteContents } from '#features/sheet/substitute/substituteContents.ts'
import type { Ride } from '#plan/model.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { formatClock } from '#units/formatClock.ts'

const OPTIONS = { date: 'today', songClock: 'left' } as const

test('chapters, captions, sheets, the calendar and the clock to look at say one time for the beginning of a song', () => {
  fc.assert(
    fc.property(arbitraryRide(), (ride) => {
      const report = computeRide(ride)
      const chapters = new Map(chaptersOf(ride, report).map(({ id, from }) => [id, from]))
      const sheet = sheetContents(ride, report, OPTIONS).bands
      const substitute = new Map(substituteContents(ride, report, 'today').bands.map((band) => [band.id, band]))
      const calendar = calendarOf(ride, report, { day: '2026-11-25', startsAt: '18:30', now: 0 }).replaceAll('\r\n ', '')
      const looks = new Map(checkpoints(ride, report).map(({ section, at }) => [section, at]))
      report.sections.forEach((section, index) => {
        const clock = sheet[index]!.facts[0]!.split(' for ')[0]!
        // A song that another one swallows has no chapter.
        const chapter = chapters.get(`${index + 1}`)
        if (chapter !== undefined) expect(formatClock(chapter)).toBe(clock)
        const told = substitute.get(section.sectionId)
        if (told) expect(told.facts[0]).toBe(`from ${minutesWords(section.one)}`)
        if (looks.has(index)) expect(formatClock(looks.get(index)!)).toBe(clock)
        expect(calendar).toContain(`\\n${clock} `)
        const rows = report.blocks.slice(section.blocks.from, section.blocks.to)
        if (rows[0]) expect(sheet[index]!.rows[0]!.rideClock).toBe(clock)
        const { song, inCount = 0 } = ride.sections[index]!
        const zero = song?.grid ? secondAt(song.grid, inCount) : 0
        for (const { from } of songCaptions(ride, report, index)) expect(from).toBeGreaterThanOrEqual(zero - 1e-9)
      })
    }),
    { numRuns: 60 },
  )
})

/** A welcome of a minute, then two songs with lead-ins of two and of three seconds. */
const ride = (change: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  briefingSeconds: 60,
  clearUpSeconds: 30,
  sections: [
    aSection('a', { title: 'one', leadInSeconds: 2, blocks: [aBlock('x', inSeconds(60))] }),
    aSection('b', { song: aSong('two', { lengthSeconds: 60 }), leadInSeconds: 3, blocks: [aBlock('y', { length: { counts: 120 } })] }),
  ],
  ...change,
})
const chaptersIn = (made: Ride) => chaptersOf(made, computeRide(made)).map(({ from, to, text }) => [from, to, text])

test('a lead-in belongs to what was before it', () => {
  expect(chaptersIn(ride())).toEqual([
    [0, 62, 'welcome and bike setup'],
    [62, 125, 'one'],
    [125, 185, 'two'],
    [185, 215, 'wipe-down'],
  ])
  expect(chaptersIn(ride({ briefingSeconds: 0, clearUpSeconds: 0 }))).toEqual([
    [0, 2, 'lead-in'],
    [2, 65, 'one'],
    [65, 125, 'two'],
  ])
})

test('a song that fades in begins where the one before is cut', () => {
  const [first, second] = ride().sections
  expect(chaptersIn(ride({ sections: [first!, { ...second!, leadInSeconds: -4 }] })).slice(1, 3)).toEqual([
    [62, 118, 'one'],
    [118, 178, 'two'],
  ])
})
