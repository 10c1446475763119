import type { CueMoment } from '#plan/model.ts'

/** Sentences said at one place of the evening ride (tests/engine/cues/claims/spoken/spokenRides.ts), whose numbers stand beside its blocks. */
export interface Said {
  block: string
  moment?: CueMoment
  /** Counts or seconds before the change; 4 unless given. */
  lead?: number
  right?: readonly string[]
  wrong?: readonly string[]
}

/** What is right follows from the ride by arithmetic. */
export const GERMAN: readonly Said[] = [
  {
    // +½ to ¾, 90 s, 90 rpm, effort 4
    block: 'build',
    right: [
      'Eine halbe Umdrehung mehr.',
      'Gib eine halbe Umdrehung dazu.',
      'Noch eine halbe Umdrehung.',
      'Zwei Vierteldrehungen drauf.',
      '½ Umdrehung mehr.',
      'Auf dreiviertel.',
      'Wir drehen hoch auf eine dreiviertel Umdrehung.',
      'Anderthalb Minuten, 90 U/min.',
      'Neunzig Sekunden zügig.',
      'Trittfrequenz 90.',
      'Beine auf neunzig Umdrehungen pro Minute.',
      'Belastung vier.',
      'Eine Vier von zehn.',
    ],
    wrong: [
      'Eine Vierteldrehung mehr.',
      'Gib anderthalb Umdrehungen dazu.',
      'Noch eine viertel Umdrehung.',
      'Drei Vierteldrehungen drauf.',
      'Eine halbe Umdrehung weniger.',
      'Auf anderthalb.',
      'Wir drehen hoch auf zwei Umdrehungen.',
      'Fünf Minuten, 90 U/min.',
      'Vierzig Sekunden zügig.',
      'Trittfrequenz 110.',
      'Beine auf siebzig Umdrehungen pro Minute.',
      'Belastung sieben.',
      'Eine Acht von zehn.',
    ],
  },
  {
    // −¼ to ½, a minute, 80 rpm, effort 3
    block: 'ease',
    right: [
      'Eine Vierteldrehung weniger.',
      'Nimm eine Vierteldrehung raus.',
      'Eine viertel Umdrehung Widerstand weg.',
      'Runter auf einhalb.',
      'Eine Minute locker.',
      'Sechzig Sekunden Erholung.',
      '80 rpm.',
    ],
    wrong: [
      'Eine halbe Umdrehung weniger.',
      'Nimm anderthalb Umdrehungen raus.',
      'Eine viertel Umdrehung Widerstand dazu.',
      'Runter auf einviertel.',
      'Zwei Minuten locker.',
      'Dreißig Sekunden Erholung.',
      '95 rpm.',
    ],
  },
  {
    // +1 to 1½, 128 counts, 64 s, 60 rpm, effort 6
    block: 'climb',
    right: [
      'Eine Umdrehung mehr.',
      'Eine ganze Umdrehung? Ja, eine Umdrehung drauf.',
      'Hoch auf anderthalb.',
      'Auf eins Komma fünf.',
      'Auf 1,5 Umdrehungen.',
      'Sechzehn Achter Berg.',
      '128 Zählzeiten lang.',
      'Vier Phrasen im Sitzen.',
      'Eine Minute Berg.',
      'Sechs von zehn.',
    ],
    wrong: [
      'Zwei Umdrehungen mehr.',
      'Eineinhalb Umdrehungen drauf.',
      'Hoch auf zweieinhalb.',
      'Auf zwei Komma fünf.',
      'Auf 2,5 Umdrehungen.',
      'Acht Achter Berg.',
      '64 Zählzeiten lang.',
      'Zwei Phrasen im Sitzen.',
      'Drei Minuten Berg.',
      'Neun von zehn.',
    ],
  },
  {
    // −1¼ to ¾, 96 counts, 48 s
    block: 'breathe',
    right: ['Eineinviertel Umdrehungen weniger.', 'Eineinviertel runter.', 'Zwölf Achter locker.', 'Zurück auf dreiviertel.'],
    wrong: ['Eine Umdrehung weniger.', 'Eindreiviertel runter.', 'Sechs Achter locker.', 'Zurück auf anderthalb.'],
  },
  {
    // +¾ to 1¾, 30 s, 80 counts, effort 8, the first of three
    block: 'push1',
    right: [
      'Dreißig Sekunden Push.',
      '30 Sekunden, alles was geht.',
      'Drei Pushes.',
      'Push eins von drei.',
      'Erster Push.',
      'Noch drei Pushes.',
      'Eine dreiviertel Umdrehung mehr, zehn Achter.',
      'Acht von zehn.',
    ],
    wrong: [
      'Fünfundvierzig Sekunden Push.',
      '60 Sekunden, alles was geht.',
      'Fünf Pushes.',
      'Push zwei von drei.',
      'Zweiter Push.',
      'Noch fünf Pushes.',
      'Eine halbe Umdrehung mehr, zehn Achter.',
      'Fünf von zehn.',
    ],
  },
  {
    block: 'push2',
    right: ['Zweiter Push von drei.', 'Push zwei.', 'Noch zwei Pushes.', 'Eine Umdrehung drauf, dreißig Sekunden.', 'Vorletzter Push.'],
    wrong: ['Dritter Push von drei.', 'Push drei.', 'Noch vier Pushes.', 'Eine Umdrehung drauf, zwanzig Sekunden.', 'Letzter Push.'],
  },
  {
    // +1¼ to 2¼, 45 s
    block: 'push3',
    right: ['Letzter Push.', 'Noch ein Push.', 'Fünfundvierzig Sekunden Vollgas.', 'Auf zweieinviertel.', 'Neun von zehn.'],
    wrong: ['Vorletzter Push.', 'Noch zwei Pushes, dann Pause.', 'Zwanzig Sekunden Vollgas.', 'Auf dreieinviertel.', 'Sechs von zehn.'],
  },
  {
    // Ten seconds, twenty counts of 160 bpm are 7½ s before the end of 45 s.
    block: 'push3',
    moment: 'form',
    lead: 40,
    right: ['Noch 15 Sekunden.', 'Noch fünfzehn Sekunden!', 'Die letzten fünfzehn Sekunden.'],
    wrong: ['Noch 30 Sekunden.', 'Noch vierzig Sekunden!', 'Die letzten dreißig Sekunden.'],
  },
  {
    block: 'hop',
    // Said in every round, so that what is left changes.
    right: ['Drei Runden.', 'Jumps auf acht.', 'Acht hoch, acht runter.'],
    wrong: ['Fünf Runden.', 'Jumps auf vier.', 'Vier hoch, vier runter.', 'Noch drei Runden.', 'Noch fünf Runden.'],
  },
  {
    // 3 to 4, 80 s
    block: 'heavy',
    right: ['Auf drei bis vier Umdrehungen.', 'Insgesamt drei bis vier Umdrehungen.', 'Achtzig Sekunden Berg.', 'Zwanzig Achter.'],
    wrong: ['Auf fünf bis sechs Umdrehungen.', 'Insgesamt sieben Umdrehungen.', 'Vierzig Sekunden Berg.', 'Zehn Achter.'],
  },
]

