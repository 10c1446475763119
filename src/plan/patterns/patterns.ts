import type { NewId } from '#plan/copies.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { type Block, isCounted, type Ride, type Section } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { EIGHT } from '#units/units.ts'
import type { BlockPattern } from './blockPattern.ts'
import { stepsOnBike } from './stepsOnBike.ts'
import { WORK_PATTERNS } from './workPatterns.ts'

export const PATTERNS: readonly BlockPattern[] = [
  ...WORK_PATTERNS,
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
    id: 'standing-surge',
    name: 'standing surge',
    terrain: 'surge',
    posture: 'standing',
    hands: 'wide',
    effort: { from: 8.5, to: 8.5 },
    total: { from: 9, to: 9 },
    eights: 4,
    seconds: 20,
    cadence: { rpm: 74 },
    feel: 'a lift out of the saddle you can come back from',
    cue: 'Standing surge next. Resistance first, then up and go.',
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
