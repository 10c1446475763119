import fc from 'fast-check'
import { DEFAULT_BIKE, DEFAULT_LEADER } from '#plan/defaults.ts'
import { applyCall } from '#plan/ledger/applyCall.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import type { Block, Cue, Ride, Section, Terrain } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { sayChange } from '#tests/support/sayChange.ts'

/**
 * Rides as people write them, from a number: six to twelve songs, blocks of whole eights whose
 * effort, posture, hands and total suit each other, and one cue a block in words put together
 * from a leader's. The same number gives the same ride. For measuring sizes on; nothing in it is tuned to any coder.
 */
export function plausibleRide(seed: number): Ride {
  const random = fc.sample(fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true })), { seed, numRuns: 1 })[0]!
  const chance = () => random.next().value as number
  const pick = <T>(of: readonly T[]): T => of[Math.floor(chance() * of.length)]!
  const between = (low: number, high: number) => low + Math.floor(chance() * (high - low + 1))
  const bike = pick([DEFAULT_BIKE, DEFAULT_BIKE, LEVELS_BIKE])
  const datum = bike === DEFAULT_BIKE ? 'base' : 'loose'
  const limits = limitsOf({ bike, datum })
  let state = startOf(limits)
  const stem = chance() < 0.5 ? undefined : `r${between(1000, 9999)}x-`
  let made = 0
  const id = (place: string) => (stem ? `${stem}${(made++).toString(36)}` : place)

  const block = (place: string): Block => {
    const kind = pick(KINDS)
    const effort = between(...kind.effort)
    const aim = Math.round((limits.base + (effort / 10) * kind.weight * 3.5 * (bike === DEFAULT_BIKE ? 4 : 3)) / 1)
    const total = Math.max(limits.base, Math.min(limits.ceiling, aim))
    const steps = total - state.nominal
    const resistance: Block['resistance'] =
      chance() < 0.7 ? { kind: 'total', from: total, to: total } : steps === 0 ? { kind: 'keep' } : { kind: 'change', mode: 'exact', steps }
    state = applyCall(state, resistance, limits).after
    const cues: Cue[] = [
      {
        id: id(`${place}c1`),
        moment: 'announce',
        lead: { counts: pick([4, 8, 8, 16]) },
        text: `${capital(sayChange(steps, bike))}, ${pick(HOW)}. ${capital(pick(WHAT))}${chance() < 0.5 ? `, ${pick(HOW)}` : ''}.`,
      },
    ]
    return {
      id: id(place),
      label: chance() < 0.8 ? kind.terrain : pick(WHAT),
      terrain: kind.terrain,
      length: { counts: 8 * between(4, 16) },
      posture: pick(kind.postures),
      hands: pick(['centre', 'wide', 'wide']),
      resistance,
      effort: { from: effort, to: chance() < 0.1 ? Math.min(10, effort + 1) : effort },
      ...(kind.terrain === 'jumps' && { move: { name: 'jump', counts: pick([4, 8]) } }),
      cues: chance() < 0.9 ? cues : [],
    }
  }

  const section = (number: number): Section => {
    const place = `s${number}`
    const blocks = Array.from({ length: between(3, 7) }, (_, i) => block(`${place}b${i + 1}`))
    const counts = blocks.reduce((sum, { length }) => sum + ('counts' in length ? length.counts : 0), 0)
    const bpm = between(60, 140)
    const firstBeat = between(0, 8) / 4
    return {
      id: id(place),
      song: {
        id: id(`${place}m`),
        title: `${pick(NAMES)} ${pick(NAMES)}`,
        artist: `${pick(NAMES)} ${pick(NAMES)}`,
        grid: gridOfTempo(bpm, firstBeat),
        lengthSeconds: Math.ceil(firstBeat + (counts * 60) / bpm) + between(0, 12),
        strikesPerBeat: bpm < 110 && chance() < 0.4 ? 2 : 1,
      },
      ...(chance() < 0.5 && { outCount: counts }),
      leadInSeconds: 2,
      lead: pick(['left', 'right']),
      blocks,
    }
  }

  return {
    schema: 2,
    id: stem ? `${stem}ride` : 'ride',
    title: `${pick(NAMES)} ${pick(WHAT)}`,
    level: pick(['beginner', 'mixed', 'advanced']),
    slotMinutes: pick([30, 45, 60]),
    briefingSeconds: pick([0, 90]),
    clearUpSeconds: pick([0, 60]),
    datum,
    bike,
    leaders: [{ ...DEFAULT_LEADER, name: pick(NAMES) }],
    sections: Array.from({ length: between(6, 12) }, (_, i) => section(i + 1)),
  }
}

interface Kind {
  terrain: Terrain
  effort: [low: number, high: number]
  /** How much of the effort is resistance and not pace. */
  weight: number
  postures: readonly Block['posture'][]
}

const KINDS: readonly Kind[] = [
  { terrain: 'flat', effort: [3, 5], weight: 0.8, postures: ['seated'] },
  { terrain: 'tempo', effort: [5, 7], weight: 0.9, postures: ['seated'] },
  { terrain: 'hill', effort: [5, 8], weight: 1.2, postures: ['seated', 'standing', 'standing'] },
  { terrain: 'run', effort: [5, 7], weight: 0.8, postures: ['standing'] },
  { terrain: 'push', effort: [8, 9], weight: 1, postures: ['seated', 'standing'] },
  { terrain: 'jumps', effort: [6, 7], weight: 0.8, postures: ['standing'] },
  { terrain: 'recover', effort: [2, 3], weight: 0.5, postures: ['seated'] },
]

const HOW = [
  'light hands',
  'tall spine',
  'smooth and round',
  'shoulders loose',
  'eyes on the road ahead',
  'keep the heels low',
  'no rush',
  'find the beat',
  'breathe out slowly',
  'this is yours',
  'as strong as the last one',
  'nobody counts but you',
]
const WHAT = [
  'one minute here',
  'the last push of the song',
  'long climb next',
  'sit back and settle',
  'two more of these',
  'take a sip of water',
  'we go with the chorus',
  'hold until the break',
  'half a minute',
  'legs that remember the hill',
  'back to the road',
]
const NAMES =
  'Amber Brindle Candle Dovetail Ember Fennel Gantry Harbour Inkwell Juniper Kestrel Lantern Meadow Nutmeg Orchard Pewter Quarry Ripple Saffron Thistle'.split(
    ' ',
  )

const capital = (text: string) => `${text[0]!.toUpperCase()}${text.slice(1)}`
