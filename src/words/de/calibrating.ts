import type { en } from '#words/en/index.ts'
import { clock, number } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

const BRAKES = { friction: 'Reibung', magnetic: 'Magnet' }

const KINDS = { ...BRAKES, between: 'zwischen Reibung und Magnet' }

const MEANS: Readonly<Record<Parameters<typeof names.feel>[0]['feel'], string>> = {
  base: 'gerade genug, um die Pedale zu kontrollieren; nichts hüpft, nichts drückt zurück',
  'easy flat': 'eine leichte Straße; du plauderst',
  'brisk flat': 'eine Straße mit etwas Grip; du sprichst noch in ganzen Sätzen',
  'light hill': 'die Beine müssen drücken; die Sätze werden kurz',
  'solid hill': 'knappe Worte; einen Song lang könntest du das halten',
  'heavy hill': 'ein Wort nach dem anderen; ein, zwei Minuten könntest du das halten',
}

const grew = (exponent: number) => `die Leistung wuchs mit der Trittfrequenz hoch ${number(exponent, 1)}; Reibung ist 1, Magnet 2`

export const calibrating: typeof en.calibrating = {
  heading: 'kalibrieren',
  about: 'Dauert etwa zehn Minuten auf dem Rad. Du siehst die Änderung, bevor du sie übernimmst.',
  byWatts: 'mit den Watt der Konsole',
  byFeel: 'nach Gefühl, ohne Konsole',
  byWattsTitle: ({ bike }) => `${bike}, mit den Watt der Konsole`,
  byFeelTitle: ({ bike }) => `${bike}, nach Gefühl`,
  byWattsLabel: 'nach Watt kalibrieren',
  byFeelLabel: 'nach Gefühl kalibrieren',

  setKnob: ({ setting, isBase, rpm }) =>
    `Stell den Knopf auf ${isBase ? `Grundwiderstand, ${setting}` : setting}. Fahr mit ${measures.rpm(rpm)}, bis die Watt ruhig stehen, und gib sie ein.`,
  findFeel: ({ feel, rpm, unit }) =>
    `Fahr mit ${measures.rpm(rpm)} und dreh, bis es sich nach „${names.feel({ feel })}“ anfühlt: ${MEANS[feel]}. Gib ein, wo der Knopf steht, in ${measures.unitOf(unit, true)}.`,
  last: 'Das war die letzte. Sieh dir an, was sich ändert, und übernimm es oder brich ab.',
  skip: 'diese überspringen',
  stay: 'Bleib sitzen. Unter dem Grundwiderstand nur so schnell treten, wie du es kontrollierst, oder überspringen.',

  oneCadence: 'eine Trittfrequenz für alle',
  oneCadenceHint: ({ bpm, rpm }) => `Tipp: Ein Song mit ${measures.bpm(bpm)} hält ${measures.rpm(rpm)} auf dem Beat.`,
  anotherCadence: 'dann mit einer anderen',
  anotherCadenceHint:
    'Zeigt, wie die Bremse auf die Trittfrequenz reagiert. Drei Einstellungen reichen. Ohne sie bleibt die Bremse, wie sie ist.',
  wattsShown: 'angezeigte Watt',
  wattsShownAt: ({ at }) => `angezeigte Watt bei ${at}`,
  wattsShownAtRpm: ({ at, rpm }) => `angezeigte Watt bei ${at} und ${measures.rpm(rpm)}`,
  tryAnother: 'andere Einstellung versuchen',
  alreadyListed: 'Diese Einstellung steht schon in der Liste.',
  sameCadence: 'Erst zwei verschiedene Trittfrequenzen unterscheiden die Bremsen.',
  whoRides: 'wer fährt',
  firstCadence: 'erste Trittfrequenz',
  secondCadence: 'zweite Trittfrequenz',
  firstAt: 'zuerst mit',
  thenAt: 'dann mit',
  feelAt: ({ feel, rpm }) => `${names.feel({ feel })} bei ${measures.rpm(rpm)}`,
  rough:
    'Eine grobe Schätzung: Sie nimmt an, dass ein Gefühl für alle und bei jeder Trittfrequenz dieselbe Belastung bedeutet, und kennt die Fahrer nur aus dem Modell. Gut, um eine Stunde anzulegen, nicht, um jemanden zu testen.',

  tooFewWatts: 'Gib mindestens zwei Einstellungen ein, mehr sind besser.',
  falls: ({ upper, lower }) => `Bei ${upper} sind es weniger Watt als bei ${lower}: Lies eine der beiden noch einmal ab.`,
  tooFewFeels: 'Gib mindestens zwei Gefühle bei verschiedenen Einstellungen ein; am besten alle bei beiden Trittfrequenzen.',
  wrongWay: 'Die schwereren Gefühle liegen bei kleineren Einstellungen: Der Knopf wurde wohl falsch herum abgelesen.',

  changes: 'was sich ändert',
  noChange: ({ rider }) => `Die geschätzte Belastung dieses Rides für ${rider} bleibt gleich.`,
  mostChange: ({ rider, block, at, now, before }) =>
    `Für ${rider} ändert sich am meisten in ${block} bei ${clock(at)}: eine geschätzte Belastung von ${number(now, 1)} statt ${number(before, 1)}.`,
  rideLabel: ({ rider }) => `Die geschätzte Belastung für ${rider}, wie sie ist.`,
  rideCaption: ({ rider, before }) =>
    `geplante Belastung, gestrichelt die geschätzte Belastung für ${rider}${before ? '; dünn: wie zuvor' : ''}`,
  use: 'diese Kalibrierung übernehmen',
  cancel: 'abbrechen',
  baseMoves: ({ from, to }) => `Der Grundwiderstand rückt von ${from} auf ${to}.`,
  carried: ({ settings }) => `Nicht versucht, deshalb aus den bisherigen Watt umgerechnet: ${settings.join('; ')}.`,

  brakeNoPair: ({ stays }) => `${stays}: Erst dieselben Einstellungen bei zwei Trittfrequenzen zeigen es.`,
  brakeOnePair: ({ stays }) => `${stays}: Eine Einstellung bei beiden Trittfrequenzen ist zu wenig.`,
  brakeUndecided: ({ stays, exponent }) => `${stays}: Deine Angaben entscheiden es nicht (${grew(exponent)}).`,
  brakeStays: ({ brake }) => `Die Bremse bleibt bei ${BRAKES[brake]}`,
  brakeStaysFitted: ({ kind }) => `Die Bremse bleibt wie ermittelt, ${KINDS[kind]}`,
  brakeFits: ({ brake, exponent, impossible }) =>
    `Deine Angaben passen zu einer Bremse mit ${BRAKES[brake]} (${grew(exponent)}).${impossible ? ` Keine Bremse hat ${number(exponent, 1)}: Lies bei beiden Trittfrequenzen noch einmal ab.` : ''}`,
  brakeBetween: ({ exponent, error }) =>
    `Bremse: zwischen Reibung und Magnet, aus deinen Angaben ermittelt. Die Watt wachsen mit der Trittfrequenz hoch ${number(exponent)} ± ${number(error)}; Reibung ist 1, Magnet 2.`,
}
