import { eightOf } from '#plan/beatGrid.ts'
import type { NewId } from '#plan/copies.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import {
  type Block,
  type Cadence,
  type Hands,
  isCounted,
  type Move,
  type Posture,
  type Ride,
  type Section,
  type Terrain,
} from '#plan/model.ts'
import { stepsOnBike } from '#plan/sameLoad.ts'
import { type Effort, EIGHT, type KnobSteps, type Seconds } from '#units/units.ts'

/** A kind of block to start from. Its values are common practice for a mixed class and meant to be changed. */
export interface BlockPattern {
  id: string
  name: string
  terrain: Terrain
  posture: Posture
  hands: Hands
  effort: { from: Effort; to: Effort }
  /** Total over base in steps of the default bike (quarter turns). */
  total: { from: KnobSteps; to: KnobSteps }
  /** Length under a song with beats. */
  eights: number
  /** Length by the clock. */
  seconds: Seconds
  /** Stated where no beat gives it. */
  cadence: Cadence
  /** Rides off the beat even under a song. */
  offBeat?: boolean
  move?: Move
  feel: string
  /** Spoken ahead of the block; names no number, so it stays true when the block changes. */
  cue: string
}

export const PATTERNS: readonly BlockPattern[] = [
  {
    id: 'flat',
    name: 'flat',
    terrain: 'flat',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 4, to: 4 },
    total: { from: 2, to: 2 },
    eights: 8,
    seconds: 60,
    cadence: { rpm: 85 },
    feel: 'brisk legs, you can still chat',
    cue: 'Sit tall, soft hands, brisk legs.',
  },
  {
    id: 'seated-hill',
    name: 'seated hill',
    terrain: 'hill',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 6, to: 6 },
    total: { from: 8, to: 8 },
    eights: 8,
    seconds: 60,
    cadence: { rpm: 68 },
    feel: 'heavy, still smooth',
    cue: 'Seated hill. Heavy, but smooth.',
  },
  {
    id: 'standing-hill',
    name: 'standing hill',
    terrain: 'hill',
    posture: 'standing',
    hands: 'ends',
    effort: { from: 7, to: 7 },
    total: { from: 10, to: 10 },
    eights: 8,
    seconds: 30,
    cadence: { rpm: 66 },
    feel: 'weight over the pedals, light hands',
    cue: 'Resistance first, then rise. Light hands.',
  },
  {
    id: 'jumps-8',
    name: 'jumps on 8',
    terrain: 'jumps',
    posture: 'standing',
    hands: 'wide',
    effort: { from: 7, to: 7 },
    total: { from: 6, to: 6 },
    eights: 8,
    seconds: 30,
    cadence: { rpm: 76 },
    move: { name: 'jump', counts: 8 },
    feel: 'land soft, hips do the work',
    cue: 'Jumps next. Up slow, down slow, land soft.',
  },
  {
    id: 'push',
    name: 'push',
    terrain: 'push',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 9, to: 9 },
    total: { from: 7, to: 7 },
    eights: 8,
    seconds: 20,
    cadence: { rpm: 92 },
    feel: 'hard, a word at a time',
    cue: 'Push next. Resistance first, then go.',
  },
  {
    id: 'run',
    name: 'standing run',
    terrain: 'run',
    posture: 'standing',
    hands: 'wide',
    effort: { from: 7, to: 7 },
    total: { from: 6, to: 6 },
    eights: 8,
    seconds: 30,
    cadence: { rpm: 78 },
    feel: 'up light, on the beat',
    cue: 'Standing run. Up light, hips over the saddle.',
  },
  {
    id: 'leans',
    name: 'side leans',
    terrain: 'run',
    posture: 'standing',
    hands: 'wide',
    effort: { from: 7, to: 7 },
    total: { from: 6, to: 6 },
    eights: 8,
    seconds: 30,
    cadence: { rpm: 76 },
    // biome-ignore lint/suspicious/noThenProperty: a word, never a function, so nothing takes a move for a promise
    move: { name: 'side lean', counts: 8, side: 'left', then: 'alternate' },
    feel: 'shoulders move, hips stay',
    cue: 'Side leans. Left first, hips stay still.',
  },
  {
    id: 'tempo',
    name: 'tempo',
    terrain: 'tempo',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 6, to: 6 },
    total: { from: 4, to: 4 },
    eights: 16,
    seconds: 120,
    cadence: { rpm: 88 },
    feel: 'steady, a sentence at most',
    cue: 'Tempo. Find it and hold it.',
  },
  {
    id: 'surge',
    name: 'surge',
    terrain: 'surge',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 8, to: 8 },
    total: { from: 6, to: 6 },
    eights: 8,
    seconds: 20,
    cadence: { rpm: 90 },
    feel: 'a lift you can come back from',
    cue: 'Surge next. Lift it.',
  },
  {
    id: 'recover',
    name: 'recover',
    terrain: 'recover',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 3, to: 3 },
    total: { from: 2, to: 2 },
    eights: 12,
    seconds: 45,
    cadence: { rpm: 80 },
    feel: 'breath comes back',
    cue: 'Sit. Ease it off and breathe.',
  },
  {
    id: 'flush',
    name: 'flush',
    terrain: 'flush',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 2, to: 2 },
    total: { from: 1, to: 1 },
    eights: 16,
    seconds: 120,
    cadence: { rpm: 75 },
    feel: 'light contact, legs roll',
    cue: 'Let the legs roll, keep a light base.',
  },
  {
    id: 'stretch',
    name: 'stretch',
    terrain: 'stretch',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 1, to: 1 },
    total: { from: 1, to: 1 },
    eights: 16,
    seconds: 150,
    cadence: 'legsStill',
    offBeat: true,
    feel: 'wheel stopped, no bouncing',
    cue: 'Wheel stopped. Hips, hamstrings, calves.',
  },
]

/**
 * A block made from a pattern for a section: in whole eights under a song with beats, else
 * in seconds with its cadence stated; the total is what weighs the same on the ride's bike.
 */
export function blockFromPattern(pattern: BlockPattern, ride: Ride, section: Section, newId: NewId): Block {
  const grid = section.song?.grid
  const counted = isCounted(section)
  const stated = pattern.offBeat === true || !counted || section.song?.strikesPerBeat === null
  return {
    id: newId(),
    label: pattern.name,
    terrain: pattern.terrain,
    length: counted ? { counts: pattern.eights * eightOf(grid) } : { seconds: pattern.seconds },
    posture: pattern.posture,
    hands: pattern.hands,
    resistance: {
      kind: 'total',
      from: stepsOnBike(pattern.total.from, DEFAULT_BIKE, ride),
      to: stepsOnBike(pattern.total.to, DEFAULT_BIKE, ride),
    },
    ...(stated && { cadence: pattern.cadence }),
    effort: pattern.effort,
    ...(pattern.move && { move: pattern.move }),
    feel: pattern.feel,
    cues: [{ id: newId(), moment: 'announce', lead: counted ? { counts: EIGHT } : { seconds: 8 }, text: pattern.cue }],
  }
}
