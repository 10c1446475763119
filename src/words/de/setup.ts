import type { en } from '#words/en/index.ts'
import { number, setting } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

const PARTS = { bike: 'Rad', riders: 'Fahrer', rules: 'Studioregeln' }

const LEDES = {
  bike: 'Die Widerstandsskala deines Rads und wie schwer jede Einstellung ist.',
  riders: 'Für diese Fahrer werden geschätzte Belastung, Herzfrequenz und Reserve dieses Rides berechnet.',
  rules: 'Mit diesen Zahlen plant das Studio. Die Prüfung richtet sich danach; sie warnt und verbietet nichts.',
}

const BRAKES = { friction: 'Reibung', magnetic: 'Magnet', between: 'zwischen Reibung und Magnet', fitted: 'wie ermittelt' }

const CALIBRATED = { watts: ', an der Konsole abgelesen', feel: ', nach Gefühl gefunden' }

const LIMITS = { min: 'kleinste', base: 'Grundwiderstand', max: 'größte' }

const LIMIT_HINTS = {
  min: 'Das Schwungrad läuft frei.',
  base: 'Leichteste Einstellung, bei der die Pedale noch unter Kontrolle sind.',
  max: 'Das Ende des Knopfs.',
}

const at = (value: number, { stepsPerUnit }: { stepsPerUnit: number }): string => {
  const steps = value * stepsPerUnit
  const whole = Math.round(steps)
  return Math.abs(steps - whole) < 1e-6 ? setting(whole, stepsPerUnit) : number(value)
}

