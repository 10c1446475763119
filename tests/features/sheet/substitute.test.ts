import { describe, expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { minutesWords } from '#features/sheet/substitute/minutesWords.ts'
import { withoutSongWords } from '#features/sheet/substitute/songWords.ts'
import { substituteContents } from '#features/sheet/substitute/substituteContents.ts'
import type { Block, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const spark = demoRide('spark')
const ridge = demoRide('ridge')
const contentsOf = (ride: Ride) => substituteContents(ride, computeRide(ride), 'today')
const stretchesOf = (ride: Ride) => contentsOf(ride).bands.flatMap(({ groups }) => groups.flatMap(({ stretches }) => stretches))
const clocked = (id: string, change: Partial<Block> = {}) => aBlock(id, { ...inSeconds(60), cadence: { rpm: 80 }, ...change })

test.each([
  [0, '0 min'],
  [3, '5 s'],
  [22, '20 s'],
  [42.4, '40 s'],
  [42.5, '¾ min'],
  [52, '¾ min'],
  [60, '1 min'],
  [231, '3¾ min'],
  [3600, '60 min'],
])('%d s is %s', (seconds, words) => expect(minutesWords(seconds)).toBe(words))

test.each([
  ['Left foot on the one.', ''],
  ['Half turn on, up on the beat. Heavy, but smooth.', 'Half turn on. Heavy, but smooth.'],
  ['Push to the chorus', ''],
  ['Eight up, eight down, four of each.', ''],
  ['Fours now. Option: keep the eights.', ''],
  ['Sit. Breathe.', 'Sit. Breathe.'],
])('“%s” to any music is “%s”', (text, kept) => expect(withoutSongWords(text)).toBe(kept))

test.each([
  ['Linker Fuß auf der Eins.', ''],
  ['Halbe Umdrehung drauf, hoch auf dem Beat. Schwer, aber rund.', 'Halbe Umdrehung drauf. Schwer, aber rund.'],
  ['Push bis zum Refrain', ''],
  ['Vier Achter sitzen.', ''],
  ['Achte auf die Knie. Beachtlich ruhig.', 'Achte auf die Knie. Beachtlich ruhig.'],
])('“%s” to any music is “%s” in a German ride', (text, kept) => expect(withoutSongWords(text, 'de')).toBe(kept))

describe('what a substitute gets', () => {
  test('has no song, no word of one and no count in it', () => {
    for (const ride of [spark, ridge]) {
      const { title: _title, aim: _aim, ...said } = contentsOf(ride)
      const text = JSON.stringify(said)
      for (const { song } of ride.sections) if (song) expect(text).not.toContain(song.title)
      expect(text).not.toMatch(/\b(?:eights?|counts?|beats?|chorus|verse|bpm|phrase|on the one|beat 1)\b|8s/i)
    }
  })

  test('covers the class: every minute, effort with its words, a feel', () => {
    for (const ride of [spark, ridge]) {
      const report = computeRide(ride)
      const rows = contentsOf(ride).bands.flatMap(({ groups }) =>
        groups.flatMap(({ times, stretches }) => stretches.map((one) => ({ ...one, times }))),
      )
      const planned = report.blocks.reduce((sum, { from, to }) => sum + to - from, 0)
      const told = rows.reduce((sum, { seconds, times }) => sum + seconds * times, 0)
      expect(Math.abs(told - planned) / planned).toBeLessThan(0.02)
      for (const { feel, effortWords, length } of rows) for (const words of [feel, effortWords, length]) expect(words).not.toBe('')
    }
  })

  test('says what goes on alike once, and what comes in turn with its times', () => {
    const easy = (id: string) => clocked(id, { effort: { from: 3, to: 3 }, terrain: 'recover' })
    const hard = (id: string) => clocked(id, { effort: { from: 9, to: 9 }, terrain: 'push', length: { seconds: 20 } })
    const blocks = [clocked('a'), clocked('b'), hard('p1'), easy('r1'), hard('p2'), easy('r2'), hard('p3'), easy('r3')]
    const ride: Ride = { ...smallRide(), sections: [aSection('s', { blocks })] }
    const [band] = contentsOf(ride).bands
    expect(band!.groups.map(({ times, stretches }) => [times, stretches.map(({ road, length }) => `${length} ${road}`)])).toEqual([
      [1, ['2 min flat']],
      [3, ['20 s push', '1 min recovery']],
    ])
    expect(band!.character).toBe('recovery and flat')
  })

  test('keeps own words for the feel and the options, and leaves out staying seated, which is said once', () => {
    const ride: Ride = {
      ...smallRide(),
      sections: [
        aSection('s', {
          blocks: [clocked('a', { feel: 'Wet sand.', easier: { text: 'Stay seated' }, harder: { text: 'A quarter more.' } })],
        }),
      ],
    }
    expect(stretchesOf(ride)[0]).toMatchObject({ feel: 'wet sand', total: '0', options: ['harder: a quarter more'] })
  })

  test('rounds that differ in their total are told once, with the total of each', () => {
    const part = (id: string, change: Partial<Block>) => clocked(id, change)
    const hard = part('hard', { effort: { from: 8, to: 8 }, terrain: 'hill', resistance: { kind: 'total', from: 8, to: 8 } })
    const easy = part('easy', { effort: { from: 3, to: 3 }, terrain: 'recover', resistance: { kind: 'total', from: 2, to: 2 } })
    const ride: Ride = {
      ...smallRide(),
      sections: [aSection('s', { blocks: [aSet('set', [hard, easy], { rounds: 3, perRound: { steps: 1 } })] })],
    }
    const [group] = contentsOf(ride).bands[0]!.groups
    expect(group!.times).toBe(3)
    expect(group!.stretches.map(({ total }) => total)).toEqual(['2, 2¼, 2½', '½, ¾, 1'])
    expect(group!.stretches[0]!.feel).toBe('solid hill to heavy hill')
  })

  test('rounds that differ in anything else are told apart', () => {
    const push = (id: string, change: Partial<Block> = {}) =>
      clocked(id, { effort: { from: 9, to: 9 }, terrain: 'push', length: { seconds: 20 }, ...change })
    const easy = (id: string) => clocked(id, { effort: { from: 3, to: 3 }, terrain: 'recover' })
    const timesOf = (second: Partial<Block>) => {
      const blocks = [push('p1'), easy('r1'), push('p2', second), easy('r2')]
      return contentsOf({ ...smallRide(), sections: [aSection('s', { blocks })] }).bands[0]!.groups.map(({ times }) => times)
    }
    expect(timesOf({})).toEqual([2])
    for (const change of [
      { length: { seconds: 25 } },
      { posture: 'standing' },
      { easier: { text: 'half of it' } },
      { effort: { from: 9.5, to: 9.5 } },
      { allOut: true },
      { feel: 'wet sand' },
    ] satisfies Partial<Block>[])
      expect(timesOf(change)).toEqual([1])
  })

  test('blocks that go on alike with another total are told apart', () => {
    const total = (steps: number) => ({ resistance: { kind: 'total' as const, from: steps, to: steps } })
    const blocks = [clocked('a', total(2)), clocked('b', total(2)), clocked('c', total(4))]
    const stretches = stretchesOf({ ...smallRide(), sections: [aSection('s', { blocks })] })
    expect(stretches.map(({ length, total: told }) => [length, told])).toEqual([
      ['2 min', '½'],
      ['1 min', '1'],
    ])
  })

  test('the leader’s notes stand before what follows from the plan', () => {
    const ride: Ride = {
      ...ridge,
      location: 'Studio B, Quay Street',
      avoidMoves: ['press'],
      standIn: { room: 'Key at the desk.\nMind the cable.', mustDo: 'Leave at ten to.', mustNot: 'No lights off.' },
    }
    const { brief } = contentsOf(ride)
    expect(brief.map(({ name }) => name)).toEqual(['the room', 'must do', 'must not'])
    expect(brief[0]!.lines.slice(0, 3)).toEqual(['Studio B, Quay Street', 'Key at the desk', 'Mind the cable'])
    expect(brief[1]!.lines[0]).toBe('Leave at ten to')
    expect(brief[1]!.lines.at(-1)).toBe('off the bikes by 7:15 PM')
    expect(brief[2]!.lines).toEqual([
      'No lights off',
      'this room does no press',
      'no fast legs without resistance, no feet off moving pedals',
    ])
  })
})