/** Sentences with and without numbers that claim nothing of the plan. */
export const SILENT: readonly string[] = [
  'Schultern tief, Hände locker.',
  'Ein Push, der sitzt.',
  'Vier, drei, zwei, eins, hoch!',
  'Fünf, sechs, sieben, acht.',
  'Zwei Hände am Lenker.',
  'Beide Füße flach.',
  'Eins nach dem anderen.',
  'Ein tiefer Atemzug.',
  'Wer kann noch eine halbe Umdrehung mehr?',
  'Wenn du kannst, eine Umdrehung mehr.',
  'Vielleicht eine Vierteldrehung dazu.',
  'Nicht mehr als zwei Umdrehungen.',
  'Gestern waren es zehn Pushes.',
  'Letztes Jahr bin ich 90 Sekunden gefahren.',
  'Morgen machen wir fünf Runden.',
  'Stell dir 1000 Leute vor.',
  'Es ist 18 Uhr.',
  'Hundert Prozent da sein.',
  'Mit 90 Prozent Kraft.',
  'Kein Push dauert zehn Minuten.',
  'Oder eine halbe Umdrehung weniger.',
  'Die ersten Meter sind die schwersten.',
  'Zehn Kilometer bis zum Meer.',
  'Alle zusammen, ein Rhythmus.',
  'Ich sehe drei Leute lachen.',
  'Zwei Freunde, ein Rad.',
  'Einmal durchatmen.',
  'Auf geht’s, auf acht!',
  'Hoch auf vier.',
  'Bleib dran.',
  'Halt das Tempo.',
  'Der Berg ruft.',
  'Push, push, push!',
  'Runde Tritte.',
  'Die zweite Luft kommt.',
  'Erste Sahne!',
  'Ein Lächeln kostet nichts.',
  'Null Stress.',
  'Tausend Dank.',
  'Ein bisschen mehr Druck.',
  'Etwas mehr Widerstand.',
  'Ein Hauch weniger.',
  'Noch mal tief einatmen.',
  'Noch nicht loslassen.',
  'Drei Atemzüge.',
  'Zähl bis zehn.',
  'Du bist die Nummer eins.',
  'Auf die Eins.',
  'Auf der Eins geht es los.',
  'Der Song hat 160 Schläge.',
  'Das ist eine Ansage.',
  'Eine Welle nach der anderen.',
  'Zwei Welten.',
  'Mach die Acht rund.',
  'Sieben Sachen packen.',
  'Elf Freunde müsst ihr sein.',
  'Die Hälfte macht der Kopf.',
  'Viertel vor acht bin ich zu Hause.',
  'Ein Drittel von euch ist neu.',
  'Kopf hoch, Blick weit.',
  'In zwei Welten denken.',
  'Fühlt sich an wie nasser Sand.',
]

