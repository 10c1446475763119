import type { en } from '#words/en/index.ts'
import { number, plural } from '#words/forms.ts'

const KINDS: Record<Parameters<typeof en.replacing.kind>[0]['kind'], string> = {
  title: 'Titel des Rides',
  aim: 'Ziel',
  location: 'Ort',
  instructor: 'Instructor',
  standIn: 'für die Vertretung',
  privateNotes: 'private Notizen',
  avoidMove: 'gemiedene Bewegung',
  section: 'Name des Songs',
  mark: 'Stelle im Song',
  sectionNotes: 'Notizen zum Song',
  block: 'Name des Blocks',
  set: 'Name des Sets',
  cue: 'Ansage',
  feel: 'Gefühl',
  easier: 'leichter',
  harder: 'schwerer',
  move: 'Bewegung',
  blockNotes: 'Notizen zum Block',
}

const WHERE = { all: 'überall', cues: 'Ansagen', names: 'Namen', notes: 'Notizen' }

export const replacing: typeof en.replacing = {
  title: 'suchen und ersetzen',
  does: 'Wörter in den Ansagen, Namen und Notizen dieses Rides ersetzen',
  where: 'Nur in diesem Ride. Wie die Musik heißt, bleibt.',
  find: 'suchen',
  by: 'ersetzen durch',
  matchCase: 'Groß- und Kleinschreibung',
  wholeWords: 'ganze Wörter',
  lookIn: 'suchen in',
  part: ({ part }) => WHERE[part],
  kind: ({ kind }) => KINDS[kind],
  hit: ({ kind, where, text }) => [kind, where, text].filter((part) => part !== '').join(', '),
  found: ({ chosen, count }) =>
    count === 0
      ? 'Nichts gefunden.'
      : chosen === count
        ? plural(count, 'Stelle', 'Stellen')
        : `${number(chosen)} von ${plural(count, 'Stelle', 'Stellen')}`,
  all: 'alle wählen',
  none: 'keine wählen',
  replace: ({ count }) => `${plural(count, 'Stelle', 'Stellen')} ersetzen`,
  delete: ({ count }) => `${plural(count, 'Stelle', 'Stellen')} löschen`,
  tooLong: ({ kind, length, most }) => `${kind}: ${number(length)} Zeichen sind hier zu viel, ${number(most)} passen.`,
  needed: ({ kind }) => `${kind}: Ganz ohne Wörter geht es nicht.`,
  show: 'auf der Zeitleiste zeigen',
}
