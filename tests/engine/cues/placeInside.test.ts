import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { callWords } from '#engine/cues/callWords.ts'
import { roomFor } from '#engine/cues/cueRoom.ts'
import { placeInside, placeTyped, storyRoom } from '#engine/cues/placeInside.ts'
import { addCues } from '#plan/commands/addCues.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { setSong } from '#plan/commands/setSong.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSet, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

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

describe('words that come with no moment of their own', () => {
  const placed = (ride: Ride, text: string, moment: Cue['moment'] = 'form', block = 0) => {
    const report = computeRide(ride)
    const lead = placeTyped(ride, report, block, text)
    const next = addCues([{ blockId: report.blocks[block]!.block.id, cue: { id: 'new', moment, lead, text } }]).apply(ride)
    const { line, room } = lineOf(next, 'new')
    return { lead, line, room, next, block: computeRide(next).blocks[block]! }
  }

  it('begin with their block, after its change, whatever they are', () => {
    for (const moment of ['form', 'story'] as const) {
      const { line, block } = placed(rideWith([], [cue('x', 'Half turn on.', 8)]), 'Light hands and a long back.', moment, 1)
      expect(line.from).toBe(block.from)
      expect(line.to).toBeGreaterThan(block.from)
    }
  })

  it('still do when the block is made longer or shorter, or measured by the clock', () => {
    const { next } = placed(rideWith([], []), 'Light hands.', 'form', 1)
    for (const counts of [16, 32, 400]) {
      const changed = resizeBlock(next, { blockId: 'b', length: { counts } }).apply(next)
      const { line } = lineOf(changed, 'new')
      expect(line.from).toBe(computeRide(changed).blocks[1]!.from)
    }
    const clock = setSong(next, { sectionId: 's', song: null }).apply(next)
    expect(lineOf(clock, 'new').line.from).toBe(computeRide(clock).blocks[1]!.from)
  })

  it('come after what is said as the block begins, on a count', () => {
    const first = placed(rideWith([]), 'Light hands and a long back.')
    const report = computeRide(first.next)
    const lead = placeTyped(first.next, report, 0, 'Breathe low.')
    const both = addCues([{ blockId: 'a', cue: { id: 'second', moment: 'form', lead, text: 'Breathe low.' } }]).apply(first.next)
    const { line } = lineOf(both, 'second')
    expect(line.from).toBeGreaterThanOrEqual(first.line.to)
    expect(line.from - first.line.to).toBeLessThan(1)
    expect(computeRide(both).findings.some(({ rule }) => rule === 'cueCollisions')).toBe(false)
  })

  it('keep clear of music to be left alone', () => {
    const { line } = placed(rideWith([], [], { song: aSong('tune', { quiet: [{ from: 0, to: 32 }] }) }), 'Light hands.')
    expect(line.from).toBeGreaterThanOrEqual(16)
    expect(line.from).toBeLessThan(17)
  })

  it('begin with the block where there is room nowhere', () => {
    const { line, block } = placed(rideWith([], [], { song: aSong('tune', { quiet: [{ from: 0, to: 400 }] }) }), 'Light hands.')
    expect(line.from).toBe(block.from)
  })

  it('have the time to what is said next, or to the block’s end', () => {
    expect(placed(rideWith([]), 'Light hands.').room).toBeCloseTo(64, 9)
    const next = placed(rideWith([], [cue('call', 'Half turn on.', 8)]), 'Light hands.')
    expect(next.room).toBeCloseTo(lineOf(next.next, 'call').line.from, 9)
  })

  it('are told when they run past the block', () => {
    const { next } = placed(rideWith([]), 'word '.repeat(100).trim(), 'form', 1)
    expect(told(computeRide(next).findings.find(({ rule }) => rule === 'cueRoom')?.text)).toMatch(/takes 35\.6 s to say and has 32 s\.$/)
  })

  it('never begin before their block, however long their lead', () => {
    const ride = rideWith([], [cue('x', 'Light hands.', 200, 'form')])
    expect(lineOf(ride, 'x').line.from).toBe(64)
  })
})