/** At a block, a wrong sentence and what it is put right to; null where no number alone does it. */
export const REPAIRED: readonly (readonly [block: string, wrong: string, right: string | null])[] = [
  ['build', 'Eine Vierteldrehung mehr.', 'Eine halbe Umdrehung mehr.'],
  ['build', 'Eine halbe Umdrehung weniger.', 'Eine halbe Umdrehung mehr.'],
  ['build', '1½ Umdrehungen mehr.', '½ Umdrehung mehr.'],
  ['build', 'Vierzig Sekunden zügig.', 'Neunzig Sekunden zügig.'],
  ['build', 'Trittfrequenz 110.', 'Trittfrequenz 90.'],
  ['build', 'Belastung sieben.', 'Belastung vier.'],
  ['ease', 'Nimm anderthalb Umdrehungen raus.', 'Nimm eine viertel Umdrehung raus.'],
  ['ease', 'Zwei Minuten locker.', 'Eine Minute locker.'],
  ['climb', 'Acht Achter Berg.', 'Sechzehn Achter Berg.'],
  ['climb', 'Hoch auf zweieinhalb.', 'Hoch auf anderthalb.'],
  ['climb', '64 Zählzeiten lang.', '128 Zählzeiten lang.'],
  ['push1', 'Fünf Pushes.', 'Drei Pushes.'],
  ['push1', 'Zweiter Push.', 'Erster Push.'],
  ['push1', 'Push zwei von drei.', 'Push eins von drei.'],
  ['push3', 'Zwanzig Sekunden Vollgas.', 'Fünfundvierzig Sekunden Vollgas.'],
  ['hop', 'Fünf Runden.', 'Drei Runden.'],
  ['build', 'Mit einer viertel Umdrehung mehr.', null],
]
