import { plural } from '#units/plural.ts'
/**
 * Every sentence the doors of the document can say, in an instructor's plain words.
 * A schema message is a predicate ("must lie between 0 and 10"); `sentenceAt` puts the
 * place and the subject before it and the value found behind it.
 */

import type { Unreadable } from './plainCopy.ts'

const unit = (name?: string) => (name === undefined ? '' : ` ${name}`)

/** Predicates, by what is wrong. */
export const say = {
  text: 'must be text',
  longText: (most: number) => `is too long; at most ${most} characters are kept`,
  emptyText: 'must not be empty',
  revision: 'must be 16 hexadecimal digits',
  id: 'must be made of letters, digits and . _ : - only and start with a letter or digit',
  clock: 'must be a time of day such as 18:30',
  number: 'must be a number',
  whole: 'must be a whole number',
  between: (low: number, high: number, of?: string) => `must lie between ${low} and ${high}${unit(of)}`,
  above: (low: number, high: number, of?: string) => `must be more than ${low} and at most ${high}${unit(of)}`,
  yesOrNo: 'must be true or false',
  oneOf: (choices: readonly unknown[]) => `must be ${choices.length === 1 ? '' : 'one of '}${choices.join(', ')}`,
  group: 'must be a group of named values',
  list: 'must be a list',
  shortList: (fewest: number) => `must have at least ${plural(fewest, 'entry', 'entries')}`,
  longList: (most: number) => `has too many entries; at most ${most} can be opened`,
  pair: 'must be a pair of numbers',
  countsOrSeconds: 'must be given in counts or in seconds, not in both',
  missing: 'is missing',
}

/** Whole sentences about the document as such. */
export const ABOUT_DOCUMENT = {
  notARide: 'This is not a ride: it has no schema number.',
  newer: (schema: number) => `This ride was made with a newer version (document ${schema}); update to open it.`,
  badSchema: 'The schema number of this ride is damaged; it should be 1 or more.',
  cannotMigrate: (from: number) => `This ride was made with an old version (document ${from}) and could not be brought up to date.`,
  more: (count: number) => (count === 1 ? 'And one more problem.' : `And ${count} more problems.`),
  unreadable: {
    tooDeep: 'This cannot be opened: it is nested far deeper than any ride.',
    tooLarge: 'This cannot be opened: it is far larger than any ride.',
    unreadable: 'This cannot be read.',
  } satisfies Record<Unreadable, string>,
}

/** Whole sentences about a link. */
export const ABOUT_LINK = {
  notOurs: 'This is not a link to a ride.',
  tooLong: 'This link is far longer than any ride; it was not opened.',
  tooNew: 'This link was made with a newer version; update to open it.',
  truncated: (missing?: number, of?: number) =>
    missing === undefined || of === undefined
      ? 'The end of this link is missing. Copy the whole link and try again.'
      : `The end of this link is missing: ${grouped(missing)} of its ${grouped(of)} characters. Copy the whole link and try again.`,
  recased: 'This link is damaged: a program changed its capital and small letters. Ask for the ride as a file instead.',
  damaged: 'This link is damaged; ask for it again.',
  tooLarge: 'This link holds far more than a ride; it was not opened.',
}

/** "1,480" */
const grouped = (count: number): string => count.toLocaleString('en-US')

/** Predicates of the rules that look at more than one value. */
export const RULES = {
  repeatedId: (id: string) => `is used a second time (“${id}”); every section, block and cue needs its own`,
  lengthInCounts: 'must be given in counts, because the song has a beat grid',
  lengthInSeconds: 'must be given in seconds, because there is no beat grid to count by',
  noSuchLeader: (id: string) => `is not one of this ride’s leaders (“${id}”)`,
  lowAboveHigh: (low: number, high: number) => `must run from low to high; it runs from ${low} to ${high}`,
  endOfOpen: (low: number, high: number) => `must be the same as the lower one where it says “or more”; they are ${low} and ${high}`,
  aimOutside: (low: number, high: number) => `must lie between the two ends of its range, ${low} and ${high}`,
  notRising: 'must come later than the one before, in counts and in seconds',
  odd: {
    notWhole: 'must be whole numbers',
    none: 'must be of at least one extra or missing beat',
    notRising: 'must come later than the one before',
    noRoom: 'must not miss more beats than are counted between it and the one before, or the song’s beginning',
  },
  tempo: (low: number, high: number, bpm: number) =>
    `gives a tempo outside ${low} to ${high} beats a minute (${Number.isFinite(bpm) ? Math.round(bpm) : 'endless'})`,
  outBeforeIn: (from: number, to: number) => `must come after the in-point; the section goes in at ${from} and out at ${to}`,
  emptyStretch: 'must come after the start',
  eightsCrossed: (low: number, high: number) => `must not be fewer than the fewest eights; they are ${low} and ${high}`,
  wholeSteps: (setting: number, stepsPerUnit: number) =>
    `must be a whole number of steps; ${setting} at ${stepsPerUnit} steps a unit is not`,
  settingsCrossed: (low: number, high: number) => `must be above the lowest; they are ${low} and ${high}`,
  baseOutside: (low: number, high: number) => `must lie between the lowest and the highest setting, ${low} and ${high}`,
  pointsNotRising: 'must be at a higher setting than the one before, with no fewer watts',
  playsTooMuch: (played: number, most: number) =>
    `has ${grouped(played)} blocks when its sets are ridden out; at most ${grouped(most)} can be planned`,
  saysTooMuch: (spoken: number, most: number) => `has ${grouped(spoken)} cues to say; at most ${grouped(most)} can be planned`,
  tooManyWords: (letters: number, most: number) =>
    `has ${grouped(letters)} letters on its blocks and cues; at most ${grouped(most)} can be planned`,
  lastsTooLong: (hours: number, most: number) => `lasts ${grouped(Math.round(hours))} hours; at most ${most} can be planned`,
  maxHrTooLow: 'must be above the resting heart rate',
  thresholdOutOfOrder: 'must lie in order: rest, first threshold, second threshold, highest',
}

/** A value found, short enough for a sentence. */
function shown(value: unknown): string {
  if (typeof value === 'string') return value.length > 40 ? `“${[...value].slice(0, 40).join('')}…”` : `“${value}”`
  if (typeof value === 'number') return Number.isNaN(value) ? 'no number at all' : Number.isFinite(value) ? String(value) : 'endless'
  if (typeof value === 'boolean') return String(value)
  if (value === null) return 'empty'
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' ? 'a group of values' : 'something a file cannot hold'
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** "Section 3, block 2: the effort must lie between 0 and 10; it is 14." */
export function sentenceAt(place: string, subject: string, predicate: string, found?: unknown): string {
  const tail = found === undefined ? '.' : `; it is ${shown(found)}.`
  return place === '' ? `${capital(subject)} ${predicate}${tail}` : `${capital(place)}: ${subject} ${predicate}${tail}`
}
