import type { en } from '#words/en/index.ts'
import { clock, duration, effort, number, percent, plural } from '#words/forms.ts'

const CLASSES = {
  beginner: 'eine Einsteigerstunde',
  mixed: 'eine gemischte Stunde',
  advanced: 'eine Stunde für Fortgeschrittene',
}

const BRAKES = { friction: 'Reibungsbremse', magnetic: 'Magnetbremse' }

const INTENSITIES = {
  'very light': 'sehr leicht',
  light: 'leicht',
  moderate: 'moderat',
  vigorous: 'intensiv',
  'near-maximal': 'fast maximal',
}

const ofRiding = (share: number | null) => (share === null ? '' : ` (${percent(share)})`)

export const panelsRide: typeof en.panelsRide = {
  choose: 'Wähl einen Song oder Block aus, um hier seine Details zu sehen.',
  madeFrom: ({ title, minutes }) => `gemacht aus ${title}, ${number(minutes)} Minuten`,
  titleNeeded: 'Ein Ride braucht einen Titel.',
  goal: 'Ziel',
  goalHint: 'worum es in dieser Stunde geht, in einer Zeile',
  classLength: 'Stundenlänge',
  minutes: 'Minuten',
  startsAt: 'beginnt um',
  welcome: 'Begrüßung',
  wipeDown: 'Abwischen',
  atMostAnHour: 'Höchstens eine Stunde.',
  room: 'Raum',
  studio: 'Studio',
  online: 'online',
  location: 'Ort',
  locationExample: 'Studio B, Hafenstraße',
  beatsInMySongs: ({ count }) =>
    count === 1
      ? 'Für 1 Song dieses Rides gibt es in meinen Songs einen Beat, erkannt aus einer Datei.'
      : `Für ${number(count)} Songs dieses Rides gibt es in meinen Songs einen Beat, erkannt aus Dateien.`,
  applyBeats: () => 'übernehmen',
  mySongs: 'meine Songs',
  privateNotes: 'private Notizen',
  privateHint: 'das siehst nur du',
  privateKept: 'Bleibt auf diesem Gerät und kommt nie in einen Link.',

  shape: 'Verlauf',
  difficulty: 'Schwierigkeit',
  difficultyIn: ({ points, place, from, to, level }) =>
    `${points} von 100, ${{ below: 'unter', inside: 'in', above: 'über' }[place]} den ${from} bis ${to}, die für ${CLASSES[level]} typisch sind`,
  bringsTo: ({ points }) => `ergibt ${points}`,
  bringsUnder: ({ points }) => `ergibt etwas unter ${points}`,
  warmUp: 'Warm-up',
  warmUpIs: ({ seconds, share, level }) => `${clock(seconds)}${ofRiding(share)} vor der ersten Belastung von ${effort(level)}`,
  coolDown: 'Cool-down',
  coolDownIs: ({ seconds, share }) => `${clock(seconds)}${ofRiding(share)}`,
  work: 'Arbeit',
  workIs: ({ share, level, ratio }) =>
    `${percent(share)} der Fahrzeit bei ${effort(level)} oder mehr${ratio === null ? '' : `; Arbeit zu locker ${number(ratio)} : 1`}`,
  firstHard: 'erste harte Belastung',
  firstHardIs: ({ at, longest }) => `bei ${clock(at)}; die längste dauert ${duration(longest)}`,
  peak: 'Spitze',
  peakIs: ({ level, at, last }) => `${effort(level)} bei ${clock(at)}${last === null ? '' : `, zuletzt bei ${clock(last)}`}`,
  standing: 'stehend',
  standingIs: ({ seconds }) => `am längsten ${duration(seconds)}`,

  bike: 'Rad',
  scale: 'Skala',
  scaleIs: ({ steps, base, max, brake }) => `${steps}, Grundwiderstand ${base} von ${max}, ${BRAKES[brake]}`,
  wholeUnits: ({ units }) => `ganze ${units}`,
  countFrom: 'zählt ab',
  eachBase: 'Grundwiderstand jedes Einzelnen',
  looseWheel: 'losem Rad',
  changeBike: 'Rad ändern oder kalibrieren',

  ridersEstimated: 'Fahrer, geschätzt',
  riders: 'Fahrer',
  modeled: 'Schätzungen für Modellpersonen',
  highestHeart: 'höchste Herzfrequenz',
  meanHeart: 'mittlere Herzfrequenz',
  leastLeft: 'kleinste Reserve in den Beinen',
  runsOut: 'geht aus',
  runsOutInSome: ({ models, of }) => `geht in ${models} von ${of} Modellen aus`,
  showLowest: ({ rider, block, at }) => `am kleinsten (${rider}) in ${block} bei ${clock(at)}: zeigen`,
  showRunsOut: ({ rider, block, at, models, of }) =>
    `geht${models < of ? ` in ${models} von ${of} Modellen` : ''} aus (${rider}) in ${block} bei ${clock(at)}: zeigen`,
  intensity: ({ name }) => INTENSITIES[name],
  overSecond: 'über der zweiten Schwelle',
  between: 'zwischen den Schwellen',
  underFirst: 'unter der ersten Schwelle',
  energy: 'Energie, kcal',
  rougherFor: 'gröber für',
  load: 'Last',
  unplanned: ({ seconds }) =>
    `${clock(seconds)} dieser Stunde sind noch nicht geplant. Die Kurven enden dort, und diese Werte lassen sie aus.`,
  changeRiders: 'Fahrer ändern',
  heartNote:
    'Die Herzfrequenz ist ein Anteil der Herzfrequenzreserve, darunter stehen Schläge pro Minute; die Intensität ist die Zeit nach diesem Anteil. Last ist geschätzte Belastung mal Minuten.',
  outsideNote: ({ outside, of, rider }) =>
    `${clock(outside)} von ${clock(of)} Minuten (${rider}) liegen außerhalb der 50 bis 200 Watt, für die die Sauerstoffgleichung gilt; Energie, Herzfrequenz und geschätzte Belastung sind dort gröber.`,
  measuredNote: ({ uptake, heart }) =>
    `Pläne fallen niedriger aus als gemessene Stunden, in denen meistens über die Vorgabe hinaus gefahren wird: Ganze Stunden lagen im Mittel bei ${uptake[0]}–${percent(uptake[1] / 100)} der maximalen Sauerstoffaufnahme und ${heart[0]}–${percent(heart[1] / 100)} der maximalen Herzfrequenz.`,

  instructors: 'Trainer',
  instructor: 'Trainer',
  first: 'erster',
  second: 'zweiter',
  nameNeeded: 'Hier fehlt noch der Name.',
  speaks: 'spricht',
  wordsPerMinute: 'Wörter pro Minute',
  teachWithout: ({ name }) => `ohne ${name} unterrichten`,
  addSecond: 'zu zweit unterrichten',
  secondInstructor: 'zweite Person',
  whoLeaves: 'Wer geht, gibt die eigenen Blöcke an den anderen ab.',

  formCues: 'Technikhinweise',
  formCuesHeld: ({ count }) => `${count}, reihum`,
  formCuesField: 'Technikhinweise, einer pro Zeile',
  formCuesHint: 'Einer pro Zeile. Für alle deine Rides, auf diesem Gerät; ein Ride enthält die, die du hinzufügst.',
  formCueTooLong: ({ start, most }) => `„${start}…“ ist zu lang für einen Satz nebenbei: höchstens ${most} Zeichen.`,
  tooManyFormCues: ({ most, count }) => `Höchstens ${most} Technikhinweise; das sind ${number(count)}.`,
  addToHolds: ({ count }) => `Zu ${plural(count, 'längeren Haltephase', 'längeren Haltephasen')} je einen hinzufügen`,
  addedFormCues: ({ count }) => `${plural(count, 'Technikhinweis', 'Technikhinweise')} hinzugefügt`,
}
