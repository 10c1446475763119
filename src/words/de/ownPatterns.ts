import type { en } from '#words/en/index.ts'
import { clock, number, plural } from '#words/forms.ts'

export const ownPatterns: typeof en.ownPatterns = {
  keep: 'als Baustein speichern',
  keepDo: 'als Baustein speichern: Blöcke, Sätze oder alle Blöcke eines Songs, zum Wiederverwenden',
  apart: 'Ein Baustein besteht aus Blöcken, die in einem Song nebeneinanderstehen.',
  tooMany: ({ most }) => `Ein Baustein hat höchstens ${number(most)} Blöcke und Sätze.`,
  full: ({ most }) => `Du hast ${number(most)} Bausteine, mehr speichert diese Seite nicht. Lösch erst einen.`,
  notHere: 'In diesem Fenster kann nichts gespeichert werden.',
  title: 'als Baustein speichern',
  about:
    'Ansagen, Moves, Belastung und Längen bleiben, wie sie sind. Der Widerstand bleibt als Verlauf: so viel über dem, womit die Gruppe hineinkommt.',
  name: 'Name',
  save: 'speichern',
  cancel: 'abbrechen',
  nameless: 'Gib ihm einen Namen.',
  tooLong: ({ most }) => `Ein Name hat höchstens ${number(most)} Zeichen.`,
  taken: ({ name }) => `Einen Baustein namens „${name}“ hast du schon.`,

  mine: 'meine Bausteine',
  edit: 'meine Bausteine bearbeiten',
  done: 'fertig',
  find: 'Baustein suchen',
  noneFound: 'So heißt kein Baustein.',
  add: ({ name }) => `„${name}“ einfügen`,
  addDo: ({ name, items }) => `„${name}“ nach der Auswahl einfügen: ${plural(items, 'Block', 'Blöcke')}`,
  rename: ({ name }) => `Name von ${name}`,
  delete: 'löschen',
  deleteNamed: ({ name }) => `${name} löschen`,
  deleted: ({ name }) => `Baustein „${name}“ gelöscht.`,
  undo: 'rückgängig',

  bySeconds: 'Hier gibt es keinen Beat, deshalb wurden aus Zählzeiten Sekunden.',
  byCounts: 'Aus den Sekunden wurden ganze Achter dieses Songs.',
  lowered: 'Als Ganzes gesenkt, damit es am Regler bleibt.',
  raised: 'Als Ganzes angehoben, damit es nicht unter den Grundwiderstand geht.',

  newFromThis: 'neuer Ride daraus',
  newFromThisDo: 'aus diesem einen anderen Ride beginnen, mit oder ohne seine Songs',
  startFrom: 'neu daraus',
  startFromRide: ({ title }) => `neuer Ride aus ${title}`,
  newTitle: 'ein neuer Ride aus diesem',
  newAbout: ({ title }) =>
    `Aus „${title}“. Der neue Ride hat einen eigenen Namen, keine Startzeit und kein Protokoll; der alte bleibt, wie er ist.`,
  rideTitle: 'Titel',
  what: 'was mitkommt',
  withSongs: 'Songs und Blöcke',
  blocksOnly: 'nur die Blöcke',
  blocksOnlyHint: 'Die Songs fallen weg. Von jedem bleiben die Blöcke nach der Uhr und eine Notiz zu Länge und Tempo.',
  make: 'Ride beginnen',
  copyOf: ({ title }) => `${title} (Kopie)`,
  started: ({ title }) => `„${title}“ begonnen`,
  wasSong: ({ lengthSeconds, bpm }) =>
    `War ein Song von ${clock(lengthSeconds)}${bpm === undefined ? '' : ` mit ${number(Math.round(bpm))} bpm`}.`,
}
