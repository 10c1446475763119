import type { en } from '#words/en/index.ts'
import { and, duration, nearestLevel, wallClock, weekday } from '#words/forms.ts'
import { measures } from './measures.ts'

const TERRAINS = {
  flat: 'Flachstück',
  tempo: 'Tempo',
  hill: 'Berg',
  run: 'Laufen',
  jumps: 'Jumps',
  surge: 'Antritt',
  push: 'Push',
  recover: 'Erholung',
  flush: 'Ausrollen',
  stretch: 'Dehnen',
  hold: 'Halten',
}

const POSTURES = { seated: 'sitzend', standing: 'stehend', hovering: 'im Hover', offBike: 'neben dem Rad' }

const HANDS = { centre: 'Mitte', wide: 'breit', ends: 'Hörnchen' }

const FEET = { left: 'links', right: 'rechts' }

const TYPICAL_RIDERS = { new: 'neu dabei', regular: 'regelmäßig dabei', strong: 'stark' }

const TYPICAL_BIKES = { knob: 'Knopf, Vierteldrehungen', levels: 'Stufen 1 bis 24' }

const FEELS = {
  base: 'Grundwiderstand',
  'easy flat': 'leichtes Flachstück',
  'brisk flat': 'zügiges Flachstück',
  'light hill': 'leichter Berg',
  'solid hill': 'kräftiger Berg',
  'heavy hill': 'schwerer Berg',
}

const LEVELS = { beginner: 'Einsteiger', mixed: 'gemischt', advanced: 'Fortgeschrittene' }

const MOVES: Readonly<Record<string, string>> = {
  jump: 'Jump',
  'travel-back': 'nach hinten wandern',
  lean: 'lehnen',
  'side lean': 'zur Seite lehnen',
  press: 'drücken',
  pulse: 'wippen',
  corner: 'Kurve',
  'around the clock': 'rund um die Uhr',
  'shoulder rolls': 'Schulterkreisen',
  stretch: 'Dehnen',
}

const EFFORTS: readonly string[] = [
  'Füße von den Pedalen',
  'kaum getreten',
  'locker gerollt',
  'im Plauderton',
  'stetig, ganze Sätze',
  'mit Druck',
  'harte Arbeit',
  'kurze Sätze',
  'nur noch einzelne Wörter',
  'gerade noch dran',
  'nichts geht mehr',
]

export const names: typeof en.names = {
  terrain: ({ terrain }) => TERRAINS[terrain],
  posture: ({ posture }) => POSTURES[posture],
  hands: ({ hands }) => HANDS[hands],
  foot: ({ foot }) => FEET[foot],
  level: ({ level }) => LEVELS[level],
  move: ({ name }) => MOVES[name] ?? name,
  effort: ({ effort }) => EFFORTS[nearestLevel(effort)]!,
  feel: ({ feel }) => FEELS[feel],
  typicalBike: ({ id }) => TYPICAL_BIKES[id],
  typicalRider: ({ id }) => TYPICAL_RIDERS[id],
  theTypicalRider: ({ id }) => `„${TYPICAL_RIDERS[id]}“`,
  untitled: 'Ride ohne Titel',
  timeSlot: ({ day, time, room }) =>
    `${[weekday(day), ...(time === '' ? [] : [wallClock(time)])].join(' ')}${room === '' ? '' : `, ${room}`}`,
  songPlace: ({ place }) => `Song ${place}`,
  setOf: ({ parts }) => `Satz aus ${and(parts)}`,
  setOfMany: ({ count }) => `Satz aus ${count} Teilen`,
  list: ({ items }) => and(items),
  nothing: 'nichts',
  blocks: ({ count }) => `${count} Blöcke`,
  items: ({ count }) => `${count} Elemente`,
  quoted: ({ name }) => `„${name}“`,
  eights: ({ counts, unit }) => measures.eights(counts, unit),
  seconds: ({ seconds }) => duration(seconds),
}
