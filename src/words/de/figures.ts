import type { en } from '#words/en/index.ts'
import { duration, number, percent, plural, setting } from '#words/forms.ts'
import { measures } from './measures.ts'

const FEELS = {
  base: 'gerade genug, um die Pedale zu kontrollieren; nichts hüpft, nichts drückt zurück',
  'easy flat': 'eine leichte Straße; du kannst plaudern',
  'brisk flat': 'eine Straße mit etwas Grip; du sprichst noch in ganzen Sätzen',
  'light hill': 'die Beine müssen drücken; die Sätze werden kurz',
  'solid hill': 'knappe Worte; du könntest es einen Song lang halten',
  'heavy hill': 'ein Wort nach dem anderen; du könntest es ein oder zwei Minuten halten',
}

export const figures: typeof en.figures = {
  noPeak: 'Kein Gipfel sticht heraus.',
  shape: ({ peaks, lastHardest, longestRest }) =>
    `${[
      plural(peaks, 'Gipfel', 'Gipfel'),
      ...(lastHardest === null ? [] : [`die letzte der härtesten Belastungen bei ${percent(lastHardest)} des Rides`]),
      ...(longestRest === null ? [] : [`die längste Erholung bei ${percent(longestRest)}`]),
    ].join(', ')}.`,

  hardShare: ({ share }) => `${percent(share)} der Zeit bei harter Belastung`,
  longestHard: ({ seconds }) => `eine harte Belastung von ${duration(seconds)}`,
  noRecovery: 'eine harte Belastung ohne Erholung',
  shortestRecovery: ({ seconds }) => `eine Erholung von ${duration(seconds)}`,
  changesPerMinute: ({ changes }) => `${number(changes, 1)} Wechsel von Haltung oder Bewegung pro Minute`,
  fastestMove: ({ counts }) => `eine Bewegung auf ${plural(counts, 'Zählzeit', 'Zählzeiten')}`,
  longestStanding: ({ seconds }) => `${duration(seconds)} im Stehen`,
  highestTurns: ({ size }) => `ein Widerstand von ${measures.knob(size)} über Grundwiderstand`,
  heaviest: 'der höchste Widerstand',
  cadenceOutside: ({ rpm }) => `Beine ${measures.rpm(rpm)} außerhalb ihres Bereichs`,
  doubleTimeShare: ({ share }) => `${percent(share)} im doppelten Tempo`,

  feelMeans: ({ feel }) => FEELS[feel],
  ranges: ({ watts, typical, capacity, calibrate, test }) => {
    const whose = typical ? 'den Watt eines Rads, das niemand kalibriert hat' : 'den Watt des Rads'
    const held = `Die Bereiche gelten für neun von zehn solchen Fahrern: Sie lassen ${percent(watts)} nach beiden Seiten bei ${whose} zu, ${percent(capacity)} bei dem, was Fahrer leisten können, und was die Modelle offenlassen.`
    if (calibrate && test) return `${held} Kalibriere das Rad über seine Watt und trag Testergebnisse der Fahrer ein, um sie zu verengen.`
    if (calibrate) return `${held} Kalibriere das Rad über seine Watt, um sie zu verengen.`
    return test ? `${held} Trag Testergebnisse der Fahrer ein, um sie zu verengen.` : held
  },

  noResistance: 'kein Widerstand',
  sameWatts: 'gleich viele Watt',
  byRounding: ({ watts, more }) => `${number(watts, 0)} W ${more ? 'mehr' : 'weniger'} durch Runden`,
  beyondMeasured: ({ above }) => `${above ? 'über' : 'unter'} dem, wofür die Räder gemessen sind`,
  youRide: ({ steps, stepsPerUnit }) => `du ${setting(steps, stepsPerUnit)}`,
}
