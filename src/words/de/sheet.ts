import type { en } from '#words/en/index.ts'
import { chosen, number, plural, readingDistance } from '#words/forms.ts'

const SHEETS = {
  compact: 'kompakt',
  large: 'große Schrift',
  cards: 'Karten',
  substitute: 'Vertretung',
  plain: 'ohne Musik',
  phone: 'Handy',
  checklist: 'vor der Stunde',
}

const HINTS: Readonly<Record<keyof typeof SHEETS, (from: string) => string>> = {
  compact: (from) => `Der ganze Ride auf so wenigen Seiten, wie du auf Armlänge lesen kannst (${from}).`,
  large: (from) => `Große Schrift für den Lenker (im Dunkeln aus ${from} lesbar).`,
  cards: () => 'Eine Karte pro Song, zum Ausschneiden und Sortieren.',
  substitute: () => 'Für eine Vertretung mit eigener Playlist: Zeiten, Belastung, Gefühl, keine Zählzeiten.',
  plain: () => 'Zehn Zeilen für den Fall, dass die Musik ausfällt.',
  phone: () => 'Große, dunkle Seiten zum Durchtippen auf dem Handy.',
  checklist: () => 'Checkliste vor der Stunde, Zeitpunkte zum Auf-die-Uhr-Schauen und deine Begrüßung.',
}

const PAPERS = { a4: 'A4', letter: 'US Letter' }

const CLOCKS = { left: 'Restzeit', elapsed: 'vergangene Zeit' }

const CARDS = { four: 'vier pro Seite', one: 'eine pro Seite' }

const ORIENTATIONS = { portrait: 'Hochformat', landscape: 'Querformat' }

const STAND_IN = {
  room: { label: 'der Raum', placeholder: 'Schlüssel am Empfang; Anlage links; Rad 7 ohne Bremsbelag' },
  regulars: { label: 'was Stammgäste erwarten', placeholder: 'ein langer erster Berg, ein ruhiger letzter Song' },
  mustDo: { label: 'unbedingt', placeholder: 'um zehn vor raus sein: der nächste Kurs wartet' },
  mustNot: { label: 'auf keinen Fall', placeholder: 'Licht nicht ausmachen' },
}

const EXPORTS = {
  text: { label: 'Text', hint: 'der Spickzettel in Zeilen' },
  markdown: { label: 'Markdown', hint: 'der Spickzettel in Tabellen' },
  csv: { label: 'CSV', hint: 'eine Zeile pro Wechsel, für die Tabellenkalkulation' },
  captions: { label: 'Ansagen, Ride-Zeit', hint: 'WebVTT, ab Beginn der Stunde' },
  songCaptions: { label: 'Ansagen, Song-Zeit', hint: 'WebVTT, eine Datei pro Song ab dessen Anfang' },
  chapters: { label: 'Kapitel', hint: 'WebVTT, ein Kapitel pro Song' },
  chapterText: { label: 'Kapitel als Text', hint: 'eine Zeit und ein Name pro Zeile' },
  xspf: { label: 'Playlist XSPF', hint: 'Titel, Interpreten und Längen' },
  m3u8: { label: 'Playlist M3U8', hint: 'erwartet die Songs daneben, der Reihe nach benannt: „01 Interpret - Titel.mp3“' },
  calendar: { label: 'Kalendereintrag', hint: 'für Tag und Uhrzeit unten' },
}

export const sheet: typeof en.sheet = {
  place: 'Spickzettel',
  heading: ({ title }) => `Spickzettel für ${title}`,

  kind: 'Spickzettel',
  kindName: ({ kind }) => SHEETS[kind],
  hint: ({ kind, meters }) => HINTS[kind](readingDistance(meters)),
  paper: 'Papier',
  paperName: ({ paper }) => PAPERS[paper],
  cards: 'Karten',
  cardsName: ({ cards }) => CARDS[cards],
  songClock: 'Songzeit',
  songClockName: ({ clock }) => CLOCKS[clock],
  madeFor: 'gedruckt für',
  both: 'beide',

  abbreviations: ({ count }) => (count === 0 ? 'deine Abkürzungen' : `deine Abkürzungen, ${plural(count, 'Eintrag', 'Einträge')}`),
  abbreviationsField: 'Abkürzungen, eine pro Zeile',
  abbreviationsHint: 'Ersetzt diese Wörter im Druck und erklärt sie unten auf der Seite. Auf diesem Gerät gespeichert.',
  abbreviationsExample: 'ZW = zurückwandern',
  noAbbreviation: ({ line }) => `Schreib „${line}“ als Abkürzung, Gleichheitszeichen und Bedeutung: ZW = zurückwandern.`,
  longAbbreviation: ({ start }) => `„${start}…“ ist zu lang zum Abkürzen.`,
  twoAbbreviations: ({ long }) => `„${long}“ hat zwei Abkürzungen; behalte eine davon.`,
  manyAbbreviations: ({ most }) => `Du kannst bis zu ${number(most)} Abkürzungen haben.`,

  subNotes: 'Notizen für die Vertretung',
  subNote: ({ key }) => STAND_IN[key].label,
  subNoteExample: ({ key }) => STAND_IN[key].placeholder,
  keepUnder: ({ most }) => `Bleib unter ${number(most)} Zeichen.`,

  beforeClass: 'vor der Stunde',
  done: ({ done, of }) => `${number(done)} von ${number(of)} erledigt`,
  clearAll: 'alle zurücksetzen',

  export: 'als Datei exportieren',
  exportName: ({ id }) => EXPORTS[id].label,
  exportHint: ({ id }) => EXPORTS[id].hint,
  exportDay: 'Datum der Stunde',
  exportTime: 'beginnt um',
  exported: ({ file }) => `${file} gespeichert`,
  notExported: ({ file }) => `${file} konnte nicht erstellt werden.`,

  layingOut: 'Der Spickzettel wird gesetzt… Drucke ihn, sobald er zu sehen ist.',
  pages: ({ pages, orientation }) => `${plural(pages, 'Seite', 'Seiten')}, ${ORIENTATIONS[orientation]}.`,
  screens: ({ screens }) => `${plural(screens, 'Bildschirm', 'Bildschirme')}.`,
  cardsOn: ({ cards, pages }) => `${plural(cards, 'Karte', 'Karten')} auf ${plural(pages, 'Seite', 'Seiten')}.`,
  cardsEach: ({ cards }) => `${plural(cards, 'Karte', 'Karten')}, eine pro Seite.`,
  readable: ({ meters, onPhone }) => `Lesbar aus etwa ${readingDistance(meters)}${onPhone ? ' auf dem Handy' : ''}.`,
  page: ({ page, of }) => `Seite ${number(page)} von ${number(of)}`,
  cutSheet: ({ page }) => `Blatt ${number(page)}, in vier Teile zu schneiden`,

  screensShown: 'Bildschirme',
  back: 'voriger Bildschirm',
  on: 'nächster Bildschirm',
  close: 'schließen',
  placeOf: ({ place, of }) => `${number(place)} von ${number(of)}`,

  noBlocks: ({ songs }) =>
    `${chosen(songs, { one: 'Dieser Song hat', other: 'Diese Songs haben' })} noch keine Blöcke. Zieh Blöcke darauf, dann druckst du hier den Spickzettel.`,
  empty: 'Dieser Ride ist leer. Füge einen Song hinzu, zieh Blöcke darauf, dann druckst du hier den Spickzettel.',
}
