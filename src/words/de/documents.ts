import type { en } from '#words/en/index.ts'
import { grouped, number } from '#words/forms.ts'
import { ENTRIES, FIELDS } from './documentParts.ts'

export const documents: typeof en.documents = {
  notARide: 'Das ist kein Ride: Die Schemanummer fehlt.',
  newer: ({ schema }) => `Dieser Ride stammt aus einer neueren Version (Dokument ${number(schema)}). Zum Öffnen bitte aktualisieren.`,
  badSchema: 'Die Schemanummer dieses Rides ist beschädigt; sie muss mindestens 1 sein.',
  cannotMigrate: ({ schema }) =>
    `Dieser Ride stammt aus einer alten Version (Dokument ${number(schema)}) und ließ sich nicht auf den neuen Stand bringen.`,
  tooDeep: 'Das lässt sich nicht öffnen: Es ist viel tiefer verschachtelt als jeder Ride.',
  tooLarge: 'Das lässt sich nicht öffnen: Es ist viel größer als jeder Ride.',
  unreadable: 'Das lässt sich nicht lesen.',
  more: ({ count }) => (count === 1 ? 'Und ein weiteres Problem.' : `Und ${grouped(count)} weitere Probleme.`),

  notOpened: ({ file, why }) => `„${file}“ wurde nicht geöffnet. ${why}`,
  fileTooLarge: 'Die Datei ist viel größer als jeder Ride.',
  fileUnreadable: 'Die Datei ließ sich nicht vom Datenträger lesen.',
  fileOfOther: 'Die Datei ist kein Ride. Ein Ride ist eine Datei mit der Endung .ride.json, die hier gespeichert wurde.',
  filePartlyWrong: 'Das stimmt nicht in der Datei:',
  fileDiffers: ({ title }) =>
    `„${title}“ auf diesem Gerät ist anders als die Datei, deshalb siehst du die Datei nur zum Ansehen. Sieh dir die Änderungen an oder behalte eine Kopie, um beides zu haben.`,

  at: ({ entries, field }) => [...entries, field].join(', '),
  entry: ({ list, place }) => `${ENTRIES[list]} ${number(place)}`,
  bike: 'Rad',
  field: ({ field }) => (FIELDS as Readonly<Record<string, string | undefined>>)[field] ?? 'Eintrag',
  rule: ({ name }) => `Studioregel „${name}“`,

  foundText: ({ text }) => `„${text}“`,
  foundNumber: ({ value }) => (Math.abs(value) < 1e12 ? number(value, 9) : String(value)),
  foundNaN: 'keine Zahl',
  foundEndless: 'unendlich',
  foundEmpty: 'leer',
  foundOther: 'etwas, das keine Datei enthalten kann',
}
