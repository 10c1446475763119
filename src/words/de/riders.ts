import type { en } from '#words/en/index.ts'
import { clock, number, percent } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

const NUMBERS = {
  massKg: { name: 'Gewicht', unit: '', means: 'Dieselben Watt kosten schwerere Fahrer pro Kilogramm weniger von ihrer Reserve.' },
  age: { name: 'Alter', unit: 'Jahre', means: 'Bestimmt die maximale Herzfrequenz, wenn keine bekannt ist.' },
  vo2max: {
    name: 'VO2max',
    unit: 'ml/kg/min',
    means:
      'So viel Sauerstoff kann der Körper höchstens nutzen: Geschätzte Belastung und Herzfrequenz sind Anteile davon. Viele Erwachsene liegen zwischen 25 und 50.',
  },
  criticalPower: {
    name: 'kritische Leistung',
    unit: 'Watt',
    means: 'So viel geht, ohne die Reserve anzugreifen: etwa das Beste für eine halbe Stunde, nicht für eine ganze.',
  },
  wPrime: {
    name: 'Reserve',
    unit: 'kJ',
    means:
      'Arbeit, die über der kritischen Leistung noch möglich ist. Darüber leert sie sich, darunter füllt sie sich wieder. Meist 8 bis 25.',
  },
  restingHr: { name: 'Ruhepuls', unit: 'bpm', means: 'Dort beginnt die vorhergesagte Herzfrequenz.' },
  maxHr: {
    name: 'maximale Herzfrequenz',
    unit: 'bpm',
    means: 'Leer lassen für 208 − 0,7 × Alter; das kann um zehn nach oben oder unten danebenliegen.',
  },
  firstThresholdHr: {
    name: 'erste Schwelle',
    unit: 'bpm',
    means: 'Falls ein Stufentest sie gefunden hat: Darunter spricht man in ganzen Sätzen.',
  },
  secondThresholdHr: {
    name: 'zweite Schwelle',
    unit: 'bpm',
    means: 'Falls ein Stufentest sie gefunden hat: Darüber lässt sich kein Tempo halten.',
  },
  baseOffset: {
    name: 'eigener Grundwiderstand',
    unit: '',
    means: 'So weit liegt der Grundwiderstand hier von dem des Rads entfernt. Ab da zählt der Widerstand.',
  },
}

const KINDS = { assumed: 'angenommen', tested: 'getestet' }

const watts = (value: number) => number(value, 0)
const kJ = (joules: number) => number(joules / 1000, 1)

