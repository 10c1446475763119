import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { callWords } from '#engine/cues/callWords.ts'
import { roomFor } from '#engine/cues/cueRoom.ts'
import { placeInside, storyRoom } from '#engine/cues/placeInside.ts'
import { addCues } from '#plan/commands/addCues.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'

const cue = (id: string, text: string, counts: number, moment: Cue['moment'] = 'announce'): Cue => ({ id, moment, lead: { counts }, text })
/** Two beats a second; block a from 0 to 64 s, b to 96 s. */
const rideWith = (a: Cue[], b: Cue[] = [], change: Parameters<typeof aSection>[1] = {}): Ride => ({
  ...smallRide(),
  sections: [
    aSection('s', {
      song: aSong('tune'),
      blocks: [aBlock('a', { length: { counts: 128 }, cues: a }), aBlock('b', { length: { counts: 64 }, cues: b })],
      ...change,
    }),
  ],
})
const lineOf = (ride: Ride, id: string) => {
  const report = computeRide(ride)
  const line = report.cues.lines.find((one) => one.cue.id === id)!
  return { line, room: roomFor(line, report.cues.lines, report.blocks) }
}

describe('the room for words', () => {
  it('runs from the change before to where they end', () => {
    expect(lineOf(rideWith([], [cue('x', 'Half turn on.', 8)]), 'x').room).toBeCloseTo(60, 9)
  })

  it('runs from the end of what is spoken before them', () => {
    const ride = rideWith([], [cue('first', 'One two three four.', 16), cue('x', 'Half turn on.', 8)])
    const { line, room } = lineOf(ride, 'x')
    expect(line.to).toBeCloseTo(60, 9)
    expect(room).toBeCloseTo(4, 9)
  })

  it('is none where other words are over no sooner', () => {
    const long = 'One two three four five six seven eight nine ten eleven twelve.'
    expect(lineOf(rideWith([], [cue('long', long, 4), cue('x', 'Half turn on.', 4)]), 'x').room).toBe(0)
  })

  it('stays inside the block for words about form', () => {
    expect(lineOf(rideWith([], [cue('x', 'Light hands.', 32, 'form')]), 'x').room).toBeCloseTo(16, 9)
  })
})

describe('words about form', () => {
  it('go to the middle of the longest free stretch, on a count', () => {
    const ride = rideWith([], [])
    const lead = placeInside(ride, computeRide(ride), 0, 'Light hands and a long back.')!
    const next = addCues([{ blockId: 'a', cue: { id: 'f', moment: 'form', lead, text: 'Light hands and a long back.' } }]).apply(ride)
    const { line } = lineOf(next, 'f')
    expect('counts' in lead && Number.isInteger(lead.counts)).toBe(true)
    expect((line.from + line.to) / 2).toBeGreaterThan(31.7)
    expect((line.from + line.to) / 2).toBeLessThan(32.3)
  })

  it('keep clear of other words and of music to be left alone', () => {
    const quiet = { song: aSong('tune', { quiet: [{ from: 0, to: 96 }] }) }
    const ride = rideWith([], [], quiet)
    const lead = placeInside(ride, computeRide(ride), 0, 'Light hands.')!
    const { line } = lineOf(addCues([{ blockId: 'a', cue: { id: 'f', moment: 'form', lead, text: 'Light hands.' } }]).apply(ride), 'f')
    expect(line.from).toBeGreaterThan(48)
    expect(line.to).toBeLessThan(64)
    const full = rideWith([], [], { song: aSong('tune', { quiet: [{ from: 0, to: 400 }] }) })
    expect(placeInside(full, computeRide(full), 0, 'Light hands.')).toBeNull()
  })

  it('are in seconds where the block is', () => {
    const ride = { ...smallRide(), sections: [aSection('s', { blocks: [aBlock('a', { length: { seconds: 61 } })] })] }
    expect(placeInside(ride, computeRide(ride), 0, 'Light hands.')).toEqual({ seconds: 30 })
  })
})

describe('room for a story', () => {
  it('is the longest quiet stretch of an easy block, and a story that ends with it fits', () => {
    const blocks = [aBlock('a', { length: { counts: 64 } }), aBlock('b', { cues: [cue('x', 'Half turn on.', 8)] })]
    const ride = rideWith([], [], { blocks })
    const report = computeRide(ride)
    const room = storyRoom(ride, report, 0)!
    expect(room.from).toBe(0)
    expect(room.to).toBeCloseTo(report.cues.lines[0]!.from, 9)
    const text = Array.from({ length: room.words - 2 }, () => 'word').join(' ')
    const next = addCues([{ blockId: 'a', cue: { id: 'story', moment: 'story', lead: room.lead, text } }]).apply(ride)
    const { line } = lineOf(next, 'story')
    expect(line.from).toBeGreaterThanOrEqual(room.from - 0.01)
    expect(line.to).toBeLessThanOrEqual(room.to + 1e-9)
  })

  it('is none in hard blocks', () => {
    const ride = demoRide('spark')
    const report = computeRide(ride)
    const hard = report.blocks.filter(({ block }) => block.effort.to >= 8)
    expect(hard.length).toBeGreaterThan(5)
    for (const { index } of hard) expect(storyRoom(ride, report, index)).toBeNull()
  })
})

describe('the words of a call', () => {
  const wordsOf = (ride: Ride, blockId: string) => {
    const report = computeRide(ride)
    const change = report.cues.changes.find(({ block }) => report.blocks[block]!.block.id === blockId)
    return change && callWords(ride, report.blocks, change)
  }

  it('come from the ledger, resistance before posture', () => {
    const ride = demoRide('spark')
    expect(wordsOf(ride, 's2b3')).toBe('Half a turn on. Up.')
    expect(wordsOf(ride, 's3b2')).toBe('Three quarters on. Up.')
  })

  it('call a pace that changes without the knob', () => {
    const blocks = [
      aBlock('a', { length: { seconds: 60 }, cadence: { rpm: 80 } }),
      aBlock('b', { length: { seconds: 60 }, cadence: { rpm: 92 } }),
      aBlock('c', { length: { seconds: 60 }, cadence: { rpm: 92, rampTo: 100 } }),
    ]
    const ride = { ...smallRide(), sections: [aSection('s', { blocks })] }
    expect(wordsOf(ride, 'b')).toBe('Faster, to 92.')
    expect(wordsOf(ride, 'c')).toBe('Pick it up to 100.')
  })

  it('leave out of a set’s call what differs from round to round', () => {
    const set = aSet(
      'set',
      [
        aBlock('on', { resistance: { kind: 'change', mode: 'exact', steps: 4 }, posture: 'standing' }),
        aBlock('off', { resistance: { kind: 'change', mode: 'exact', steps: -4 } }),
      ],
      { perRound: { steps: 1 } },
    )
    const ride = { ...smallRide(), sections: [aSection('s', { song: aSong('tune'), blocks: [set] })] }
    expect(wordsOf(ride, 'on')).toBe('Up.')
  })
})
