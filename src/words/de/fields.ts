import type { Quantity } from '#units/problem.ts'
import type { en } from '#words/en/index.ts'
import { number, setting } from '#words/forms.ts'
import { usMeasures } from '#words/locale.ts'
import { measures } from './measures.ts'

interface Named {
  /** The head of a sentence, in the singular. */
  readonly subject: string
  readonly unit: string
  readonly example: string
}

const named = (subject: string, unit: string, example: string): Named => ({ subject, unit, example })

const QUANTITIES: Readonly<Record<Exclude<Quantity, 'mass'>, Named>> = {
  tempo: named('Das Tempo', 'bpm', '128 oder 127,6'),
  firstBeat: named('Der erste Beat', 'Sekunden nach Songbeginn', '0,25'),
  leadIn: named('Der Vorlauf', 'Sekunden (unter 0 wird übergeblendet)', '2, oder −4 zum Überblenden'),
  classLength: named('Die Stundenlänge', 'Minuten', '45'),
  speechRate: named('Das Sprechtempo', 'Wörtern pro Minute', '140'),
  cadence: named('Die Trittfrequenz', 'U/min', '80'),
  move: named('Eine Bewegung', 'Zählzeiten', '8'),
  rounds: named('Die Zahl der Runden', '', '4'),
  eights: named('Eine Grenze', 'Achtern', '8'),
  draft: named('Die Nummer des Entwurfs', '', '1'),
  stepsPerUnit: named('Die Zahl der Rasten', 'pro Einheit', '4 für Vierteldrehungen'),
  power: named('Die Leistung', 'Watt', '110'),
  age: named('Das Alter', 'Jahren', '37'),
  vo2max: named('Die VO2max', 'ml/kg/min', '40'),
  criticalPower: named('Die kritische Leistung', 'Watt', '165'),
  wPrime: named('Die Reserve', 'kJ', '14'),
  restingHr: named('Der Ruhepuls', 'bpm', '62'),
  maxHr: named('Die maximale Herzfrequenz', 'bpm', '182'),
  firstThresholdHr: named('Die erste Schwelle', 'bpm', '132'),
  secondThresholdHr: named('Die zweite Schwelle', 'bpm', '163'),
  meanPower: named('Die mittlere Leistung', 'Watt', '260'),
  endPower: named('Die Leistung am Ende', 'Watt', '210'),
  peakSecond: named('Die Sekunde der Spitze', 'Sekunden', '6'),
}

const namesOf = (of: Quantity): Named =>
  of === 'mass' ? named('Das Gewicht', usMeasures ? 'lb' : 'kg', usMeasures ? '154' : '70') : QUANTITIES[of]

const unitOf = (of: Quantity): string => (namesOf(of).unit === '' ? '' : ` ${namesOf(of).unit}`)

export const fields: typeof en.fields = {
  notNumber: ({ of }) => `${namesOf(of).subject} muss eine Zahl sein, zum Beispiel ${namesOf(of).example}.`,
  outside: ({ of, min, max }) => `${namesOf(of).subject} muss zwischen ${number(min)} und ${number(max)}${unitOf(of)} liegen.`,
  notWhole: ({ of }) => `${namesOf(of).subject} muss eine ganze Zahl sein.`,
  tooFine: ({ of, decimals }) =>
    `${namesOf(of).subject} darf höchstens ${decimals === 1 ? 'eine Nachkommastelle' : `${decimals} Nachkommastellen`} haben.`,

  notClock: () => 'Schreib Minuten und Sekunden, zum Beispiel 3:45, oder Sekunden, zum Beispiel 45.',
  secondsOver: () => 'Die Sekunden nach dem Doppelpunkt gehen von 00 bis 59.',
  minutesOver: () => 'Die Minuten nach den Stunden gehen von 00 bis 59.',
  oneFigure: () => 'Schreib die Sekunden nach dem Doppelpunkt mit zwei Ziffern, zum Beispiel 3:05.',
  notWallClock: () => 'Schreib die Uhrzeit zum Beispiel als 18:30.',

  notEights: ({ unit }) =>
    unit === 6
      ? 'Schreib Sechser, zum Beispiel 8, Sechser und Zählzeiten, zum Beispiel 8+4, oder 36 Zählzeiten.'
      : 'Schreib Achter, zum Beispiel 8, Achter und Zählzeiten, zum Beispiel 8+4, oder 36 Zählzeiten.',
  partOfCount: ({ below, above, unit }) =>
    `Eine Länge besteht aus ganzen Zählzeiten: am nächsten sind ${measures.eights(below, unit)} und ${measures.eights(above, unit)}.`,
  noCount: () => 'Eine Länge hat mindestens eine Zählzeit.',

  notSetting: ({ unit, example, stepsPerUnit }) =>
    `Schreib ${measures.unitOf(unit, true)}, zum Beispiel ${setting(example, stepsPerUnit)}.`,
  noSuchStep: ({ low, high, stepsPerUnit }) =>
    `So genau lässt sich dieses Rad nicht einstellen: am nächsten sind ${setting(low, stepsPerUnit)} und ${setting(high, stepsPerUnit)}.`,
  openRange: () => '„Oder mehr“ passt zu einer einzelnen Zahl, zum Beispiel 3 oder mehr.',
  highEndFirst: () => 'Schreib das untere Ende des Bereichs zuerst.',

  tooLong: ({ most, length }) => `Höchstens ${number(most)} Zeichen, hier sind es ${number(length)}.`,

  back: 'Das hast du getippt, bevor die Seite geschlossen wurde. Eingabe übernimmt es, Esc verwirft es.',
}