export const riders: typeof en.riders = {
  heading: 'Fahrer dieses Rides',
  typical: 'Drei typische Fahrer.',
  typicalSource: 'Gängige Praxis, keine Quelle.',
  about: ({ rider, level }) =>
    `Die Prüfung rechnet mit ${rider}, passend zum Niveau der Stunde (${names.level({ level })}). Fahrer gehen nie in einen Link mit: Wer ihn öffnet, sieht die drei typischen Fahrer.`,
  add: 'Fahrer hinzufügen',
  backToTypical: 'zurück zu den drei typischen Fahrern',
  numbered: ({ number: place }) => `Fahrer ${place}`,

  keptTitle: 'gespeicherte Fahrer',
  keptEmpty: 'Noch keine. Speichere hier zum Beispiel die Fahrer einer Stunde, die du jede Woche gibst.',
  keepThem: 'diese Fahrer speichern',

  lineLabel: ({ rider }) => `Geplante Belastung über den Ride und geschätzte Belastung für ${rider}.`,
  lineCaption: ({ rider, kcal, low, high }) =>
    `geplante Belastung, gestrichelt die geschätzte Belastung für ${rider} mit ihrem Bereich; etwa ${number(kcal, 0)} kcal (${number(low, 0)}–${number(high, 0)}).`,

  name: 'Name',
  judged: 'Mit diesen Werten rechnet die Prüfung.',
  judgedFor: 'in der Prüfung',
  nameOf: ({ place }) => `Name von Fahrer ${place}`,
  needsName: 'Hier fehlt ein Name.',
  numberName: ({ of }) => NUMBERS[of].name,
  unit: ({ of }) => NUMBERS[of].unit,
  means: ({ of }) => NUMBERS[of].means,
  numberOf: ({ of, rider }) => `${NUMBERS[of].name} von ${rider}`,
  fromAge: 'aus dem Alter',
  basis: 'kritische Leistung und Reserve sind',
  basisMeans: 'Getestete Werte machen die Schätzungen enger. Ein überschriebener Wert gilt als angenommen, bis du etwas anderes angibst.',
  basisOf: ({ rider }) => `Herkunft von kritischer Leistung und Reserve von ${rider}`,
  kindOfBasis: ({ kind }) => KINDS[kind],
  remove: 'entfernen',
  removeRider: ({ rider }) => `${rider} entfernen`,
  baseTooFar: ({ span, unit }) =>
    `Der eigene Grundwiderstand muss auf der Skala des Rads liegen, höchstens ${number(span, 1)} ${measures.unitOf(unit, true)} vom Grundwiderstand des Rads entfernt.`,

  restingTooHighForAge: ({ age, highest }) =>
    `Mit ${age} Jahren wird die maximale Herzfrequenz auf ${number(highest, 0)} bpm geschätzt; der Ruhepuls muss darunter liegen.`,
  restingTooHigh: 'Die maximale Herzfrequenz muss über dem Ruhepuls liegen.',
  firstTooLow: 'Die erste Schwelle muss über dem Ruhepuls liegen.',
  secondTooLow: 'Die zweite Schwelle muss über dem Ruhepuls liegen.',
  thresholdsCrossed: 'Die zweite Schwelle muss über der ersten liegen.',
  thresholdTooHighForAge: ({ age, highest, second }) =>
    `Mit ${age} Jahren wird die maximale Herzfrequenz auf ${number(highest, 0)} bpm geschätzt; senke die ${second ? 'zweite' : 'erste'} Schwelle oder gib die maximale Herzfrequenz an.`,
  thresholdTooHigh: ({ second }) => `Die ${second ? 'zweite' : 'erste'} Schwelle muss unter der maximalen Herzfrequenz liegen.`,
  criticalTooHigh: ({ most, criticalPower, rider }) =>
    `${watts(most)} Watt brauchen die ganze Sauerstoffaufnahme von ${rider}; eine kritische Leistung von ${watts(criticalPower)} liegt sehr nah daran oder darüber.`,
  criticalTooLow: ({ most, criticalPower, rider }) =>
    `${watts(most)} Watt brauchen die ganze Sauerstoffaufnahme von ${rider}; eine kritische Leistung von ${watts(criticalPower)} liegt weit darunter.`,

  testHeading: 'kritische Leistung aus einem Test',
  testCaution:
    'All-out-Tests sind für gesunde, trainierte Fahrer mit ärztlichem Okay, gut aufgewärmt und unter Aufsicht. Sie sind nichts für Neue, und niemand macht einen nur für die Stundenplanung.',
  whoseTest: 'wessen Test',
  kindOfTest: 'Art des Tests',
  trials: 'zwei oder mehr Versuche',
  threeMinutes: 'drei Minuten all-out',
  heldFor: 'gehalten',
  averageWatts: 'mittlere Watt',
  lengthOfTrial: ({ place }) => `Dauer von Versuch ${place}`,
  wattsOfTrial: ({ place }) => `Watt von Versuch ${place}`,
  removeTrial: ({ place }) => `Versuch ${place} entfernen`,
  lengthOfNew: 'Dauer eines neuen Versuchs',
  wattsOfNew: 'Watt eines neuen Versuchs',
  another: 'noch einer',
  trialsHow:
    'Jeden bis zur Erschöpfung fahren, ausgeruht, am besten an verschiedenen Tagen: mindestens einen von etwa 3 und einen von 12 Minuten. Watt von einem kalibrierten Rad.',
  trialLength: ({ shortest, longest }) =>
    `Ein Versuch dauert ${clock(shortest)} bis ${clock(longest)}; schreib Minuten und Sekunden, zum Beispiel 3:00.`,
  averageOver: 'mittlere Watt über',
  wholeTest: 'alle drei Minuten',
  firstPart: 'die ersten 2½ Minuten',
  averageHint: 'All-out ab der ersten Sekunde, ohne Einteilen und ohne Uhr im Blick.',
  lastAverage: 'Mittel der letzten 30 s',
  lastAverageHint: 'Was am Ende bleibt, ist die kritische Leistung.',
  peakSecond: 'Sekunde der Spitze',
  peakSecondHint: 'Falls die Konsole sie zeigt. All-out liegt sie in den ersten zehn.',
  seconds: 's',
  watts: 'Watt',
  rpm: 'U/min',
  needed: 'Der Test braucht diesen Wert; entferne den Test, um ihn wegzulassen.',
  removeTest: 'diesen Test entfernen',
  usedFor: ({ rider }) => `gilt für ${rider}`,
  takeFor: ({ rider }) => `für ${rider} übernehmen`,
  capacity: ({ criticalPower, wPrime, error }) =>
    `Kritische Leistung ${watts(criticalPower)} Watt${error ? ` ± ${watts(error.criticalPower)}` : ''}; Reserve ${kJ(wPrime)} kJ${error ? ` ± ${kJ(error.wPrime)}` : ''}.`,
  curve: ({ trials }) => `Watt nach Dauer: ${trials.map((trial) => `${watts(trial.watts)} Watt über ${clock(trial.seconds)}`).join(', ')}.`,
  curveCaption: 'gehaltene Watt nach Minuten; die Punkte sind die Versuche, die gepunktete Linie ist die kritische Leistung',

  tooFew: 'Gib mindestens zwei Versuche verschiedener Dauer ein.',
  sameLength: 'Alle Versuche sind gleich lang: Die kritische Leistung braucht zwei deutlich verschiedene Dauern.',
  notFalling:
    'Diese Versuche fallen nicht so ab wie All-out-Versuche: Ein längerer hat im Vergleich zum kürzeren zu viele oder zu wenige Watt. Einer war nicht all-out, oder es ist ein Tippfehler darin.',
  notFallingThree: 'Die letzten 30 Sekunden liegen nicht unter dem Mittel: Der Test war eingeteilt, oder es ist ein Tippfehler darin.',
  trialShort: ({ seconds }) => `Der Versuch von ${clock(seconds)} ist kürzer als 2 Minuten; dort gilt das Modell nicht.`,
  trialLong: ({ seconds }) => `Der Versuch von ${clock(seconds)} ist länger als 15 Minuten; dort gilt das Modell nicht mehr gut.`,
  allShort: ({ longest }) =>
    `Der längste Versuch dauert ${clock(longest)}: Ohne einen von 10 Minuten oder mehr fällt die kritische Leistung zu hoch aus. Ergänze einen von 12 bis 15.`,
  alike: ({ shortest, longest }) =>
    `Die Versuche sind sich zu ähnlich, ${clock(shortest)} bis ${clock(longest)}: Ein kleiner Fehler in einem verschiebt das Ergebnis stark. Der längste sollte mindestens doppelt so lang sein wie der kürzeste.`,
  apart: ({ byWork, byPower, explained }) =>
    `Diese Versuche passen nicht zusammen: Die kritische Leistung ergibt ${watts(byWork)} oder ${watts(byPower)} Watt, je nachdem, wie die Gerade gelegt wird (r² ${number(explained, 3)}). Fahr den Ausreißer noch einmal.`,
  onlyTwo: 'Zwei Versuche passen immer zusammen. Ein dritter von anderer Dauer zeigt, wie sicher das ist.',
  unusual: ({ wPrime }) =>
    `Eine Reserve von ${kJ(wPrime)} kJ ist selten; die meisten haben 5 bis 35. Sieh dir die Versuche noch einmal an.`,
  latePeak: ({ peakSecond }) =>
    `Die Spitze lag bei ${number(peakSecond)} s: Ein All-out-Start hat sie in den ersten Sekunden. Eingeteilt ergibt der Test eine zu hohe kritische Leistung.`,
  paced: ({ share }) =>
    `Das Ende liegt bei ${percent(share)} des Mittels: Der Test war kaum all-out, und die kritische Leistung fällt zu hoch aus.`,
}
