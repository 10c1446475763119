import type { en } from '#words/en/index.ts'
import { and, duration } from '#words/forms.ts'
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

const LEVELS = { beginner: 'Einsteiger', mixed: 'gemischt', advanced: 'Fortgeschrittene' }

export const names: typeof en.names = {
  terrain: ({ terrain }) => TERRAINS[terrain],
  posture: ({ posture }) => POSTURES[posture],
  hands: ({ hands }) => HANDS[hands],
  foot: ({ foot }) => FEET[foot],
  level: ({ level }) => LEVELS[level],
  untitled: 'Ride ohne Titel',
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
