import type { en } from '#words/en/index.ts'
import { day, number, plural } from '#words/forms.ts'
import { log } from './log.ts'
import { measures } from './measures.ts'

const LEVELS = { beginner: 'eine Einsteigerstunde', mixed: 'eine gemischte Stunde', advanced: 'eine Stunde für Fortgeschrittene' }

const STROKES = { 0.5: 'halbes Tempo', 1: 'auf dem Beat', 2: 'doppeltes Tempo' }

const plans = (count: number) => plural(count, 'Plan', 'Pläne')

const amount = (value: number, unit: number, counted: boolean) => (counted ? measures.eights(value, unit) : `${number(value)} s`)

export const songPlans: typeof en.songPlans = {
  before: ({ ridden }) => (ridden ? 'schon gefahren' : 'schon geplant'),
  count: ({ count }) => plans(count),
  about: ({ taught }) => {
    if (!taught) return 'geplant, noch nicht unterrichtet'
    const times = taught.times > 1 ? `, insgesamt ${number(taught.times)}-mal` : ''
    const stars = taught.stars === undefined ? '' : ` · ${log.stars({ count: taught.stars })}`
    return `unterrichtet am ${day(taught.day, { dateStyle: 'medium' })}${times}${stars}`
  },
  curve: ({ ride }) => `Belastung wie in „${ride}“ geplant`,
  use: 'diesen Plan nehmen',
  useNamed: ({ ride, about }) => `diesen Plan nehmen: „${ride}“, ${about}`,
  useWithSong: 'Song ersetzen und diesen Plan nehmen',
  useWithSongNamed: ({ ride, about }) => `Song ersetzen und diesen Plan nehmen: „${ride}“, ${about}`,
  asRidden: 'Passt so, wie er ist.',
  isThere: 'Das hat der Song jetzt.',
  outside: 'Nichts davon liegt in dem Teil des Songs, den du nimmst.',
  showAll: ({ count }) => `alle ${plans(count)} zeigen`,
  another: 'Plan eines anderen Songs nehmen',
  searchHint: 'Song, Interpret oder Ride',
  looking: 'Deine Rides werden durchgesehen …',
  noneFound: 'Kein Plan gefunden.',
  noneYet: 'Noch kein anderer Song hat einen Plan.',
  ofSong: ({ song, ride }) => `${song}, in „${ride}“`,

  took: ({ from, where }) => `${where} geplant wie in „${from}“`,

  cutToPart: ({ front, end, unit, counted }) =>
    `Passend gekürzt: ${[
      ...(front > 0 ? [`${amount(front, unit, counted)} am Anfang`] : []),
      ...(end > 0 ? [`${amount(end, unit, counted)} am Ende`] : []),
    ].join(', ')}.`,
  startsEarlier: ({ counts, unit }) =>
    `Der Song beginnt hier ${measures.eights(counts, unit)} früher, um so viel länger ist der erste Block.`,
  leftOpen: ({ counts, unit }) => `Am Ende des Songs bleiben ${measures.eights(counts, unit)} frei.`,
  shortened: ({ changes }) => `Passend gekürzt: ${changes.join(', ')}.`,
  shifted: ({ shift, stepsPerUnit, unit }) =>
    `Die Gruppe kommt mit ${shift > 0 ? 'mehr' : 'weniger'} Widerstand an, deshalb ist er überall um ${measures.settingOf(Math.abs(shift), { unit, stepsPerUnit })} ${shift > 0 ? 'höher' : 'niedriger'}.`,
  statesTotal: ({ total, stepsPerUnit, unit }) =>
    `Die Gruppe kommt mit anderem Widerstand an, deshalb nennt der erste Block seinen: ${measures.settingOf(total, { unit, stepsPerUnit })}.`,
  capped: ({ level, top, blocks }) =>
    `Die Belastung ist in ${plural(blocks, 'Block', 'Blöcken')} auf ${number(top)} begrenzt, für ${LEVELS[level]}.`,
  otherLanguage: 'Seine Ansagen sind in einer anderen Sprache als dieser Ride.',
  legs: ({ strikes, from, to }) => `Trittfrequenz ${measures.rpm(to)} (${STROKES[strikes]}), vorher ${number(from, 0)}.`,
}
