import type { en } from '#words/en/index.ts'
import { capitalized, grouped, number, or, plural } from '#words/forms.ts'
import { UNITS } from './documentParts.ts'

/** "Song 3, Block 2, Belastung: muss zwischen 0 und 10 liegen, ist aber 14." */
const told = ({ at, found }: Parameters<typeof en.problems.missing>[0], wrong: string) =>
  `${capitalized(at)}: ${wrong}${found === undefined ? '' : `, ist aber ${found}`}.`

const of = (unit?: keyof typeof UNITS) => (unit === undefined ? '' : ` ${UNITS[unit]}`)

export const problems: typeof en.problems = {
  missing: (at) => told(at, 'fehlt'),
  text: (at) => told(at, 'muss Text sein'),
  longText: ({ most, ...at }) => told(at, `ist zu lang (höchstens ${grouped(most)} Zeichen)`),
  emptyText: (at) => told(at, 'darf nicht leer sein'),
  revision: (at) => told(at, 'muss aus 16 hexadezimalen Ziffern bestehen'),
  id: (at) => told(at, 'muss mit einem Buchstaben oder einer Ziffer anfangen und darf nur Buchstaben, Ziffern und . _ : - enthalten'),
  clock: (at) => told(at, 'muss eine Uhrzeit wie 18:30 sein'),
  number: (at) => told(at, 'muss eine Zahl sein'),
  whole: (at) => told(at, 'muss eine ganze Zahl sein'),
  between: ({ low, high, unit, ...at }) => told(at, `muss zwischen ${grouped(low)} und ${grouped(high)}${of(unit)} liegen`),
  above: ({ low, high, unit, ...at }) => told(at, `muss mehr als ${grouped(low)} und höchstens ${grouped(high)}${of(unit)} sein`),
  yesOrNo: (at) => told(at, 'muss true oder false sein'),
  oneOf: ({ choices, ...at }) => told(at, `muss ${or(choices)} sein`),
  group: (at) => told(at, 'muss eine Gruppe benannter Werte sein'),
  list: (at) => told(at, 'muss eine Liste sein'),
  shortList: ({ fewest, ...at }) => told(at, `muss mindestens ${plural(fewest, 'Eintrag', 'Einträge')} haben`),
  longList: ({ most, ...at }) => told(at, `hat zu viele Einträge (höchstens ${grouped(most)})`),
  pair: (at) => told(at, 'muss ein Zahlenpaar sein'),
  countsOrSeconds: (at) => told(at, 'muss in Zählzeiten oder in Sekunden angegeben sein, nicht in beidem'),

  repeatedId: ({ id, ...at }) => told(at, `kommt zweimal vor („${id}“); jeder Song, jeder Block und jede Ansage braucht eine eigene`),
  lengthInCounts: (at) => told(at, 'muss in Zählzeiten angegeben sein, weil der Song ein Beatraster hat'),
  lengthInSeconds: (at) => told(at, 'muss in Sekunden angegeben sein, weil es kein Beatraster zum Zählen gibt'),
  noSuchLeader: ({ id, ...at }) => told(at, `steht nicht unter den Trainern dieses Rides („${id}“)`),
  lowAboveHigh: ({ low, high, ...at }) =>
    told(at, `darf nicht unter dem unteren Wert liegen; der Bereich geht von ${number(low)} bis ${number(high)}`),
  endOfOpen: ({ low, high, ...at }) =>
    told(at, `muss bei „oder mehr“ gleich dem unteren Wert sein; es sind ${number(low)} und ${number(high)}`),
  aimOutside: ({ low, high, ...at }) => told(at, `muss in seinem Bereich von ${number(low)} bis ${number(high)} liegen`),
  notRising: (at) => told(at, 'muss später kommen als der davor, in Zählzeiten und in Sekunden'),
  oddNotWhole: (at) => told(at, 'muss aus ganzen Zahlen bestehen'),
  oddNone: (at) => told(at, 'muss mindestens einen Beat hinzufügen oder weglassen'),
  oddNotRising: (at) => told(at, 'muss später kommen als der davor'),
  oddNoRoom: (at) => told(at, 'darf nicht mehr Beats weglassen, als seit dem davor oder seit dem Songanfang gezählt werden'),
  tempo: ({ low, high, bpm, ...at }) =>
    told(at, `ergibt ein Tempo außerhalb von ${number(low)} bis ${number(high)} bpm (${number(bpm, 0)})`),
  tempoEndless: ({ low, high, ...at }) => told(at, `ergibt ein Tempo außerhalb von ${number(low)} bis ${number(high)} bpm (ohne Ende)`),
  outBeforeIn: ({ from, to, ...at }) => told(at, `muss nach dem Einstieg kommen; der Song spielt von ${number(from)} bis ${number(to)}`),
  emptyStretch: (at) => told(at, 'muss nach dem Anfang kommen'),
  eightsCrossed: ({ low, high, ...at }) => told(at, `darf nicht unter der kleinsten liegen; es sind ${number(low)} und ${number(high)}`),
  wholeSteps: ({ setting, stepsPerUnit, ...at }) =>
    told(at, `muss eine ganze Zahl von Schritten sein; ${number(setting, 9)} bei ${number(stepsPerUnit)} Schritten pro Einheit ist keine`),
  settingsCrossed: ({ low, high, ...at }) => told(at, `muss über der kleinsten liegen; es sind ${number(low, 9)} und ${number(high, 9)}`),
  baseOutside: ({ low, high, ...at }) =>
    told(at, `muss zwischen der kleinsten und der größten Einstellung liegen, ${number(low, 9)} und ${number(high, 9)}`),
  pointsNotRising: (at) => told(at, 'muss eine höhere Einstellung haben als der davor, bei nicht weniger Watt'),
  maxHrTooLow: (at) => told(at, 'muss über der Ruheherzfrequenz liegen'),
  thresholdOutOfOrder: (at) => told(at, 'muss in der Reihenfolge stehen: Ruhe, erste Schwelle, zweite Schwelle, maximal'),

  playsTooMuch: ({ count, most, ...at }) => told(at, `hat mit allen Runden ${grouped(count)} Blöcke (höchstens ${grouped(most)})`),
  saysTooMuch: ({ count, most, ...at }) => told(at, `hat ${grouped(count)} Ansagen (höchstens ${grouped(most)})`),
  tooManyWords: ({ count, most, ...at }) =>
    told(at, `hat ${grouped(count)} Buchstaben auf Blöcken und Ansagen (höchstens ${grouped(most)})`),
  lastsTooLong: ({ count, most, ...at }) => told(at, `dauert ${grouped(count)} Stunden (höchstens ${grouped(most)})`),
}
