import type { en } from '#words/en/index.ts'

export const storage: typeof en.storage = {
  nothingKept:
    'In diesem Fenster lässt sich nichts speichern: Der Browser gibt ihm keinen Speicher, wie in manchen privaten Fenstern. Speichere den Ride als Datei oder Link, bevor du es schließt.',
  notHere: 'Dieser Ride ist in diesem Browser nicht gespeichert.',
  unreadable: 'Dieser gespeicherte Ride ließ sich nicht lesen. Er bleibt, wie er ist.',
  damaged: 'Ein Teil des Gespeicherten fehlt oder ist beschädigt.',
  full: 'Der Ride ließ sich nicht speichern: Der Speicher dieses Browsers ist voll. Speichere ihn als Datei oder Link.',
  notSaved: 'Der Ride ließ sich nicht speichern. Speichere ihn als Datei oder Link.',
  cleared:
    'Die Daten dieser Seite wurden im Browser gelöscht, während sie offen war. Der offene Ride ist wieder gespeichert; alles andere hier ist weg. Ein Backup stellt es wieder her.',
  deletedElsewhere: 'Dieser Ride wurde in einem anderen Fenster gelöscht. Hier ist er offen, aber nirgends gespeichert.',

  notListed: 'Was auf diesem Gerät gespeichert ist, ließ sich nicht auflisten.',
  kept: ({ name }) => `${name} auf diesem Gerät gespeichert`,
  notKept: ({ name }) => `${name} ließ sich nicht auf diesem Gerät speichern.`,
  removed: ({ name }) => `${name} von diesem Gerät entfernt`,
  notRemoved: ({ name }) => `${name} ließ sich nicht entfernen.`,

  notMusic: ({ file }) => `Dieser Browser kann „${file}“ nicht als Musik lesen.`,
  noBeat: ({ file }) => `Der Beat von „${file}“ ließ sich nicht finden: Die Analyse brach ab.`,
}
