import type { en } from '#words/en/index.ts'
import { clock, duration, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

export const heard: typeof en.heard = {
  waiting: ({ name }) => `„${name}“ wartet.`,
  opening: ({ name }) => `„${name}“ wird geöffnet.`,
  listening: ({ name }) => `„${name}“ wird angehört.`,
  known: ({ name }) => `„${name}“ wurde wiedererkannt und neu verknüpft.`,
  stopped: ({ name }) => `„${name}“ wurde abgebrochen.`,
  noBeat: ({ name, length }) => `„${name}“: kein klarer Beat gefunden; ${clock(length)}.`,
  beat: ({ name, bpm, beatsPerBar, length, doubt }) => {
    const bars = beatsPerBar === 6 ? '6/8, auf zwei gezählt' : `${number(beatsPerBar)} Beats pro Takt`
    return `„${name}“: ${measures.bpm(bpm, 2)}, ${bars}, ${clock(length)}.${doubted(doubt)}`
  },

  files: ({ read, of, failed, stopped }) =>
    `${[
      of === null ? `${plural(read, 'Datei', 'Dateien')} gelesen` : `${number(read)} von ${plural(of, 'Datei', 'Dateien')} gelesen`,
      ...(failed > 0 ? [`${number(failed)} nicht lesbar`] : []),
      ...(stopped > 0 ? [`${number(stopped)} abgebrochen`] : []),
    ].join(', ')}.`,

  steady: ({ drift, length }) => `Stetig genug: bis ${duration(length)} höchstens ${driftText(drift)} daneben.`,
  rough: ({ drift, length }) =>
    `Gut genug zum Planen: bis ${duration(length)} vielleicht ${driftText(drift)} daneben. Für weniger tipp weiter.`,
  shaky: ({ drift, length }) =>
    `Noch nicht stetig: bis ${duration(length)} vielleicht ${driftText(drift)} daneben. Tipp weiter oder fang neu an.`,

  unusualTempo: ({ bpm, slower, from, to, meant }) =>
    `${measures.bpm(bpm, 2)} ist ${slower ? 'langsamer' : 'schneller'}, als Songs meist gezählt werden (${from} bis ${measures.bpm(to)})${meant === null ? '.' : `; sind es ${number(meant)}?`}`,

  fitsAll: ({ count }) => (count === 1 ? 'passt zum Block' : count === 2 ? 'passt zu beiden Blöcken' : `passt zu allen ${count} Blöcken`),
  fitsSome: ({ count, of }) => `passt zu ${count} von ${of} Blöcken`,
  tooSlow: 'zu langsam',
  tooFast: 'zu schnell',
  fitsNone: 'passt zu keinem Block',
}

function doubted(doubt: { from: number; to: number } | 'changes' | 'unsure' | null): string {
  if (doubt === null) return ''
  if (doubt === 'changes') return ' Das Tempo ändert sich; die Beats folgen ihm.'
  if (doubt === 'unsure') return ' Nicht sicher: Hör hin und probier halbes oder doppeltes Tempo oder einen Beat daneben.'
  return ` Das Tempo hält von ${clock(doubt.from)} bis ${clock(doubt.to)} nicht.`
}

const driftText = (seconds: number): string => `${number(seconds, seconds < 1 ? 2 : 1)} s`
