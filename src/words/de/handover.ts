import type { en } from '#words/en/index.ts'
import { and, grouped, plural } from '#words/forms.ts'

export const handover: typeof en.handover = {
  title: ({ title }) => `„${title}“ teilen`,

  link: 'Link',
  linkAbout:
    'Der ganze Ride steckt im Link selbst, hinter dem „#“, das kein Browser an einen Server schickt. Wer ihn öffnet, sieht den Ride nur zum Ansehen und kann eine Kopie behalten. Bei dir und bei den anderen ändert sich nichts.',
  characters: ({ count }) => `${grouped(count)} Zeichen`,
  longLink: ({ most }) =>
    `Länger als ${grouped(most)} Zeichen: Manche Mail- und Chat-Apps schneiden so lange Links ab. Die Datei unten ist sicherer.`,
  longLinkSource: 'gängige Praxis, keine Quelle',
  email: 'per E-Mail senden',
  copyThenEmail: 'kopieren, dann E-Mail',
  mailSubject: ({ title }) => `Ride: ${title}`,
  mailBody: ({ title }) => `Hier ist der Ride „${title}“. Er öffnet sich im Browser; es wird nichts installiert.`,
  mailPaste: '(Link hier einfügen)',

  qr: 'QR-Code',
  tooLongForQr: ({ count, most }) =>
    `Dieser Link ist zu lang für einen QR-Code, der sich leicht scannen lässt (${grouped(count)} von etwa ${grouped(most)} Zeichen). Schick stattdessen den Link oder die Datei.`,
  tooLongForQrSource: 'gängige Praxis, keine Quelle',
  drawingQr: 'Code wird gezeichnet…',
  qrFailed: 'Der Code ließ sich nicht zeichnen. Schick stattdessen den Link oder die Datei.',
  qrLabel: 'QR-Code des Links',
  qrAbout: ({ count }) =>
    `Enthält denselben Link, ${grouped(count)} Zeichen. Halte eine Handykamera ein paar Zentimeter davor; der Ride öffnet sich nur zum Ansehen.`,

  file: 'Datei',
  fileAbout: 'Enthält dasselbe wie der Link, in jeder Länge. Geöffnet wird sie auf der Startseite oder indem man sie auf die Seite zieht.',
  openFile: 'Datei öffnen…',

  holdings: 'was enthalten ist',
  included: 'enthalten',
  notIncluded: 'nie enthalten',
  head: 'Titel, Niveau, Stundenlänge und Ziel',
  songs: ({ songs, withMusic }) =>
    withMusic === 0
      ? `${plural(songs, 'Song', 'Songs')}, noch ohne Musik`
      : `${plural(songs, 'Song', 'Songs')}, ${withMusic === songs ? '' : `${grouped(withMusic)} mit Musik: `}Titel, Interpret, Länge, Beat und Marken`,
  fingerprints: 'Audio-Fingerabdrücke der gelesenen Dateien, um sie wiederzuerkennen',
  blocks: ({ blocks, cues }) =>
    `${plural(blocks, 'Block', 'Blöcke')} mit ${cues === 0 ? 'noch keinen Ansagen' : `dem Wortlaut von ${plural(cues, 'Ansage', 'Ansagen')}`}`,
  bike: ({ name }) => `das Rad „${name}“ mit seiner Skala`,
  names: ({ names }) => `${names.length === 1 ? 'der Name' : 'die Namen'} ${and(names)}`,
  notes: 'die Notizen zu Songs und Blöcken',
  subNotes: 'die Notizen für die Vertretung, auch die zum Raum',
  studioRules: 'die Studioregeln des Raums und die Moves, die dort wegbleiben',
  versionIds: 'Kennungen der Versionen, aus denen er entstanden ist',
  privateNotes: 'deine privaten Notizen zum Ride',
  hiddenChecks: 'die Hinweise, die du ausgeblendet hast',
  needsPractice: 'die Blöcke, die du noch üben willst',
  riders: 'Fahrer mit Namen',
  otherRides: 'deine anderen Rides',
  versions: 'die Versionen, die du gespeichert hast',
  soundFiles: 'Ton- und Musikdateien',

  shared: 'geteilter Ride',
  sharedRide: ({ title }) => `Geteilter Ride „${title}“, nur zum Ansehen.`,
  lookAround: 'Sieh dich um. Du kannst ihn nicht ändern, und deine Rides bleiben unberührt.',
  belongsTo: ({ title }) => `Er gehört zu deinem Ride „${title}“.`,
}
