import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { markFlags, type RuledSong, rulerLabels, rulerTicks } from '#features/drafting/stage/rulerTicks.ts'
import type { Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const { counts, unit } = computeRide(ride).sections[0]!
const song: RuledSong = {
  grid: ride.sections[0]!.song!.grid!,
  inCount: counts!.in,
  total: counts!.total,
  eight: unit.eight,
  phrase: unit.phrase,
}
const ALL = { from: 0, to: 1e9 }
const ticks = (pixelsPerSecond: number, cut = ALL) => rulerTicks(song, { pixelsPerSecond }, cut)
const labels = (pixelsPerSecond: number, kind: 'eight' | 'phrase') =>
  rulerLabels(song, { pixelsPerSecond }, ALL).filter((label) => label.kind === kind)

describe('the ruler of a song', () => {
  it('shows eights at a middling zoom, each in its place, from the first to the end', () => {
    const marks = ticks(4)
    expect(marks).toHaveLength(53)
    expect(marks[4]).toEqual({ x: expect.closeTo(4 * 8 * (60 / 172) * 4, 6), strength: 'phrase' })
    expect(marks[1]).toEqual({ x: expect.closeTo(8 * (60 / 172) * 4, 6), strength: 'eight' })
  })

  it('shows single counts with the ones of bars close up, only phrases far off, and nothing where marks would run together', () => {
    expect(ticks(24)).toHaveLength(417)
    expect(
      ticks(24)
        .slice(0, 10)
        .map(({ strength }) => strength),
    ).toEqual(['phrase', 'count', 'count', 'count', 'bar', 'count', 'count', 'count', 'eight', 'count'])
    expect(ticks(0.8).every(({ strength }) => strength === 'phrase')).toBe(true)
    expect(ticks(0.3)).toEqual([])
  })

  it('counts in the song where a section begins in the middle of one', () => {
    const later: RuledSong = { ...song, inCount: 62, total: 64 }
    const marks = rulerTicks(later, { pixelsPerSecond: 24 }, ALL)
    expect(marks.slice(0, 8).map(({ strength }) => strength)).toEqual([
      'count',
      'count',
      'phrase',
      'count',
      'count',
      'count',
      'bar',
      'count',
    ])
    expect(marks[0]!.x).toBe(0)
    expect(marks).toHaveLength(65)
    const numbers = rulerLabels(later, { pixelsPerSecond: 24 }, ALL)
    expect(numbers[0]).toEqual({ x: expect.closeTo(2 * (60 / 172) * 24, 6), text: '9', kind: 'eight', isFirst: true })
    expect(numbers.filter(({ kind }) => kind === 'phrase').map(({ text }) => text)).toEqual(['phrase 3', 'phrase 4'])
  })

  it('counts sixes and bars of three in three', () => {
    const waltz: RuledSong = { grid: gridOfTempo(120, 0, 3), inCount: 0, total: 48, eight: 6, phrase: 24 }
    const strengths = rulerTicks(waltz, { pixelsPerSecond: 20 }, ALL).map(({ strength }) => strength)
    expect(strengths.slice(0, 7)).toEqual(['phrase', 'count', 'count', 'bar', 'count', 'count', 'eight'])
    expect(strengths[24]).toBe('phrase')
  })

  it('draws of a cut what is in it and nothing that is not nearly', () => {
    const all = ticks(24)
    const cut = ticks(24, { from: 1024, to: 2048 })
    const inside = all.filter(({ x }) => x >= 1024 && x <= 2048)
    expect(cut.filter(({ x }) => x >= 1024)).toEqual(inside)
    expect(cut.length).toBeLessThanOrEqual(inside.length + 1)
  })
})

describe('numbers on the ruler', () => {
  it('are those of phrases’ first eights at a middling zoom, of every eight close up, of fewer far off', () => {
    expect(
      labels(4, 'eight')
        .slice(0, 3)
        .map(({ text }) => text),
    ).toEqual(['1', '5', '9'])
    expect(
      labels(16, 'eight')
        .slice(0, 5)
        .map(({ text, isFirst }) => [text, isFirst ?? false]),
    ).toEqual([
      ['1', true],
      ['2', false],
      ['3', false],
      ['4', false],
      ['5', true],
    ])
    expect(
      labels(1, 'eight')
        .slice(0, 3)
        .map(({ text }) => text),
    ).toEqual(['1', '9', '17'])
  })

  it('say every phrase, or none where the words would meet', () => {
    expect(labels(8, 'phrase').map(({ text }) => text)).toEqual(Array.from({ length: 13 }, (_, i) => `phrase ${i + 1}`))
    expect(labels(5, 'phrase')).toEqual([])
  })

  it('leave the word out where a section mark says more', () => {
    const flags = markFlags(song, [{ count: 32, label: 'first chorus' }], { pixelsPerSecond: 10 })
    const phrases = rulerLabels(song, { pixelsPerSecond: 10 }, ALL, flags).filter(({ kind }) => kind === 'phrase')
    expect(phrases.slice(0, 2).map(({ text }) => text)).toEqual(['phrase 1', 'phrase 3'])
  })

  it('keep inside the song: none is begun that its end would cut off', () => {
    for (let pixelsPerSecond = 0.5; pixelsPerSecond < 30; pixelsPerSecond *= 1.1) {
      const end = song.total * (60 / 172) * pixelsPerSecond
      // A digit takes six pixels.
      for (const { x, text } of rulerLabels(song, { pixelsPerSecond }, ALL)) expect(x + 6 * text.length).toBeLessThanOrEqual(end)
    }
  })

  it('leave a number out that the staff of a flag would strike out, and keep the one it stands before', () => {
    const at = (count: number) =>
      rulerLabels(song, { pixelsPerSecond: 8 }, ALL, markFlags(song, [{ count, label: 'drop' }], { pixelsPerSecond: 8 }))
    const numbers = (count: number) => at(count).flatMap(({ kind, text }) => (kind === 'eight' ? [text] : []))
    expect(numbers(64)).toContain('9')
    expect(numbers(66)).not.toContain('9')
    expect(numbers(72)).toContain('9')
  })

  it('never meet, whatever the tempo, the zoom and the song', () => {
    const anyGrid = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 64 }), fc.double({ min: 0.25, max: 1, noNaN: true })), { minLength: 1, maxLength: 12 })
      .map((steps) => {
        const anchors: [number, number][] = [[0, 0.3]]
        for (const [step, pace] of steps) anchors.push([anchors.at(-1)![0] + step, anchors.at(-1)![1] + step * pace])
        return { anchors, beatsPerBar: 4 as const }
      })
    fc.assert(
      fc.property(
        anyGrid,
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 8, max: 900 }),
        fc.double({ min: 0.12, max: 40, noNaN: true }),
        (grid, inCount, total, pixelsPerSecond) => {
          const any: RuledSong = { grid, inCount, total, eight: 8, phrase: 32 }
          for (const kind of ['eight', 'phrase']) {
            const row = rulerLabels(any, { pixelsPerSecond }, ALL).filter((label) => label.kind === kind)
            for (const [i, { x, text }] of row.entries()) {
              const next = row[i + 1]
              if (next) expect(next.x).toBeGreaterThanOrEqual(x + text.length * 6)
            }
          }
        },
      ),
    )
  })
})

describe('section marks', () => {
  it('are flagged in their places, with names where there is room', () => {
    const marks = [
      { count: 64, label: 'chorus' },
      { count: 0, label: 'in' },
      { count: 72, label: 'drop' },
      { count: 9999, label: 'beyond' },
    ]
    const flags = markFlags(song, marks, { pixelsPerSecond: 4 })
    expect(flags.map(({ label, room }) => [label, room])).toEqual([
      ['in', true],
      ['chorus', false],
      ['drop', true],
    ])
    expect(flags[1]!.x).toBeCloseTo(64 * (60 / 172) * 4, 6)
  })
})
