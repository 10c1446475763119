import { chosen, number, plural, readingDistance } from '#words/forms.ts'

/** The place to print from. What stands on the pages is in `printed.ts`. */

const SHEETS = {
  compact: 'compact',
  large: 'large type',
  cards: 'cards',
  substitute: 'sub',
  plain: 'no music',
  phone: 'phone',
  checklist: 'before class',
}

/** What each sheet is for; with a distance, in meters, that it can be read from. */
const HINTS: Readonly<Record<keyof typeof SHEETS, (from: string) => string>> = {
  compact: (from) => `Whole ride on as few pages as you can read at arm’s length (${from}).`,
  large: (from) => `Big type for the handlebars (readable at ${from} in the dark).`,
  cards: () => 'One card per song, to cut out and sort.',
  substitute: () => 'For a sub with their own playlist: times, effort, feel, no counts.',
  plain: () => 'Ten-line backup if the music fails.',
  phone: () => 'Big, dim screens to tap through on your phone.',
  checklist: () => 'Pre-class checklist, time checks, and your opening.',
}

const PAPERS = { a4: 'A4', letter: 'US Letter' }

const CLOCKS = { left: 'time left', elapsed: 'time elapsed' }

const CARDS = { four: 'four per page', one: 'one per page' }

const ORIENTATIONS = { portrait: 'portrait', landscape: 'landscape' }

const STAND_IN = {
  room: { label: 'the room', placeholder: 'key at the desk; sound on the left; bike 7 has no brake pad' },
  regulars: { label: 'what regulars expect', placeholder: 'a long first climb, a quiet last song' },
  mustDo: { label: 'must do', placeholder: 'be out by ten to: the next class is waiting' },
  mustNot: { label: 'must not', placeholder: 'no lights off' },
}

const EXPORTS = {
  text: { label: 'plain text', hint: 'the sheet as lines' },
  markdown: { label: 'Markdown', hint: 'the sheet as tables' },
  csv: { label: 'CSV', hint: 'one row per change, for a spreadsheet' },
  captions: { label: 'cues in ride time', hint: 'WebVTT, from the start of class' },
  songCaptions: { label: 'cues in song time', hint: 'WebVTT, one file per song from its own start' },
  chapters: { label: 'chapters', hint: 'WebVTT, one chapter per song' },
  chapterText: { label: 'chapters as text', hint: 'one time and name per line' },
  xspf: { label: 'playlist XSPF', hint: 'titles, artists, and lengths' },
  m3u8: { label: 'playlist M3U8', hint: 'expects the songs next to it, named in order: “01 Artist - Title.mp3”' },
  calendar: { label: 'calendar entry', hint: 'for the day and time below' },
}

export const sheet = {
  place: 'sheet',
  heading: ({ title }: { title: string }) => `Sheet of ${title}`,

  // What is printed, and on what.
  kind: 'sheet',
  kindName: ({ kind }: { kind: keyof typeof SHEETS }) => SHEETS[kind],
  hint: ({ kind, meters }: { kind: keyof typeof SHEETS; meters: number }) => HINTS[kind](readingDistance(meters)),
  paper: 'paper',
  paperName: ({ paper }: { paper: keyof typeof PAPERS }) => PAPERS[paper],
  cards: 'cards',
  cardsName: ({ cards }: { cards: keyof typeof CARDS }) => CARDS[cards],
  songClock: 'song clock',
  songClockName: ({ clock }: { clock: keyof typeof CLOCKS }) => CLOCKS[clock],
  madeFor: 'made for',
  both: 'both',

  // Abbreviations.
  abbreviations: ({ count }: { count: number }) =>
    count === 0 ? 'your abbreviations' : `your abbreviations, ${plural(count, 'entry', 'entries')}`,
  abbreviationsField: 'abbreviations, one per line',
  abbreviationsHint: 'Replaces these words in print and adds a key at the bottom. Saved on this device.',
  abbreviationsExample: 'TB = travel-back',
  noAbbreviation: ({ line }: { line: string }) =>
    `Write “${line}” as an abbreviation, an equals sign, and what it stands for: TB = travel-back.`,
  longAbbreviation: ({ start }: { start: string }) => `“${start}…” is too long to abbreviate.`,
  twoAbbreviations: ({ long }: { long: string }) => `“${long}” has two abbreviations; keep one of them.`,
  manyAbbreviations: ({ most }: { most: number }) => `You can have up to ${number(most)} abbreviations.`,

  // Notes for a sub.
  subNotes: 'notes for the sub',
  subNote: ({ key }: { key: keyof typeof STAND_IN }) => STAND_IN[key].label,
  subNoteExample: ({ key }: { key: keyof typeof STAND_IN }) => STAND_IN[key].placeholder,
  keepUnder: ({ most }: { most: number }) => `Keep it under ${number(most)} characters.`,

  // The checklist, to tick.
  beforeClass: 'before class',
  done: ({ done, of }: { done: number; of: number }) => `${number(done)} of ${number(of)} done`,
  clearAll: 'clear all',

  // Files for other programs.
  export: 'export as a file',
  exportName: ({ id }: { id: keyof typeof EXPORTS }) => EXPORTS[id].label,
  exportHint: ({ id }: { id: keyof typeof EXPORTS }) => EXPORTS[id].hint,
  exportDay: 'class date',
  exportTime: 'starts at',
  exported: ({ file }: { file: string }) => `Saved ${file}`,
  notExported: ({ file }: { file: string }) => `${file} couldn’t be made.`,

  // The preview.
  layingOut: 'Laying out the sheet… Print it once it shows.',
  pages: ({ pages, orientation }: { pages: number; orientation: keyof typeof ORIENTATIONS }) =>
    `${plural(pages, 'page', 'pages')}, ${ORIENTATIONS[orientation]}.`,
  screens: ({ screens }: { screens: number }) => `${plural(screens, 'screen', 'screens')}.`,
  cardsOn: ({ cards, pages }: { cards: number; pages: number }) =>
    `${plural(cards, 'card', 'cards')} on ${plural(pages, 'page', 'pages')}.`,
  cardsEach: ({ cards }: { cards: number }) => `${plural(cards, 'card', 'cards')}, one per page.`,
  readable: ({ meters, onPhone }: { meters: number; onPhone: boolean }) =>
    `Readable from about ${readingDistance(meters)}${onPhone ? ' on a phone' : ''}.`,
  page: ({ page, of }: { page: number; of: number }) => `page ${number(page)} of ${number(of)}`,
  cutSheet: ({ page }: { page: number }) => `sheet ${number(page)}, to be cut in four`,

  // One screen at a time.
  screensShown: 'screens',
  back: 'previous screen',
  on: 'next screen',
  close: 'close',
  placeOf: ({ place, of }: { place: number; of: number }) => `${number(place)} of ${number(of)}`,

  // Nothing to print yet.
  noBlocks: ({ songs }: { songs: number }) =>
    `${chosen(songs, { one: 'This song has', other: 'These songs have' })} no blocks yet. Drag blocks onto ${chosen(songs, { one: 'it', other: 'them' })}, then print the sheet here.`,
  empty: 'This ride is empty. Add a song, drag blocks onto it, then print the sheet here.',
}
