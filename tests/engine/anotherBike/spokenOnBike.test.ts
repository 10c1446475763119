import { describe, expect, it } from 'vitest'
import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { shortCall, spokenOnBike } from '#engine/anotherBike/spokenOnBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { logOf } from '#tests/support/leading.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { inSeconds } from '#tests/support/smallRide.ts'

const turns = (steps: number, cues: Cue[] = []): Partial<Block> => ({
  ...inSeconds(60),
  cadence: { rpm: 80 },
  resistance: { kind: 'change', mode: 'exact', steps },
  cues,
})
const saying = (text: string, moment: Cue['moment'] = 'announce'): Cue => ({ id: 'cue', moment, lead: { seconds: 4 }, text })

/** One turn on, then another with words about it; at 80 turns of the legs that is about level 12. */
const rideSaying = (...cues: Cue[]): Ride => blocksOnly([turns(4), turns(4, cues)], { bike: DEFAULT_BIKE, datum: 'base' })
const shown = (ride: Ride) => onAnotherBike(ride, computeRide(ride), LEVELS_BIKE)
const spoken = (...cues: Cue[]) => {
  const ride = rideSaying(...cues)
  return spokenOnBike(shown(ride), ride).cues.lines
}
const textOf = (text: string, moment?: Cue['moment']) => spoken(saying(text, moment))[0]!.cue.text

describe('what is said of the knob where another bike stands', () => {
  it.each([
    ['One turn on, up in four.', 'To about twelve, up in four.'],
    ['Shoulders down; add one turn.', 'Shoulders down; to about twelve.'],
    ['Up to two turns now.', 'To about twelve now.'],
    ['Legs quiet, back to two turns.', 'Legs quiet, to about twelve.'],
    ['To one and a half to two turns, hands wide.', 'To about twelve, hands wide.'],
    ['Tomatoes: two turns on.', 'Tomatoes: to about twelve.'],
    ['Same gear, hands wide.', 'To about twelve, hands wide.'],
    ['One on, thirty seconds.', 'To about twelve, thirty seconds.'],
  ])('“%s” is “%s”', (text, other) => expect(textOf(text)).toBe(other))

  it('in words about what comes at once, and in no others', () => {
    const text = 'One turn on, up in four.'
    for (const moment of ['announce', 'countIn', 'action'] as const) expect(textOf(text, moment)).toBe('To about twelve, up in four.')
    for (const moment of ['preview', 'form', 'story'] as const) expect(textOf(text, moment)).toBe(text)
  })

  it.each(['Half turn on, then one on.', 'Up in four, thirty seconds.', 'Breathe.'])(
    '“%s” stays: more than one number of the knob, or none',
    (text) => {
      expect(textOf(text)).toBe(text)
    },
  )

  it('each line for itself, with its time, and nothing else of the report', () => {
    const ride = rideSaying(saying('One turn on.'), { ...saying('Ready?', 'preview'), id: 'other' })
    const report = shown(ride)
    const { cues, ...rest } = spokenOnBike(report, ride)
    const { cues: before, ...restBefore } = report
    expect(rest).toEqual(restBefore)
    expect(cues.lines.map(({ cue, ...times }) => times)).toEqual(before.lines.map(({ cue, ...times }) => times))
    expect(cues.lines.map(({ cue }) => cue.text).sort()).toEqual(['Ready?', 'To about twelve.'])
    expect(before.lines.map(({ cue }) => cue.text).sort()).toEqual(['One turn on.', 'Ready?'])
  })

  it('is what a class is led by, and the plan keeps its own words', () => {
    const ride = rideSaying(saying('One turn on, up in four.'))
    const text = (report: ReturnType<typeof shown>) => ledClass({ ride, report }, logOf()).report.cues.lines[0]!.cue.text
    expect(text(shown(ride))).toBe('To about twelve, up in four.')
    expect(text(computeRide(ride))).toBe('One turn on, up in four.')
  })
})

describe('a call without what it feels like', () => {
  it.each([
    ['to about nine, brisk flat', 'to about nine'],
    ['by feel, heavier: heavy hill', 'by feel, heavier'],
    ['by feel, lighter: base', 'by feel, lighter'],
    ['to about twelve or more, light hill', 'to about twelve or more'],
    ['stay', 'stay'],
  ])('of “%s” is “%s”', (call, short) => {
    const { ledger } = shown(rideSaying()).blocks[0]!
    expect(shortCall({ ...ledger, call })).toBe(short)
  })

  it('of the ride’s own bike is the call itself, commas and all', () => {
    const { ledger } = computeRide(rideSaying()).blocks[0]!
    expect(shortCall({ ...ledger, call: 'by feel, to two: easy' })).toBe('by feel, to two: easy')
  })
})
