import type { en } from '#words/en/index.ts'
import { number, plural } from '#words/forms.ts'

const GROUPS = {
  actions: 'Aktionen',
  here: 'in diesem Ride',
  checks: 'Prüfung',
  rides: 'Rides',
  elsewhere: 'in anderen Rides',
  everywhere: 'in meinen Rides',
  songs: 'meine Songs',
  rules: 'Studioregeln',
  handbook: 'Hilfe',
}

const KINDS = { song: 'Song', set: 'Satz', block: 'Block', move: 'Bewegung', cue: 'Ansage', note: 'Notiz' }

export const search: typeof en.search = {
  find: 'suchen',
  findDo: 'alles finden: Aktionen, Rides, Songs, Blöcke, Ansagen, Bewegungen, Prüfung, Studioregeln, Hilfe',
  findTell: 'alles finden',
  notInClass: 'Während des Unterrichts ist die Suche aus.',
  title: 'alles finden',
  field: 'Aktionen, Rides, Songs, Ansagen suchen…',
  results: 'Treffer',
  notFetched: 'Die Suche konnte nicht geladen werden. Drück noch einmal, wenn du wieder online bist.',

  group: ({ group }) => GROUPS[group],
  recent: 'letzte Rides',
  useful: 'was du hier tun kannst',
  some: ({ shown, total }) => `${number(shown)} von ${number(total)}`,
  counted: ({ count }) => `${number(count)} Treffer`,
  countedSome: ({ shown, count }) => `${number(count)} Treffer, ${number(shown)} zu sehen`,
  nothing: ({ query }) => `Nichts gefunden für „${query}“.`,
  looking: ({ left }) => `Noch ${plural(left, 'Ride', 'Rides')} durchzusehen…`,

  kind: ({ kind }) => KINDS[kind],
  times: ({ count }) => `${number(count)}×`,
  taughtOn: ({ day }) => `unterrichtet am ${day}`,
  changedOn: ({ day }) => `geändert am ${day}`,
  rideTitle: 'Titel eines Rides',
  openRideFirst: 'Öffne zuerst einen Ride.',
}
