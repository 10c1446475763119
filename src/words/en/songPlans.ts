import { day, number, plural } from '#words/forms.ts'
import { log } from './log.ts'
import { measures } from './measures.ts'

/** What was once planned for a song, offered where the song is ridden again. */

const LEVELS = { beginner: 'a beginner class', mixed: 'a mixed class', advanced: 'an advanced class' }

const STROKES = { 0.5: 'half time', 1: 'on the beat', 2: 'double time' }

const plans = (count: number) => plural(count, 'plan', 'plans')

const amount = (value: number, unit: number, counted: boolean) => (counted ? measures.eights(value, unit) : `${number(value)} s`)

export const songPlans = {
  before: ({ ridden }: { ridden: boolean }): string => (ridden ? 'ridden before' : 'planned before'),
  count: ({ count }: { count: number }) => plans(count),
  about: ({ taught }: { taught?: { day: string; times: number; stars?: number } }) => {
    if (!taught) return 'planned, not taught yet'
    const times = taught.times > 1 ? `, ${number(taught.times)} times in all` : ''
    const stars = taught.stars === undefined ? '' : ` · ${log.stars({ count: taught.stars })}`
    return `taught ${day(taught.day, { dateStyle: 'medium' })}${times}${stars}`
  },
  curve: ({ ride }: { ride: string }) => `effort as planned in “${ride}”`,
  use: 'use this plan',
  useNamed: ({ ride, about }: { ride: string; about: string }) => `use this plan: “${ride}”, ${about}`,
  useWithSong: 'replace the song and use this plan',
  useWithSongNamed: ({ ride, about }: { ride: string; about: string }) => `replace the song and use this plan: “${ride}”, ${about}`,
  asRidden: 'Fits as it is.',
  isThere: 'This is what the song has now.',
  outside: 'None of it is in the part of the song you use.',
  showAll: ({ count }: { count: number }) => `show all ${plans(count)}`,
  another: 'use another song’s plan',
  searchHint: 'song, artist, or ride',
  looking: 'Looking through your rides …',
  noneFound: 'No plan found.',
  noneYet: 'No other song has a plan yet.',
  ofSong: ({ song, ride }: { song: string; ride: string }) => `${song}, in “${ride}”`,

  // The change, as announced
  took: ({ from, where }: { from: string; where: string }) => `Planned ${where} as in “${from}”`,

  // What was changed to make it fit
  cutToPart: ({ front, end, unit, counted }: { front: number; end: number; unit: number; counted: boolean }) =>
    `Cut to fit: ${[
      ...(front > 0 ? [`${amount(front, unit, counted)} off the start`] : []),
      ...(end > 0 ? [`${amount(end, unit, counted)} off the end`] : []),
    ].join(', ')}.`,
  startsEarlier: ({ counts, unit }: { counts: number; unit: number }) =>
    `The song starts ${measures.eights(counts, unit)} earlier here, so the first block is that much longer.`,
  leftOpen: ({ counts, unit }: { counts: number; unit: number }) => `The last ${measures.eights(counts, unit)} of the song stay empty.`,
  shortened: ({ changes }: { changes: readonly string[] }) => `Shortened to fit: ${changes.join(', ')}.`,
  shifted: ({ shift, stepsPerUnit, unit }: { shift: number; stepsPerUnit: number; unit: string }) =>
    `Riders come in ${shift > 0 ? 'heavier' : 'lighter'}, so all resistance goes ${shift > 0 ? 'up' : 'down'} ${measures.settingOf(Math.abs(shift), { unit, stepsPerUnit })}.`,
  statesTotal: ({ total, stepsPerUnit, unit }: { total: number; stepsPerUnit: number; unit: string }) =>
    `Riders come in at another resistance, so the first block says its own: ${measures.settingOf(total, { unit, stepsPerUnit })}.`,
  capped: ({ level, top, blocks }: { level: keyof typeof LEVELS; top: number; blocks: number }) =>
    `Effort is capped at ${number(top)} for ${LEVELS[level]}, in ${plural(blocks, 'block', 'blocks')}.`,
  otherLanguage: 'Its cues are in another language than this ride’s.',
  legs: ({ strikes, from, to }: { strikes: keyof typeof STROKES; from: number; to: number }) =>
    `Cadence is ${measures.rpm(to)} (${STROKES[strikes]}), was ${number(from, 0)}.`,
}
