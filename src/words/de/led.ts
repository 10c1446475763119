import type { en } from '#words/en/index.ts'
import { and, duration, number } from '#words/forms.ts'
import { measures } from './measures.ts'

const fallen = (names: readonly string[]): string =>
  names.length === 0
    ? ''
    : names.length > 2
      ? `; ${names.length} Blöcke fallen hinten aus dem Song`
      : `; ${and(names)} ${names.length > 1 ? 'fallen' : 'fällt'} hinten aus dem Song`

export const led: typeof en.led = {
  noBlockToRepeat: 'Gerade läuft kein Block zum Wiederholen.',
  roundAgain: ({ fallen: names }) => `Diese Runde noch einmal${fallen(names)}.`,
  blockAgain: ({ block, fallen: names }) => `${block} noch einmal${fallen(names)}.`,
  nothingBegun: 'Noch hat nichts begonnen.',
  blocksOver: 'Die Blöcke dieses Songs sind vorbei.',
  songStarts: 'Der Song beginnt jetzt.',
  blockRestarts: ({ block, fallen: names }) => `${block} von vorn${fallen(names)}.`,
  classOver: 'Kein Song mehr übrig: Die Stunde ist vorbei.',
  classEnds: 'Die Stunde endet hier; rückgängig setzt sie fort.',
  musicOver: 'Die Musik ist vorbei, es gibt keine Eins mehr zu setzen.',
  noBeats: 'Hier ist kein Beat bekannt, es gibt keine Eins zu setzen.',
  onBeatOne: 'Auf der Eins.',
  shifted: ({ seconds }) => {
    const size = Math.abs(seconds)
    return `Auf der Eins: Der Song ist ${size < 10 ? `${number(size, 1)} s` : duration(size)} ${seconds > 0 ? 'später' : 'früher'} dran als angezeigt.`
  },
  waiting: 'Wartet.',
  holding: 'Hält hier an.',
  holdingEight: 'Hält diesen Achter.',
  nothingHeld: 'Nichts ist angehalten.',
  on: ({ fallen: names }) => `Weiter${fallen(names)}.`,
  nothingAfter: 'Danach kommt nichts mehr.',
  onTo: ({ block }) => `Weiter mit ${block}.`,
  onToAfterEight: ({ song }) => `Am Ende dieses Achters weiter mit ${song}.`,
  noSongToSkip: 'Kein Song mehr da zum Überspringen.',
  songEnds: ({ song }) => `${song} endet hier.`,
  songSkipped: ({ song }) => `${song} ist übersprungen.`,
  noLongerToCome: 'Das ist schon vorbei.',
  cut: 'Gekürzt.',

  clock: ({ behind, spare }) => {
    const against = Math.abs(spare) < 1 ? 'endet pünktlich' : `${duration(Math.abs(spare))} ${spare > 0 ? 'übrig' : 'über der Zeit'}`
    return behind === 0 ? against : `${duration(Math.abs(behind))} ${behind > 0 ? 'zurück' : 'voraus'}, ${against}`
  },

  proposal: ({ cuts, less, spare }) => {
    const what = cuts.join(', ')
    return `${what.charAt(0).toUpperCase()}${what.slice(1)} (−${duration(less)}): dann endet die Stunde ${spare < 1 ? 'pünktlich' : `${duration(spare)} früher`}.`
  },
  cutSong: ({ song }) => `${song} überspringen`,
  cutRounds: ({ rounds, song }) => `${rounds === 1 ? 'eine Runde' : `${rounds} Runden`} weniger in ${song}`,
  cutPhrase: ({ block, song, counts, unit }) => `${block} in ${song} kürzen, ${measures.eights(counts, unit)} weniger`,
  cutOutro: ({ song, counts, unit }) => `${song} früher beenden, ${measures.eights(counts, unit)} weniger`,
  startsWith: ({ song, call }) => `${song} beginnt dann mit „${call}“.`,
  sentences: ({ items }) => items.join(' '),
}
