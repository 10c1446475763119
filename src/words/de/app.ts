import type { en } from '#words/en/index.ts'
import { effort, number, plural } from '#words/forms.ts'

const SAVED = {
  saved: 'gespeichert',
  oneCopy: 'gespeichert, nur eine Kopie',
  saving: 'speichert…',
  typing: 'Eingabe noch nicht gespeichert',
  failed: 'nicht gespeichert',
  deleted: 'anderswo gelöscht',
  demo: 'Beispiel, noch nicht gespeichert',
}

const SAVED_MEANS = {
  saved: 'Dieser Ride ist auf diesem Gerät gespeichert.',
  oneCopy:
    'Rides werden in diesem Browser zweimal gespeichert, und einer der beiden Orte nimmt gerade nichts an. Alle paar Sekunden wird es noch einmal versucht.',
  saving: undefined,
  typing: 'Was im Feld steht, zählt, sobald du es verlässt oder Eingabe drückst; bis dahin wird es so aufgehoben, wie du es tippst.',
  failed: undefined,
  deleted: 'Ein anderes Fenster hat diesen Ride gelöscht. Er ist hier offen und nirgends gespeichert.',
  demo: 'Mit deiner ersten Änderung wird er als dein eigener Ride gespeichert.',
}

const THEMES = { auto: 'System', light: 'hell', dark: 'dunkel' }

export const app: typeof en.app = {
  places: 'Orte',
  theme: 'Farben',
  themeName: ({ theme }) => THEMES[theme],
  savedState: ({ saved }) => SAVED[saved],
  savedMeans: (saved) => SAVED_MEANS[saved],
  readOnly: 'schreibgeschützt',
  classLength: ({ level, minutes }) => `${level} · ${number(minutes)} min`,
  reading: ({ count }) => `liest ${plural(count, 'Song', 'Songs')}`,
  toSongs: 'zu meinen Songs',
  skip: 'direkt zum Inhalt',
  opening: 'wird geöffnet…',
  shortcutsNotFetched: 'Die Tastenkürzel konnten nicht geladen werden. Drücke noch einmal, wenn du wieder online bist.',

  shownOn: 'gezeigt auf',
  anotherBike: 'anderes Rad',
  shownOnBike: ({ bike }) => `Gezeigt auf „${bike}“.`,
  shownOnMeans: ({ own }) =>
    `Der Widerstand ist so umgerechnet, dass er sich auf diesem Rad etwa gleich anfühlt, und die Prüfung der Widerstände bezieht sich darauf. Deine Änderungen, Korrekturen und Ansagen bleiben auf der Skala des eigenen Rads des Rides, „${own}“.`,
  typicalBike: ({ bike }) => `${bike} (typisch)`,

  undone: ({ change }) => `Rückgängig gemacht: ${change}`,
  redone: ({ change }) => `Wiederholt: ${change}`,
  overruled: ({ change }) => `Inzwischen in einem anderen Fenster geändert: ${change}`,

  dismiss: 'schließen',
  deleted: ({ title }) => `„${title}“ ist gelöscht.`,
  restore: 'wiederherstellen',
  keepDeleted: 'behalten',
  backToDraft: 'Der Text, der beim Schließen der Seite in einem Feld stand, ist wieder da. Er zählt, sobald du dort Eingabe drückst.',
  backupDue: ({ count, everMade }) =>
    `${plural(count, 'Ride', 'Rides')} ${
      everMade ? 'seit der letzten Sicherung geändert' : 'hier gespeichert und noch keine Sicherung'
    }. „Sicherung speichern“ auf dieser Seite legt alles in eine Datei.`,

  nothingKept: 'Dieses Fenster kann nichts speichern (privates Surfen?), also auch keine Songs.',
  oneRideAtATime: ({ names }) => `Es wird nur ein Ride auf einmal geöffnet; übersprungen: ${names}.`,
  oneListAtATime: ({ names }) => `Es wird nur eine Liste auf einmal gelesen; übersprungen: ${names}.`,
  openSongs: 'meine Songs öffnen',
  listRead: ({ name, count }) => `„${name}“ ${holds(count)}`,
  listWaits: ({ name, count }) => `„${name}“ ${holds(count)}; die Liste wartet in meinen Songs.`,
  songsComing: ({ count }) =>
    count === 1
      ? '1 Song kommt in meine Songs, sobald er gelesen ist.'
      : `${number(count)} Songs kommen in meine Songs, sobald sie gelesen sind.`,
  skippedFile: ({ name }) => `„${name}“ übersprungen: kein Ride, keine Musik, keine Liste.`,
  skippedFiles: ({ count }) => `${number(count)} Dateien übersprungen: keine Rides, keine Musik, keine Listen.`,
  filesAndMore: ({ names, more }) => `${names.join(', ')} und ${number(more)} weitere`,

  broken: 'Hier ist etwas schiefgegangen.',
  brokenMeans:
    'Dein Ride ist nicht verloren: er ist noch im Speicher, und die zuletzt gespeicherte Fassung ist auf diesem Gerät. Lade erst eine Kopie herunter und versuch es dann noch einmal.',
  download: 'Ride herunterladen',
  reload: 'neu laden',
  downloaded: 'Die Datei ist in deinen Downloads.',
  nothingToDownload: 'Es war kein Ride offen, also gibt es nichts herunterzuladen.',
  brokenReason: ({ reason }) => `Einzelheiten: ${reason}`,

  close: 'schließen',
  effortOf: ({ level }) => `${effort(level)} von 10`,
  mixed: 'verschieden',
  find: 'suchen',
}

const holds = (count: number): string =>
  count === 0 ? 'enthält keine lesbaren Songs' : `ist eine Liste mit ${plural(count, 'Song', 'Songs')}`