describe('room for a story', () => {
  it('runs from the block’s start to the next words, and a story of as many words fits', () => {
    const blocks = [aBlock('a', { length: { counts: 64 } }), aBlock('b', { cues: [cue('x', 'Half turn on.', 8)] })]
    const ride = rideWith([], [], { blocks })
    const report = computeRide(ride)
    const room = storyRoom(ride, report, 0)
    expect(room).toMatchObject({ from: 0 })
    expect(room).not.toHaveProperty('lacks')
    expect(room.to).toBeCloseTo(report.cues.lines[0]!.from, 9)
    const text = Array.from({ length: room.words - 2 }, () => 'word').join(' ')
    const lead = placeTyped(ride, report, 0, text)
    const { line } = lineOf(addCues([{ blockId: 'a', cue: { id: 'story', moment: 'story', lead, text } }]).apply(ride), 'story')
    expect(line.from).toBe(0)
    expect(line.to).toBeLessThanOrEqual(room.to + 1e-9)
  })

  it('is as long as the block where riders can listen, and elsewhere no more than what is said around it leaves', () => {
    // A short word and a longer one, as speech has them.
    const text = (words: number) => Array.from({ length: words }, (_, i) => (i % 2 === 0 ? 'word' : 'riders')).join(' ')
    const at = (level: number, cues: Cue[]): Ride =>
      rideWith([], [], {
        blocks: [
          aBlock('z', { length: { counts: 64 }, effort: { from: level, to: level } }),
          aBlock('a', { length: { counts: 128 }, effort: { from: level, to: level }, cues }),
        ],
      })
    const told = (ride: Ride, words: number) => {
      const lead = placeTyped(ride, computeRide(ride), 1, text(words))
      const change = addCues([{ blockId: 'a', cue: { id: 'story', moment: 'story', lead, text: text(words) } }])
      return computeRide(change.apply(ride)).findings.filter(({ rule }) => rule === 'tooMuchTalk').length
    }
    const rides = [at(3, []), at(8, []), at(8, [cue('x', text(18), 12)])]
    const [calm, hard, busy] = rides.map((ride) => storyRoom(ride, computeRide(ride), 1).words) as [number, number, number]
    expect(calm).toBeGreaterThan(3 * hard)
    expect(busy).toBeLessThan(hard - 3)
    expect(told(rides[0]!, calm - 2)).toBe(0)
    for (const [ride, words] of [
      [rides[1]!, hard],
      [rides[2]!, busy],
    ] as const) {
      // The last pause may take what a word or two would.
      expect(told(ride, words - 2)).toBe(0)
      expect(told(ride, words + 4)).toBeGreaterThan(0)
    }
  })

  it('lacks calm in hard blocks, or room, which is said', () => {
    const ride = demoRide('spark')
    const report = computeRide(ride)
    const hard = report.blocks.filter(({ block }) => block.effort.to >= 8)
    expect(hard.length).toBeGreaterThan(5)
    for (const { index } of hard) expect(storyRoom(ride, report, index).lacks).toBeDefined()
  })

  it('says from when riders can listen again after a hard effort', () => {
    const blocks = [
      aBlock('a', { length: { counts: 128 }, effort: { from: 9, to: 9 } }),
      aBlock('b', { length: { counts: 320 }, effort: { from: 2, to: 2 } }),
    ]
    const ride = rideWith([], [], { blocks })
    const room = storyRoom(ride, computeRide(ride), 1)
    expect(room).toMatchObject({ from: 64, lacks: 'calm' })
    expect(room.calmFrom).toBeGreaterThan(64)
    expect(room.calmFrom).toBeLessThan(150)
  })

  it('is too little in a short block', () => {
    const ride = rideWith([], [], { blocks: [aBlock('a', { length: { counts: 16 } }), aBlock('b')] })
    expect(storyRoom(ride, computeRide(ride), 0)).toMatchObject({ from: 0, to: 8, lacks: 'room' })
  })
})

describe('words that name their own moment', () => {
  it.each([
    'Ten seconds left.',
    'Twenty seconds to go, hold it.',
    'Last eight.',
    'Last four bars.',
    'Halfway there.',
    'A quarter of the way.',
  ])('come where they are true: %s', (text) => {
    const ride = rideWith([])
    const lead = placeTyped(ride, computeRide(ride), 0, text)
    const { line } = lineOf(addCues([{ blockId: 'a', cue: { id: 'told', moment: 'form', lead, text } }]).apply(ride), 'told')
    expect(line.from).toBeGreaterThan(10)
    const after = addCues([{ blockId: 'a', cue: { id: 'told', moment: 'form', lead, text } }]).apply(ride)
    expect(computeRide(after).findings.filter(({ rule }) => rule === 'cueNumbers')).toEqual([])
  })

  it('come at the start where the block is no longer than they say', () => {
    const ride = rideWith([])
    const lead = placeTyped(ride, computeRide(ride), 0, 'Ninety seconds left.')
    const { line } = lineOf(
      addCues([{ blockId: 'a', cue: { id: 'told', moment: 'form', lead, text: 'Ninety seconds left.' } }]).apply(ride),
      'told',
    )
    expect(line.from).toBe(0)
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
