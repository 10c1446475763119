import { number, plural } from '#words/forms.ts'

/** Finding and replacing words in one ride. */

const KINDS = {
  title: 'title of the ride',
  aim: 'aim',
  location: 'location',
  instructor: 'instructor',
  standIn: 'for a sub',
  privateNotes: 'private notes',
  avoidMove: 'move to avoid',
  section: 'name of the song',
  mark: 'place in the song',
  sectionNotes: 'notes on the song',
  block: 'name of the block',
  set: 'name of the set',
  cue: 'cue',
  feel: 'feel',
  easier: 'easier',
  harder: 'harder',
  move: 'move',
  blockNotes: 'notes on the block',
}

const WHERE = { all: 'everywhere', cues: 'cues', names: 'names', notes: 'notes' }

export const replacing = {
  title: 'find and replace',
  does: 'replace words in the cues, names, and notes of this ride',
  where: 'Only in this ride. What the music is called stays as it is.',
  find: 'find',
  by: 'replace with',
  matchCase: 'match case',
  wholeWords: 'whole words',
  lookIn: 'look in',
  part: ({ part }: { part: keyof typeof WHERE }) => WHERE[part],
  kind: ({ kind }: { kind: keyof typeof KINDS }) => KINDS[kind],
  /** What one hit is and where, for the box that says whether it is meant. */
  hit: ({ kind, where, text }: { kind: string; where: string; text: string }) =>
    [kind, where, text].filter((part) => part !== '').join(', '),
  found: ({ chosen, count }: { chosen: number; count: number }) =>
    count === 0
      ? 'Nothing found.'
      : chosen === count
        ? `${plural(count, 'place', 'places')}`
        : `${number(chosen)} of ${plural(count, 'place', 'places')}`,
  all: 'select all',
  none: 'select none',
  replace: ({ count }: { count: number }) => `replace ${plural(count, 'place', 'places')}`,
  delete: ({ count }: { count: number }) => `delete ${plural(count, 'place', 'places')}`,
  tooLong: ({ kind, length, most }: { kind: string; length: number; most: number }) =>
    `${kind}: ${number(length)} characters are too many here; ${number(most)} fit.`,
  needed: ({ kind }: { kind: string }) => `${kind}: it needs some words.`,
  show: 'show it on the stage',
}
