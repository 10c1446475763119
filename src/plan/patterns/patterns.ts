import type { NewId } from '#plan/copies.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { type Block, isCounted, type Ride, type Section } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { EIGHT } from '#units/units.ts'
import type { Language } from '#words/language.ts'
import { say } from '#words/said.ts'
import type { BlockPattern } from './blockPattern.ts'
import { stepsOnBike } from './stepsOnBike.ts'
import { ENGLISH } from './words/english.ts'
import { GERMAN } from './words/german.ts'
import type { PatternWords } from './words/patternWords.ts'
import { WORK_PATTERNS } from './workPatterns.ts'

const NAMELESS: readonly Omit<BlockPattern, 'name'>[] = [
  ...WORK_PATTERNS,
  {
    id: 'tempo',
    terrain: 'tempo',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 6, to: 6 },
    total: { from: 4, to: 4 },
    eights: 16,
    seconds: 120,
    cadence: { rpm: 88 },
  },
  {
    id: 'surge',
    terrain: 'surge',
    posture: 'seated',
    hands: 'wide',
    effort: { from: 8, to: 8 },
    total: { from: 6, to: 6 },
    eights: 8,
    seconds: 20,
    cadence: { rpm: 90 },
  },
  {
    id: 'standing-surge',
    terrain: 'surge',
    posture: 'standing',
    hands: 'wide',
    effort: { from: 8.5, to: 8.5 },
    total: { from: 9, to: 9 },
    eights: 4,
    seconds: 20,
    cadence: { rpm: 74 },
  },
  {
    id: 'recover',
    terrain: 'recover',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 3, to: 3 },
    total: { from: 2, to: 2 },
    eights: 12,
    seconds: 45,
    cadence: { rpm: 80 },
  },
  {
    id: 'flush',
    terrain: 'flush',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 2, to: 2 },
    total: { from: 1, to: 1 },
    eights: 16,
    seconds: 120,
    cadence: { rpm: 75 },
  },
  {
    id: 'stretch',
    terrain: 'stretch',
    posture: 'seated',
    hands: 'centre',
    effort: { from: 1, to: 1 },
    total: { from: 1, to: 1 },
    eights: 16,
    seconds: 150,
    cadence: 'legsStill',
    offBeat: true,
  },
]

export const PATTERNS: readonly BlockPattern[] = NAMELESS.map((pattern) => ({
  ...pattern,
  name: say('patterns.name', { pattern: pattern.id }),
}))

const WORDS: Readonly<Record<Language, PatternWords>> = { en: ENGLISH, de: GERMAN }

/**
 * A block made from a pattern for a section: in whole eights under a song with beats, else
 * in seconds with its cadence stated; the total is what weighs the same on the ride's bike.
 * Its words are in the language riders are spoken to in, and name no number, so they stay true when the block changes.
 */
export function blockFromPattern(pattern: BlockPattern, ride: Ride, section: Section, newId: NewId): Block {
  const grid = section.song?.grid
  const counted = isCounted(section)
  const words = WORDS[ride.language ?? 'en'][pattern.id]
  const stated = pattern.offBeat === true || !counted || section.song?.strikesPerBeat === null
  return {
    id: newId(),
    label: words.name,
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
    ...(pattern.move && { move: { ...pattern.move, ...(words.move && { name: words.move }) } }),
    feel: words.feel,
    cues: [{ id: newId(), moment: 'announce', lead: counted ? { counts: EIGHT } : { seconds: 8 }, text: words.cue }],
  }
}

/** The name a move of the trade is stored under in a ride: as the patterns of its language have it, else its English one. */
export function moveNameOf(move: string, { language = 'en' }: Pick<Ride, 'language'>): string {
  const pattern = PATTERNS.find((each) => each.move?.name === move)
  return (pattern && WORDS[language][pattern.id].move) ?? move
}
