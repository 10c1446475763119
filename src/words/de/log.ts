import type { en } from '#words/en/index.ts'
import { and, clock, day, number, percent, plural, wallClock, weekday } from '#words/forms.ts'

const WHAT_BECAME = { taught: 'wie geplant', changed: 'geändert', skipped: 'ausgelassen' }

const fullDay = (iso: string) => day(iso, { dateStyle: 'full' })
const shortDay = (iso: string) => day(iso, { dateStyle: 'medium' })
const classes = (count: number) => plural(count, 'Stunde', 'Stunden')

export const log: typeof en.log = {
  heading: 'Logbuch',
  cannotKeep: 'In diesem Fenster lässt sich nichts speichern, also auch kein Logbuch.',
  day: fullDay,

  repeats: 'Wiederholungen',
  classOn: 'für eine Stunde am',
  against: 'mit den letzten Stunden vergleichen:',
  nothingBefore: 'Vor diesem Tag steht keine Stunde zu dieser Zeit im Logbuch.',
  newness: ({ share, compared }) =>
    `${percent(share)} neu für alle, die ${compared === 1 ? 'in der letzten Stunde' : `in den letzten ${number(compared)} Stunden`} waren.`,
  basedOn: `Aus Songs (50 %), Abfolgen von Bewegungen (30 %) und Verlauf der Belastung (20 %); ältere Stunden zählen weniger.`,
  practice: 'Gängige Praxis, keine Quelle.',
  rest: 'Song ruhen lassen',
  playedIn: ({ times, compared, weeksAgo }) =>
    `in ${number(times)} der letzten ${number(compared)}, ${weeksAgo === 0 ? 'vor weniger als einer Woche' : weeksAgo === 1 ? 'vor einer Woche' : `vor ${number(weeksAgo)} Wochen`}`,

  taught: 'unterrichtete Stunden',
  deleted: ({ title, day: on }) => `„${title}“ vom ${fullDay(on)} gelöscht.`,
  restore: 'wiederherstellen',
  empty: 'Noch nichts. Öffne einen Ride, den du unterrichtet hast, und trag ihn hier ein. Alles bleibt auf diesem Gerät.',
  search: 'Ride, Song, Tag, Raum oder Notiz',
  notFound: ({ search }) => `Keine Stunde im Logbuch enthält „${search}“.`,
  edit: 'bearbeiten',
  editEntry: ({ title, day: on }) => `${title} vom ${shortDay(on)} bearbeiten`,
  remove: 'löschen',
  removeEntry: ({ title, day: on }) => `${title} vom ${shortDay(on)} löschen`,
  onlyLast: ({ count }) => `nur die letzten ${number(count)}`,
  showAll: ({ count }) => `alle ${number(count)} zeigen`,
  started: ({ at, booked }) => (booked === null ? `Beginn ${wallClock(at)}` : `Beginn ${wallClock(at)}, geplant ${wallClock(booked)}`),
  rode: ({ count }) => plural(count, 'Fahrer', 'Fahrer'),
  skipped: ({ count }) => `${number(count)} ausgelassen`,
  changed: ({ count }) => `${number(count)} geändert`,
  load: ({ load }) => `Last ${number(load, 0)}`,
  fiveStars: ({ title }) => `fünf Sterne für „${title}“`,

  week: 'deine Unterrichtswoche',
  weekBefore: 'vorige Woche',
  weekAfter: 'nächste Woche',
  weekOf: ({ day: first }) => `Woche ab ${shortDay(first)}`,
  weekday,
  classes: ({ count }) => classes(count),
  noClass: 'Keine Stunde in dieser Woche.',
  weekLoad: ({ count, load }) => `${classes(count)}, Last ${number(load, 0)} (Belastung × Minuten der gefahrenen Blöcke).`,
  mixDays: 'Wechsle schwere und leichte Tage ab: Gleiche Tage zehren mehr als dieselbe Last auf schwere und leichte verteilt.',
  monotony: ({ monotony, strain }) =>
    `Monotonie ${number(monotony, 1)} und Beanspruchung ${number(strain, 0)}: Mittel der Tage ÷ Standardabweichung, und das mal die Last (Foster 1998).`,
  crowded: ({ count, day: on }) => `${classes(count)} am ${on}: Schone Stimme und Beine und unterrichte einen Teil neben dem Rad.`,
  offTheBike: ({ names }) => `Im offenen Ride passt dafür ${and(names)}: sitzend und mindestens eine Minute lang.`,
  quoted: ({ name }) => `„${name}“`,

  entryTitle: ({ title, day: on }) => `${title}, ${fullDay(on)}`,
  entryAbout: 'Was du hier änderst, ändert nur das Logbuch, nicht den Ride.',
  entryDay: 'Tag',
  scheduled: 'geplanter Beginn',
  actual: 'tatsächlicher Beginn',
  timeExample: ({ time }) => wallClock(time),
  room: 'Raum',
  headCount: 'Teilnehmerzahl',
  notCount: 'Schreib als ganze Zahl, wie viele dabei waren.',
  tooLong: ({ most }) => `Höchstens ${number(most)} Zeichen.`,
  note: 'private Notiz',
  noteHint: 'Was gut lief, Verletzungen, Notizen fürs nächste Mal. Auf diesem Gerät gespeichert; in keinem Link und keiner Ride-Datei.',
  save: 'ins Logbuch speichern',
  saveChanges: 'Änderungen speichern',
  cancel: 'abbrechen',
  outcome: ({ outcome }) => WHAT_BECAME[outcome],
  outcomeOf: ({ name }) => `${name}: wie es lief`,
  stars: ({ count }) => (count === 0 ? 'keine Sterne' : plural(count, 'Stern', 'Sterne')),
  starsOf: ({ name }) => `${name}: Sterne`,
  changeOf: ({ name }) => `${name}: was anders war`,
  changePlaceholder: 'was anders war, wie es ankam',
  blocks: ({ skipped }) => (skipped === 0 ? 'Blöcke' : `Blöcke, ${number(skipped)} ausgelassen`),
  block: ({ name, seconds }) => `${name}, ${clock(seconds)}`,

  songs: 'gespielte Songs',
  from: 'von',
  to: 'bis',
  saveCsv: 'als CSV speichern',
  print: 'drucken',
  licenses:
    'Wer Musik wem melden muss, ist von Land zu Land verschieden: In manchen meldet das Studio, was dort läuft, und du den Rest. Frag die Stelle, die bei euch Musik lizenziert.',
  noSongs: 'In diesen Tagen steht kein Song im Logbuch.',
  songsTable: 'Tabelle der gespielten Songs',
  songsPlayed: ({ count, from, to }) => `${plural(count, 'Song', 'Songs')}, gespielt vom ${shortDay(from)} bis ${shortDay(to)}`,
  head: { day: 'Tag', start: 'Beginn', room: 'Raum', title: 'Titel', artist: 'Interpret', played: 'gespielt', riders: 'Teilnehmer' },
  shortDay,
  saved: ({ file }) => `${file} gespeichert`,

  unreadable: 'Das Logbuch ließ sich nicht lesen.',
  kept: ({ title, day: on }) => `„${title}“ vom ${shortDay(on)} im Logbuch gespeichert`,
  notKept: 'Die Stunde ließ sich nicht im Logbuch speichern.',
  removed: ({ title, day: on }) => `„${title}“ vom ${shortDay(on)} aus dem Logbuch gelöscht`,
  notRemoved: 'Der Eintrag ließ sich nicht löschen.',
}
