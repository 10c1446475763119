import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Cue, Ride, Section } from '#plan/model.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { say } from '#words/said.ts'

const WORDS = 'Half turn on, shoulders loose, eyes up and here we go.'
const cue = (moment: Cue['moment'], seconds: number, text = WORDS): Cue => ({ id: 'cue', moment, lead: { seconds }, text })
const rideOf = (...sections: Section[]): Ride => ({ ...smallRide(), sections })
/** A minute, a block so long, and another with the cue. */
const withRoom = (length: number, said: Cue): Ride =>
  rideOf(
    aSection('s', {
      blocks: [aBlock('a', inSeconds(60)), aBlock('b', inSeconds(length)), aBlock('c', { ...inSeconds(60), cues: [said] })],
    }),
  )
const found = (ride: Ride) => computeRide(ride).findings.filter(({ rule }) => rule === 'cueRoom')
const lineOf = (ride: Ride) => computeRide(ride).cues.lines[0]!

/** How long the words take: they end four seconds before the change. */
const SPOKEN = (() => {
  const { from, to } = lineOf(withRoom(60, cue('announce', 4)))
  return to - from
})()

describe('the room of an announcement', () => {
  it('begins with the change before: a quarter of a second over is a rounding, more is too long', () => {
    expect(SPOKEN).toBeGreaterThan(3)
    const over = (seconds: number) => found(withRoom(SPOKEN + 4 - seconds, cue('announce', 4)))
    expect(over(-1)).toEqual([])
    expect(over(0.24)).toEqual([])
    const [tight, ...more] = over(0.3)
    expect(more).toEqual([])
    expect(tight).toMatchObject({ severity: 'warning', why: say('sources.commonPractice'), id: 'cueRoom:cue', blockId: 'c' })
    expect(tight!.amount).toBeCloseTo(0.3, 9)
    expect(tight!.at).toBeCloseTo(60 - 0.3, 9)
  })

  it('is said in seconds, and words that leave too early are ended later', () => {
    const ride = withRoom(SPOKEN + 2, cue('announce', 4))
    const [tight] = found(ride)
    const tenths = (seconds: number) => seconds.toFixed(1).replace(/\.0$/, '')
    expect(told(tight!.text)).toBe(`“${WORDS}” takes ${tenths(SPOKEN)} s to say and has ${tenths(SPOKEN - 2)} s.`)
    expect(tight!.amount).toBeCloseTo(2, 9)
    expect(tight!.fixes.map(({ label }) => told(label))).toEqual(['End the words 0 s before'])
    const after = tight!.fixes[0]!.command.apply(ride)
    expect(found(after)).toEqual([])
    expect(lineOf(after).cue.lead).toEqual({ seconds: 0 })
  })

  it('has no repair where they end as late as they may', () => {
    const [tight] = found(withRoom(SPOKEN - 1, cue('announce', 0)))
    expect(tight!.fixes).toEqual([])
    expect(found(withRoom(SPOKEN - 1, cue('announce', 0, '')))).toEqual([])
  })

  it('never says less than nothing', () => {
    const [tight] = found(withRoom(2, cue('announce', 4)))
    expect(told(tight!.text)).toMatch(/ and has 0 s\.$/)
  })

  it('goes past a block that a crossfade leaves no time', () => {
    const first = aSection('one', { blocks: [aBlock('a', inSeconds(60)), aBlock('gone', inSeconds(5))] })
    const second = aSection('two', { leadInSeconds: -5, blocks: [aBlock('c', { ...inSeconds(60), cues: [cue('announce', 4)] })] })
    expect(found(rideOf(first, second))).toEqual([])
  })

  it('is open before the first block', () => {
    const ride = rideOf(aSection('s', { blocks: [aBlock('c', { ...inSeconds(60), cues: [cue('announce', 4)] })] }))
    expect(found({ ...ride, briefingSeconds: 0 })).toEqual([])
  })
})

describe('the room of other words', () => {
  it.each(['form', 'story'] as const)('of a %s is its own block, with which it begins where its lead asks for more', (moment) => {
    // Its lead counts back from the block's end.
    const inBlock = (length: number, lead: number) =>
      rideOf(aSection('s', { blocks: [aBlock('a', inSeconds(60)), aBlock('c', { ...inSeconds(length), cues: [cue(moment, lead)] })] }))
    for (const lead of [60 - SPOKEN - 0.1, 60 - SPOKEN + 1, 60]) {
      expect(found(inBlock(60, lead))).toEqual([])
      expect(lineOf(inBlock(60, lead)).from).toBeCloseTo(Math.max(60, 120 - lead - SPOKEN), 9)
    }
    const [tight] = found(inBlock(SPOKEN - 1, SPOKEN - 1))
    expect(tight!.amount).toBeCloseTo(1, 9)
    expect(tight!.fixes).toEqual([])
  })

  it('of a preview is all that comes before', () => expect(found(withRoom(2, cue('preview', 4)))).toEqual([]))
})

it('counts where there is a song, and a call has to leave time to act on', () => {
  const blocks = [
    aBlock('a', { length: { counts: 64 } }),
    aBlock('b', { length: { counts: 8 } }),
    aBlock('c', {
      resistance: { kind: 'change', mode: 'exact', steps: 2 },
      cues: [{ ...cue('announce', 0), lead: { counts: 16 } }],
    }),
  ]
  const ride = rideOf(aSection('s', { song: aSong('m'), blocks }))
  const [tight] = found(ride)
  expect(tight!.fixes.map(({ label }) => told(label))).toEqual(['End the words 2 counts before'])
  expect(found(tight!.fixes[0]!.command.apply(ride))[0]!.amount).toBeCloseTo(tight!.amount! - 7, 9)
})
