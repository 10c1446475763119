import type { en } from '#words/en/index.ts'
import { and, chosen, day, grouped, plural } from '#words/forms.ts'

const KINDS = {
  ride: 'Rides',
  version: 'Versionen',
  profile: 'Räder, Fahrer und Studioregeln',
  class: 'unterrichtete Stunden',
  song: 'Songs',
}

const files = (count: number) => plural(count, 'Musikdatei', 'Musikdateien')

export const backup: typeof en.backup = {
  title: 'Backup',
  about:
    'Alle Rides mit ihren privaten Notizen, alle Versionen, Räder, Fahrer und Studioregeln, Songs, deine eigenen Technikhinweise und das Logbuch in einer Datei. Vor dem Wiederherstellen siehst du, was sich ändern würde.',
  soundFilesNotIn: ({ count }) =>
    `Nicht enthalten: ${files(count)}, die du hier behältst. Bewahre sie auch woanders auf. Auf die Seite gezogen, findet jede ihren Song wieder, auch auf einem anderen Gerät.`,
  restore: 'Backup wiederherstellen…',

  rides: ({ count }) => plural(count, 'Ride', 'Rides'),
  versions: ({ count }) => plural(count, 'Version', 'Versionen'),
  profiles: ({ count }) => plural(count, 'Profil (Rad, Fahrer, Regeln oder Baustein)', 'Profile (Räder, Fahrer, Regeln und Bausteine)'),
  classes: ({ count }) => plural(count, 'unterrichtete Stunde', 'unterrichtete Stunden'),
  songs: ({ count }) => plural(count, 'Song', 'Songs'),
  holds: ({ parts, unreadable, soundFiles }) =>
    [
      `${and(parts)}.`,
      ...(unreadable === 0
        ? []
        : [
            `${plural(unreadable, 'Ride ließ', 'Rides ließen')} sich nicht lesen und ${chosen(unreadable, { one: 'fehlt', other: 'fehlen' })} darin.`,
          ]),
      ...(soundFiles === 0 ? [] : [`${files(soundFiles)} von hier ${chosen(soundFiles, { one: 'ist', other: 'sind' })} nicht darin.`]),
    ].join(' '),
  notMade: 'Das Backup ließ sich nicht erstellen.',

  dialog: 'Backup wiederherstellen',
  leave: 'abbrechen',
  nothingToRestore: 'nichts wiederherzustellen',
  restoreCount: ({ count }) => `${grouped(count)} wiederherstellen`,
  contents: ({ file, entries, same }) =>
    `„${file}“ enthält ${plural(entries, 'Eintrag', 'Einträge')}${same === 0 ? '' : `, davon ${grouped(same)} wie hier`}. Beim Wiederherstellen wird nichts gelöscht.`,
  unreadable: ({ count }) =>
    `${grouped(count)} weitere ${chosen(count, { one: 'ist nicht lesbar und wird', other: 'sind nicht lesbar und werden' })} übersprungen.`,
  soundFilesMissing: ({ count }) =>
    `Die Musikdateien von ${plural(count, 'Song', 'Songs')} sind nicht hier, und ein Backup enthält keine: Zieh sie auf die Seite, und jede findet ihren Song. Tempo, Beats und Marken sind im Backup.`,
  kind: ({ kind }) => KINDS[kind],
  classTaught: ({ title, on }) => `${title}, unterrichtet am ${day(on)}`,
  ownFormCues: 'deine eigenen Technikhinweise',
  isNew: 'noch nicht hier',
  isNewer: 'neuer als deiner; deiner bleibt als Version',
  isOlder: 'älter als deiner; deiner bliebe als Version',
  isOtherRide: 'anders als deiner; deiner bliebe als Version',
  isOther: 'anders als hier; was hier ist, würde ersetzt',
  isSame: 'wie hier',

  beforeRestore: 'vor dem Wiederherstellen eines Backups',
  rideRestored: 'Ride aus dem Backup wiederhergestellt',
  restored: ({ count }) => `${plural(count, 'Eintrag', 'Einträge')} aus dem Backup wiederhergestellt`,
  notAllRestored: 'Nicht alles ließ sich wiederherstellen. Was hier war, ist noch da.',
  cannotSave: 'Dieses Fenster kann nichts speichern (privates Surfen?), deshalb lässt sich kein Backup wiederherstellen.',
  hereUnreadable: 'Was auf diesem Gerät gespeichert ist, ließ sich nicht lesen, deshalb wurde das Backup nicht angesehen.',
  damaged: 'Es ist ein beschädigtes Backup.',
  newer: 'Dieses Backup stammt aus einer neueren Version. Zum Lesen bitte aktualisieren.',
}
