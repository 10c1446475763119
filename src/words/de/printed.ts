import type { en } from '#words/en/index.ts'
import { and, clock, duration, effort, number, wallClock } from '#words/forms.ts'
import { measures } from './measures.ts'

const STROKES = { half: 'halbes Tempo', on: 'auf dem Beat', double: 'doppeltes Tempo', off: 'neben dem Beat' }

const ON_ONE = { left: 'links auf der Eins', right: 'rechts auf der Eins' }

const FEET = { left: 'linker Fuß', right: 'rechter Fuß' }

const FOOT_ON_ONE = { left: 'linker Fuß auf der Eins', right: 'rechter Fuß auf der Eins' }

const HANDS = { centre: 'Hände Mitte', wide: 'Hände breit', ends: 'Hände Hörnchen' }

const SIDES = { left: 'links', right: 'rechts' }

const SIDES_FIRST = { left: 'links zuerst', right: 'rechts zuerst' }

const ROADS = {
  flat: 'Flachstück',
  tempo: 'zügiges Flachstück',
  hill: 'Berg',
  run: 'Laufen im Stehen',
  jumps: 'auf und ab',
  surge: 'Antritt',
  push: 'Push',
  recover: 'Erholung',
  flush: 'lockeres Ausrollen',
  stretch: 'Dehnen',
  hold: 'Halten',
}