export const setup: typeof en.setup = {
  heading: 'Räder & Fahrer',
  part: 'Teil',
  partName: ({ part }) => PARTS[part],
  lede: ({ part }) => LEDES[part],
  remove: 'entfernen',

  onDevice: ({ title }) => `${title} auf diesem Gerät`,
  inUse: 'in diesem Ride',
  use: 'übernehmen',
  takeKept: ({ name }) => `${name} für diesen Ride übernehmen`,
  removeKept: ({ name }) => `${name} von diesem Gerät entfernen`,
  nothingKept: 'In diesem Fenster lässt sich nichts speichern.',
  keepName: 'Name zum Speichern',
  keepPlaceholder: 'Name',
  keptBikes: 'gespeicherte Räder',
  keptBikesEmpty: 'Noch keine. Speichere dieses Rad, dann kannst du weitere Rides dafür planen.',
  keepBike: ({ name }) => `${name} speichern`,
  scale: ({ unit, stepsPerUnit, min, max, brake }) =>
    `${stepsPerUnit === 1 ? `ganze ${measures.unitOf(unit, true)}` : measures.settingOf(1, { unit, stepsPerUnit })}, ${at(min, { stepsPerUnit })} bis ${at(max, { stepsPerUnit })}, ${BRAKES[brake]}`,

  bikeHeading: 'das Rad dieses Rides',
  name: 'Name',
  needsName: 'Ein Rad braucht einen Namen.',
  unit: 'Einheit',
  unitHint: 'Eine davon: turn (Umdrehung), level (Stufe), gear (Gang).',
  needsUnit: 'Eine Skala braucht eine Einheit, zum Beispiel turn (Umdrehung) oder level (Stufe).',
  steps: 'Rasten',
  perUnit: ({ unit }) => `pro ${measures.unitOf(unit, false)}`,
  stepsHint: '4 für Viertel, 1 für ganze.',
  limit: ({ which }) => LIMITS[which],
  limitHint: ({ which }) => LIMIT_HINTS[which],
  brake: 'Bremse',
  brakeName: ({ brake }) => BRAKES[brake],
  cadenceTwice: ({ times, fitted }) => {
    const grows = times === 2 ? 'doppelte Watt' : times === 4 ? 'vierfache Watt' : `${number(times, 1)}-fache Watt`
    const said = `Doppelte Trittfrequenz, ${grows}.`
    if (fitted === null) return said
    return `${BRAKES[fitted].charAt(0).toUpperCase()}${BRAKES[fitted].slice(1)}, aus deinen Messwerten ermittelt. ${said}`
  },
  fittedExponent: ({ exponent, error }) =>
    `Die Watt wachsen mit der Trittfrequenz hoch ${number(exponent)} ± ${number(error)}; Reibung ist 1, Magnet 2. Wer eins davon wählt, verwirft den ermittelten Wert.`,
  measuredAt: 'gemessen bei',
  measuredHint: 'Mit dieser Trittfrequenz wurde die Tabelle unten gefahren.',
  copyName: ({ name }) => `${name} (Kopie)`,
  another: 'anderes Rad',
  anotherAbout:
    'Widerstandsansagen bleiben in der Einheit des Rads, was sie sind, auf die nächste Raste genau. In den Beinen können sie schwerer oder leichter sein; die geschätzte Belastung zeigt es.',
  copy: 'mit einer Kopie von diesem beginnen',
  typicalKnob: 'den typischen Knopf nehmen',

  wattsHeading: 'Watt nach Einstellung',
  typicalWatts: 'Typische Werte. Kalibriere einmal für bessere Schätzungen.',
  typicalSource: 'Gängige Praxis, keine Quelle.',
  wattsAre: ({ rpm, calibration }) =>
    `Watt bei ${measures.rpm(rpm)}${calibration ? CALIBRATED[calibration] : ''}; zwischen den Punkten eine glatte Kurve, die nie fällt.`,
  units: ({ unit }) => measures.unitOf(unit, true),
  watts: 'Watt',
  base: 'Grund',
  at: ({ value, stepsPerUnit }) => at(value, { stepsPerUnit }),
  withUnit: ({ value, unit, stepsPerUnit }) => `${at(value, { stepsPerUnit })} ${measures.unitOf(unit, value === 0 || value > 1)}`,
  wattsAt: ({ at: place }) => `Watt bei ${place}`,
  removePoint: ({ at: place }) => `Punkt bei ${place} entfernen`,
  addPoint: 'Punkt hinzufügen bei',
  pointExists: 'Bei dieser Einstellung gibt es schon einen Punkt.',
  curve: ({ rpm, points }) =>
    `Leistung nach Einstellung bei ${measures.rpm(rpm)}: ${points.map((point) => `${number(point.watts, 1)} Watt bei ${point.at}`).join(', ')}.`,
  curveCaption: ({ rpm, unit, before }) =>
    `Watt bei ${measures.rpm(rpm)} nach ${measures.unitOf(unit, true)}; die gepunktete Linie ist der Grundwiderstand${before ? '; dünn: wie zuvor' : ''}`,

  outOfRange: ({ min, max }) => `Dieses Rad geht von ${min} bis ${max}.`,
  belowZero: 'Eine Einstellung kann nicht unter 0 liegen.',
  aboveThousand: 'Eine Einstellung kann höchstens 1000 sein.',
  limitsCrossed: ({ min, max }) => `Die kleinste Einstellung (${number(min)}) muss unter der größten (${number(max)}) liegen.`,
  baseOutside: ({ base, min, max }) => `Der Grundwiderstand (${number(base)}) muss zwischen ${number(min)} und ${number(max)} liegen.`,
  stepsDontFit: ({ stepsPerUnit, unit, setting: value }) =>
    `Mit ${number(stepsPerUnit)} Rasten pro ${measures.unitOf(unit, false)} gibt es kein ${number(value)}; ändere zuerst diese Einstellung.`,
  wattsFall: ({ high, low, watts }) =>
    `Die Watt steigen mit der Einstellung: ${high} kann nicht weniger haben als die ${number(watts, 1)} bei ${low}.`,

  feelHeading: 'wie sich Einstellungen anfühlen',
  feelAbout: 'Eine Umdrehung bedeutet auf jedem Rad etwas anderes, ein Gefühl nicht. Die Kalibrierung nach Gefühl füllt das aus.',
  feel: 'Gefühl',
  settingOfFeel: ({ feel }) => `Einstellung für ${feel}`,
  removeFeel: ({ feel }) => `${feel} entfernen`,
  feelToAdd: 'Gefühl hinzufügen',
  whereFeel: ({ feel }) => `Einstellung für neues Gefühl ${feel}`,
  feelName: ({ feel }) => names.feel({ feel }),
}
