import type { en } from '#words/en/index.ts'
import { and, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

const VERBS = {
  add: 'hinzuzufügen',
  change: 'zu ändern',
  delete: 'zu löschen',
  duplicate: 'zu duplizieren',
  expand: 'auszuschreiben',
  group: 'zu gruppieren',
  merge: 'zu verbinden',
  move: 'zu verschieben',
  split: 'zu teilen',
}

const BLOCK_FIELDS = {
  label: 'Name',
  terrain: 'Gelände',
  length: 'Länge',
  posture: 'Haltung',
  hands: 'Hände',
  resistance: 'Widerstand',
  ownTotal: 'dein eigener Widerstand',
  cadence: 'Trittfrequenz',
  strikesPerBeat: 'Tritte pro Beat',
  effort: 'Belastung',
  lead: 'Startfuß',
  move: 'Move',
  allOut: 'Alles-geben-Markierung',
  water: 'Trinkpause',
  walk: 'Gang durch den Raum',
  easier: 'leichtere Option',
  harder: 'härtere Option',
  feel: 'Gefühl',
  cues: 'Ansagen',
  leader: 'wer anleitet',
  mic: 'Mikrofon',
  locked: 'Sperre',
  minEights: 'kürzeste Länge',
  maxEights: 'längste Länge',
  notes: 'Notizen',
}

const SET_FIELDS = { label: 'Name', rounds: 'Runden', perRound: 'Zuschlag pro Runde' }

const SONG_FIELDS = {
  title: 'Titel',
  inCount: 'Einstieg',
  outCount: 'Ausstieg',
  leadInSeconds: 'Vorlauf',
  lead: 'Startfuß',
  notes: 'Notizen',
}

const RIDE_FIELDS = {
  title: 'Titel',
  language: 'Sprache der Ansagen',
  aim: 'Ziel',
  level: 'Niveau',
  slotMinutes: 'Stundenlänge',
  startsAt: 'Beginn',
  briefingSeconds: 'Begrüßung',
  clearUpSeconds: 'Abwischen',
  room: 'Raum',
  location: 'Ort',
  leaders: 'wer anleitet',
  houseRules: 'Studioregeln',
  avoidMoves: 'zu vermeidende Moves',
  standIn: 'Notizen für die Vertretung',
  riders: 'Fahrer',
  privateNotes: 'private Notizen',
}

const steps = (stepsPerUnit: number, unit: string): string =>
  stepsPerUnit === 1 ? `ganze Schritte (${unit})` : `1/${stepsPerUnit} ${unit}`

export const commands: typeof en.commands = {
  nothingTo: ({ verb }) => `Nichts ${VERBS[verb]}`,

  added: ({ name, next, where }) =>
    next === undefined ? `${name} am Ende von ${where} eingefügt` : `${name} in ${where} vor ${next} eingefügt`,
  moved: ({ name, next, where }) =>
    next === undefined ? `${name} ans Ende von ${where} verschoben` : `${name} in ${where} vor ${next} verschoben`,
  intoSet: ({ label }) => `Satz ${label}`,
  intoUnnamedSet: ({ name }) => name,
  deleted: ({ name }) => `${name} gelöscht`,
  duplicated: ({ name }) => `${name} dupliziert`,
  lengthened: ({ name, length }) => `${name} verlängert auf ${length}`,
  shortened: ({ name, length }) => `${name} gekürzt auf ${length}`,
  startedEarlier: ({ name, before }) => `${name} früher begonnen, ${before} gekürzt`,
  startedLater: ({ name, before }) => `${name} später begonnen, ${before} verlängert`,
  split: ({ name, length }) => `${name} geteilt nach ${length}`,
  merged: ({ name, next }) => `${name} mit ${next} verbunden`,
  grouped: ({ name, rounds }) => `${name} zu einem Satz mit ${plural(rounds, 'Runde', 'Runden')} gruppiert`,
  expanded: ({ name, count }) => `${name} ausgeschrieben zu ${plural(count, 'Block', 'Blöcken')}`,
  gaveRounds: ({ name, rounds }) => `${name} auf ${plural(rounds, 'Runde', 'Runden')} geändert`,
  raised: ({ name }) => `Widerstand erhöht: ${name}`,
  lowered: ({ name }) => `Widerstand gesenkt: ${name}`,

  renamed: ({ name, to }) => `${name} in ${to} umbenannt`,
  renamedRide: ({ to }) => `Ride in ${to} umbenannt`,
  replacedWords: ({ from, to, count }) =>
    `„${from}“ an ${plural(count, 'Stelle', 'Stellen')} ${to === '' ? 'gelöscht' : `durch „${to}“ ersetzt`}`,
  renamedMove: ({ from, to, count }) => `${from} in ${plural(count, 'Block', 'Blöcken')} in ${to} umbenannt`,
  changed: ({ fields, name }) => `${name} geändert: ${and(fields)}`,
  changedRide: ({ fields }) => `Ride geändert: ${and(fields)}`,
  blockField: ({ field }) => BLOCK_FIELDS[field],
  setField: ({ field }) => SET_FIELDS[field],
  songField: ({ field }) => SONG_FIELDS[field],
  rideField: ({ field }) => RIDE_FIELDS[field],
  changedBike: ({ bike }) => `Rad gewechselt: ${bike}`,
  changedBikeRounded: ({ bike, stepsPerUnit, unit }) => `Rad gewechselt: ${bike}; Widerstand gerundet auf ${steps(stepsPerUnit, unit)}`,
  countedFromBase: 'Widerstand ab Grundwiderstand gezählt',
  countedFromLoose: 'Widerstand ab freiem Rad gezählt',

  addedCue: ({ text }) => `„${text}“ hinzugefügt`,
  addedCues: ({ count }) => `${plural(count, 'Ansage', 'Ansagen')} hinzugefügt`,
  gaveTo: ({ name, leader }) => `${name} an ${leader} gegeben`,
  gaveMicrophoneTo: ({ name, leader }) => `Mikrofon für ${name} an ${leader} gegeben`,
  nobody: 'niemanden',
  needsPractice: ({ name }) => `${name} markiert: noch üben`,
  gotIt: ({ name }) => `${name} markiert: sitzt`,
  hidChecks: ({ count }) => (count === 1 ? 'Einen Prüfpunkt ausgeblendet' : `${number(count)} Prüfpunkte ausgeblendet`),
  unhidCheck: 'Einen Prüfpunkt eingeblendet',

  addedSongs: ({ name, next }) => (next === undefined ? `${name} am Ende des Rides eingefügt` : `${name} vor ${next} eingefügt`),
  aSong: 'einen Song',
  songs: ({ count }) => plural(count, 'Song', 'Songs'),
  movedSong: ({ name, next }) => (next === undefined ? `${name} ans Ende des Rides verschoben` : `${name} vor ${next} verschoben`),
  splitSong: ({ name, next }) => `${name} vor ${next} geteilt`,
  removedSong: ({ title, where }) => `${title} aus ${where} entfernt`,
  gaveSong: ({ title, where }) => `Song ${title} zu ${where} hinzugefügt`,
  changedSong: ({ title, where }) => `Song ${title} in ${where} geändert`,
  replacedSong: ({ old, title, where }) => `${old} in ${where} durch ${title} ersetzt`,

  gaveTempo: ({ title, bpm }) => `${title} auf ${measures.bpm(bpm, 2)} gesetzt`,
  removedTempo: ({ title }) => `Tempo von ${title} entfernt`,
  doubledTempo: ({ title, bpm }) => `${title} auf ${measures.bpm(bpm, 2)} gesetzt, doppeltes Tempo`,
  halvedTempo: ({ title, bpm }) => `${title} auf ${measures.bpm(bpm, 2)} gesetzt, halbes Tempo`,
  movedBeats: ({ title, milliseconds }) =>
    `Beats von ${title} um ${number(Math.abs(milliseconds), 0)} ms ${milliseconds < 0 ? 'nach vorn' : 'nach hinten'} verschoben`,
  setBars: ({ title }) => `Takte von ${title} gesetzt`,
  gaveOdd: ({ title, beats, place, unit }) => `${oddBeats(beats, place, unit)} in ${title} eingetragen`,
  removedOdd: ({ title, beats, place, unit }) => `${oddBeats(beats, place, unit)} aus ${title} entfernt`,
  changedOdd: ({ title }) => `Ungerade Beats von ${title} geändert`,
  linkedSongs: ({ count }) => `Beats aus „Meine Songs“ für ${plural(count, 'Song', 'Songs')} übernommen`,
  markedSong: ({ label, title }) => `${label} in ${title} markiert`,
  addedNoTalk: ({ title }) => `Sprechpause in ${title} hinzugefügt`,
}

const oddBeats = (beats: number, place: string, unit: number): string => {
  const count = Math.abs(beats)
  const which = beats < 0 ? plural(count, 'fehlenden Beat', 'fehlende Beats') : plural(count, 'zusätzlichen Beat', 'zusätzliche Beats')
  return `${which} vor ${unit === 6 ? 'Sechser' : 'Achter'} ${place}`
}