export const printed: typeof en.printed = {
  classFrom: ({ minutes, startsAt }) =>
    startsAt === undefined ? `${number(minutes)} min` : `${number(minutes)} min ab ${wallClock(startsAt)}`,
  long: ({ seconds, left }) => `${clock(seconds)} lang, ${left < 0 ? `${clock(-left)} zu lang` : `${clock(left)} Restzeit`}`,
  onBike: ({ shown, own }) => `Widerstand ungefähr, für ${shown}; Ansagen geschrieben für ${own}`,
  forReader: ({ name }) => `für ${name}`,
  version: ({ date, version }) => `${date}, Fassung ${version}`,
  safety:
    'Aufhören bei Schwindel, Brustschmerz oder ungewöhnlicher Atemnot. Wasser, Luft. Räder einstellen, Bremse zeigen. Keine schnellen Beine ohne Widerstand. Radanleitung und Studioregeln gehen vor.',
  continued: '(weiter)',
  easier: 'Leichter:',

  welcomeName: 'Begrüßung und Rad einstellen',
  welcome: ({ length }) => `Begrüßung und Rad einstellen, ${length}`,
  wipeDownName: 'Abwischen',
  wipeDown: ({ length }) => `Abwischen, ${length}`,

  rideHead: 'Ride',
  leftHead: 'Rest',
  leftMeans: 'im Song',
  elapsedHead: 'Song',
  elapsedMeans: 'vergangene Zeit seit der Eins',
  eightsHead: '8er',
  eightsMean: 'Achter',
  timeHead: 'Zeit',
  timeMeans: 'Länge',
  totalHead: ({ turns }) => (turns ? 'Umdr.' : 'Widerst.'),
  totalMeans: ({ unit, fromBase }) =>
    `${measures.unitOf(unit, true)} ${fromBase ? 'über Grundwiderstand' : 'ab locker'}, dann die Änderung`,
  effortMeans: 'Belastung 0–10',
  onOne: ({ foot }) => ON_ONE[foot],
  water: 'trinken',
  foot: ({ foot }) => FEET[foot],
  footLetter: ({ foot }) => (foot === 'left' ? 'L' : 'R'),
  hands: ({ hands }) => HANDS[hands],

  from: ({ from, seconds }) => `${clock(from)}, ${clock(seconds)} lang`,
  strokes: ({ cadence, strokes }) => `${cadence} ${STROKES[strokes]}`,
  sixes: 'in Sechsern gezählt',
  inAndOut: ({ enters, leaves }) => `rein ${enters}, raus ${leaves}`,

  cadence: ({ from, to }) => (from === to ? measures.rpm(from) : `${number(from, 0)} bis ${measures.rpm(to)}`),
  wheelStopped: 'Rad steht',
  round: ({ round, of }) => `Runde ${number(round)} von ${number(of)}`,
  move: ({ name, counts }) => `${name} auf ${number(counts)}`,
  side: ({ side, first }) => (first ? SIDES_FIRST[side] : SIDES[side]),
  allOut: 'alles geben',
  walk: 'neben dem Rad, durch den Raum',
  beAt: ({ range }) => `jetzt auf ${range}`,
  countIn: ({ counts }) => `${number(counts)} einzählen.`,

  leadsAndSpeaks: ({ name }) => (name === undefined ? 'du führst und sprichst' : `${name} führt und spricht`),
  leads: ({ name }) => (name === undefined ? 'du führst' : `${name} führt`),
  overTo: ({ name }) => `weiter an ${name ?? 'dich'}`,
  micTo: ({ name }) => `Mikrofon an ${name ?? 'dich'}`,
  keepsMic: ({ name }) => (name === undefined ? 'du behältst das Mikrofon' : `${name} behält das Mikrofon`),

  effortHead: 'Belastung',
  callHead: 'Ansage',
  whatHead: 'was',
  footOnOne: ({ foot }) => FOOT_ON_ONE[foot],
  feelIs: ({ feel }) => `Gefühl: ${feel}`,
  easierIs: ({ text }) => `Leichter: ${text}`,

  beforeClass: 'Vor der Stunde',
  openingCard: ({ seconds }) => `Begrüßung, ${duration(seconds)} zu sprechen`,
  timeChecks: 'auf die Uhr schauen',
  songCheck: ({ place, song, at }) => `Song ${number(place)}, ${song}${at === undefined ? '' : ` (${clock(at)})`}`,
  rulesFirst: 'Die Anleitung des Rads, die Studioregeln und die örtlichen Vorschriften gehen vor.',

  noMusic: 'ohne Musik: nach Uhr und Belastung unterrichten',
  plainFooter: 'Belastung 0–10. Sag vorher, wie lang, wie oft und wie hart; zähl ein und aus.',
  level: ({ from, to }) => (from === to ? effort(from) : `${effort(from)} bis ${effort(to)}`),
  once: ({ length }) => `einmal ${length}`,
  times: ({ times, length }) => `${number(times)}-mal ${length}`,
  hardAndEasy: ({ often, hard, hardWords, easy, easyWords }) =>
    `${and(often)} auf ${effort(hard)}, ${hardWords}; sonst auf ${effort(easy)}, ${easyWords}`,

  forSub: ({ aim }) => (aim === undefined ? 'für eine Vertretung' : `für eine Vertretung: ${aim}`),
  subFooter: ({ unit, fromBase }) =>
    `Belastung 0–10 danach, wie die Gruppe atmet und spricht; ${measures.unitOf(unit, true)} ${fromBase ? 'über Grundwiderstand' : 'ab locker'} in Klammern. Jede Musik in der Nähe dieser Trittfrequenzen passt. Biete immer eine Variante im Sitzen an.`,
  subFrom: ({ time }) => `ab ${time}`,
  subLong: ({ time }) => `${time} lang`,
  aboutRpm: ({ rpm }) => `etwa ${measures.rpm(rpm)}`,
  road: ({ terrain }) => ROADS[terrain],
  feelFromTo: ({ from, to }) => `${from} bis ${to}`,
  inTurn: ({ times }) => `${number(times)}-mal:`,
  walkAmong: 'vom Rad steigen und durch den Raum gehen',
  easierOption: ({ text }) => `leichter: ${text}`,
  harderOption: ({ text }) => `schwerer: ${text}`,

  scale: ({ bike, unit, steps, fromBase }) => {
    const units = measures.unitOf(unit, true)
    const step = steps === 1 ? `ganze ${units}` : `${units} in ${number(steps)} Schritten`
    return `${bike}: Widerstand in ${step} ${fromBase ? 'über dem eigenen Grundwiderstand' : 'ab dem lockeren Rad'}`
  },
  meet: 'Neue begrüßen, Bremse zeigen, Grundwiderstand finden',
  nothingHard: ({ time }) => `in den ersten ${time} nichts Hartes`,
  resistanceFirst: 'Widerstand drauf, bevor jemand aufsteht; vor jeder Belastung sagen, wie lang, wie oft, wie hart',
  endEasy: ({ time }) => `die letzten ${time} locker`,
  offBy: ({ time }) => `um ${wallClock(time)} runter von den Rädern`,
  offInside: ({ minutes }) => `nach höchstens ${number(minutes)} min runter von den Rädern`,
  avoid: ({ moves }) => `in diesem Raum nicht: ${and(moves)}`,
  never: 'keine schnellen Beine ohne Widerstand, keine Füße von drehenden Pedalen',
}
