import type { en } from '#words/en/index.ts'
import { clock, duration, effortRange, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

const REST = { openTail: 'offen', briefing: 'Begrüßung', clearUp: 'Abwischen' }

export const drafting: typeof en.drafting = {
  details: 'Details',

  total: 'Dauer des Rides',
  slack: 'Restzeit',
  over: ({ over, slot }) => `${duration(over)} über ${clock(slot)}`,
  under: ({ under, slot }) => `${duration(under)} unter ${clock(slot)}`,
  work: 'Arbeit',
  easy: 'locker',
  workToEasy: 'Arbeit : locker',
  ratio: ({ ratio }) => `${number(ratio, 2)} : 1`,
  load: 'Last',
  loadMeans: 'Belastung mal Minuten, über den Ride addiert: eine Schätzung, um deine eigenen Stunden zu vergleichen.',

  lines: 'Linien der Kurve',
  planned: 'geplante Belastung',
  whoseLines: 'wessen Linien',
  regularRider: 'geübter Fahrer',
  allRiders: 'alle Fahrer',
  drawing: 'Kurve wird gezeichnet…',
  overview: 'Ausschnitt des Rides auf der Bühne',
  overviewAt: ({ from, to }) => `Minute ${number(from, 0)} bis ${number(to, 0)}`,

  song: ({ number: at, name }) => `Song ${number(at)}, ${name}`,
  noSong: 'noch kein Song',
  empty: 'leer',
  songTitle: ({ name, artist }) => `${name}${artist && `, ${artist}`}. Doppelklick zoomt darauf.`,
  timed: ({ length }) => `nach Uhr, ${duration(length)}`,
  noTempo: ({ length }) => `Tempo unbekannt, ${duration(length)}`,
  offBeat: 'neben dem Beat',
  leadFoot: ({ foot }) => `Startfuß ${foot}`,
  counted: ({ counts, unit, length }) => `${measures.eights(counts, unit)}, ${duration(length)}`,
  phrase: ({ number: at }) => `Phrase ${number(at)}`,
  eight: ({ number: at, unit }) => `${unit === 6 ? 'Sechser' : 'Achter'} ${number(at)}`,

  blocks: 'Blöcke in der Reihenfolge des Rides',
  emptyRide: 'Dieser Ride ist leer. Füge einen Song hinzu und tippe oder ziehe dann Blöcke von unten hierher.',
  rest: ({ rest, length }) => `${REST[rest]} ${duration(length)}`,
  fillHere: 'unten einen Block antippen oder hierher ziehen',
  needsPractice: 'noch üben',
  hands: ({ hands }) => `Hände ${hands}`,
  move: ({ move, counts }) => `${move} auf ${number(counts)}`,
  rounds: ({ label, rounds }) => `${label && `${label}, `}${plural(rounds, 'Runde', 'Runden')}`,
  leads: ({ name }) => `${name} leitet an`,
  leadsAndSpeaks: ({ leads, speaks }) => `${leads} leitet an, ${speaks} spricht`,
  spokenBlock: ({ name, posture, at, length, effort, call, total, round, leader, needsPractice }) =>
    [
      name,
      posture,
      `bei ${clock(at)}`,
      length,
      `Belastung ${effortRange(effort).replace('–', ' bis ')}`,
      call,
      `Widerstand ${total}`,
      round && `Runde ${number(round.at)} von ${number(round.of)}`,
      leader,
      needsPractice && 'noch üben',
    ]
      .filter((part) => part)
      .join(', '),
  talk: 'was gesagt wird, jedes so lang, wie es dauert; schraffiert, wo es sich überschneidet',
  landed: ({ place, length }) => `${place}, ${length}`,

  tray: 'Blöcke zum Hinzufügen',
  addedPast: ({ change, over }) => `${change}, ${duration(over)} über das Songende hinaus`,
  runsPast: ({ name, over }) => `„${name}“ geht ${duration(over)} über das Songende hinaus.`,
  noChange: 'Keine Änderung. Es ist schon so, oder es ist kein Platz dafür.',
  done: ({ change, start, total, slack }) =>
    `${change}. ${start === undefined ? '' : `Beginn bei ${clock(start)}. `}Der Ride dauert ${clock(total)}, ${
      slack < 0 ? `${duration(-slack)} zu lang` : `noch ${duration(slack)} frei`
    }.`,
}
