import type { en } from '#words/en/index.ts'
import { grouped } from '#words/forms.ts'

export const lists: typeof en.lists = {
  noTitle: 'Diese Zeile hat keinen Titel.',
  longTitle: 'Titel oder Interpret dieser Zeile sind zu lang. Höchstens 300 Zeichen werden gespeichert.',
  twoLengths: ({ first, second }) => `Diese Zeile hat zwei Längen, ${first} und ${second}. Lass nur eine stehen.`,
  twoTempos: ({ first, second }) => `Diese Zeile hat zwei Tempi, ${first} und ${second}. Lass nur eins stehen.`,
  tooManySeconds: ({ length }) => `Die Länge ${length} hat mehr als 59 Sekunden. Schreib Minuten und Sekunden, etwa 3:45.`,
  lengthOutside: ({ length }) => `Ein Song dauert zwischen 1 Sekunde und 6 Stunden, ${length} passt nicht.`,
  unclearLength: ({ length }) => `Es ist nicht klar, wie lang ${length} ist. Schreib Minuten und Sekunden, etwa 3:45.`,
  unreadLength: ({ length }) => `„${length}“ ist keine Länge. Schreib Minuten und Sekunden, etwa 3:45.`,
  tempoOutside: ({ tempo }) => `Ein Tempo liegt zwischen 20 und 400 bpm, ${tempo} passt nicht.`,
  unreadTempo: ({ tempo }) => `„${tempo}“ ist kein Tempo. Schreib Beats pro Minute, etwa 128.`,
  tooManyTracks: ({ most }) => `Nur die ersten ${grouped(most)} Titel wurden gelesen.`,
  tooManyLines: ({ most }) => `Nur die ersten ${grouped(most)} Zeilen wurden gelesen.`,

  untitledTrack: 'ein Eintrag ohne Titel',
  laterTracks: 'die Einträge ab hier',
}
