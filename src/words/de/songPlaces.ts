import type { en } from '#words/en/index.ts'
import { number, plural } from '#words/forms.ts'

const unitName = (unit: number): string => (unit === 6 ? 'Sechser' : 'Achter')

export const songPlaces: typeof en.songPlaces = {
  songLength: 'Ein Song dauert zwischen 1 Sekunde und 6 Stunden. Schreib Minuten und Sekunden, etwa 3:45.',

  start: ({ unit }) => `Schreib die Nummer des ${unitName(unit)}s, ab 1, etwa 9 oder 9+4.`,
  end: ({ unit }) => `Schreib die Nummer des letzten ${unitName(unit)}s, etwa 76 oder 76+4.`,
  afterPlus: ({ unit }) => `Hinter dem Plus stehen weniger als ${number(unit)} Zählzeiten.`,

  notStretch: ({ line }) => `„${line}“ ist kein Abschnitt des Songs. Schreib zum Beispiel 33–40, 65–72.`,
  endsFirst: ({ line }) => `„${line}“ endet vor dem Anfang.`,
  notMark: ({ line }) => `„${line}“ ist keine Marke. Schreib eine pro Zeile, etwa 33 Refrain.`,

  odd: ({ beats, place, unit }) =>
    `${beats < 0 ? plural(-beats, 'fehlender Beat', 'fehlende Beats') : plural(beats, 'zusätzlicher Beat', 'zusätzliche Beats')} vor ${unitName(unit)} ${place}`,
  tooManyOdd: ({ most }) => `Ein Song kann an höchstens ${number(most)} Stellen zusätzliche oder fehlende Beats haben.`,
  notOdd: ({ line, unit }) =>
    `„${line}“ lässt sich nicht lesen. Schreib eine Stelle pro Zeile, den ${unitName(unit)} und die Beats: 33 +2 oder 65 −1.`,
  partOfBeat: ({ line }) => `„${line}“ enthält den Teil eines Beats; es gehen nur ganze Beats.`,
  noBeat: ({ line }) => `„${line}“ ändert keinen Beat. Lösch die Zeile.`,
  tooManyBeats: ({ line, most }) =>
    `„${line}“ sind zu viele: An einer Stelle können höchstens ${number(most)} Beats zusätzlich sein oder fehlen.`,
  beyondSong: ({ line }) => `„${line}“ liegt hinter dem Ende jedes Songs.`,
  twoLines: ({ place, unit }) => `Für ${unitName(unit)} ${place} gibt es zwei Zeilen. Schreib alle Beats in eine.`,
  beforeFirst: ({ place, unit }) =>
    `Vor ${unitName(unit)} ${place} wird nicht gezählt, dort kann kein Beat zusätzlich sein oder fehlen. Setz stattdessen den ersten Beat.`,
  noRoom: ({ place, missing, room, since, unit }) => {
    const most = room < 1 ? 'kann keiner fehlen' : `können höchstens ${number(room)} fehlen`
    const from = since === undefined ? 'ab dem ersten Beat' : `nach ${unitName(unit)} ${since}`
    const counts = `${room === 0 ? 'liegt' : 'liegen'} davor nur ${plural(room + 1, 'Zählzeit', 'Zählzeiten')}`
    return `Vor ${unitName(unit)} ${place} ${most}, nicht ${number(missing)}: ${from[0]!.toLocaleUpperCase('de')}${from.slice(1)} ${counts}.`
  },
}
