import type { en } from '#words/en/index.ts'
import { clock, duration, number, plural } from '#words/forms.ts'

const MOMENTS = {
  preview: 'Vorschau',
  announce: 'Ankündigung',
  countIn: 'Einzählen',
  action: 'Aktion',
  form: 'Technikhinweis',
  story: 'Geschichte',
}

export const panels: typeof en.panels = {
  detailsOfSelection: 'Details der Auswahl',
  details: 'Details',
  detailsOf: 'Details zu',
  ride: 'Ride',
  rideDetails: 'Titel, Stundenlänge, Raum, Fahrer',
  mixed: 'gemischt',

  title: 'Titel',
  name: 'Name',
  notes: 'Notizen',
  notesHint: 'woran du denken willst',
  length: 'Länge',
  level: 'Niveau',
  terrain: 'Terrain',
  posture: 'Haltung',
  hands: 'Hände',
  leadFoot: 'Startfuß',
  leads: 'leitet',
  onMic: 'am Mikro',
  moment: ({ moment }) => MOMENTS[moment],
  groups: ({ six }) => (six ? 'Sechser' : 'Achter'),

  rounds: 'Runden',
  eachAdds: 'jede Runde dazu',
  perRound: ({ units }) => `${units} pro Runde`,
  countdown: 'Herunterzählen',
  countdownNote: 'Angesagt am Anfang jeder Runde. Der Text eines Teils ist in jeder Runde derselbe.',
  whatYouCallIt: 'wie du es nennst',
  parts: 'Teile',
  partSays: ({ length, effort }) => `${length} · Belastung ${effort}`,
  expandNote: 'Schreibt jede Runde als eigene Blöcke aus. Der Ride bleibt gleich.',
  setPlace: ({ from, to, rounds, each }) => `${clock(from)} bis ${clock(to)} · ${plural(rounds, 'Runde', 'Runden')} zu ${duration(each)}`,
  setWork: ({ work, easy, ratio }) => `Arbeit ${clock(work)}, locker ${clock(easy)}${ratio === null ? '' : `, ${number(ratio)} : 1`}`,

  changesAll: ({ seconds }) => `${duration(seconds)} Spielzeit. Änderungen hier gelten für alle.`,
  shiftResistance: 'Widerstand verschieben',
  shiftExample: '+¼ oder −½',
  set: 'Satz',
}
