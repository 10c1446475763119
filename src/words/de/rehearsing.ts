import type { en } from '#words/en/index.ts'
import { clock, duration, number, percent, plural } from '#words/forms.ts'

const BETWEEN = {
  briefing: 'Begrüßung',
  leadIn: 'vor der Eins',
  openTail: 'nichts geplant',
  clearUp: 'Abwischen',
  finished: 'das Ende',
}

const PARTS = { intro: 'Intro', verse: 'Strophe', build: 'Aufbau', chorus: 'Refrain', drop: 'Drop', break: 'Break', end: 'Ende' }

export const rehearsing: typeof en.rehearsing = {
  bar: 'proben',
  caution:
    'Lerne den Ride neben dem Rad und fahr ihn dann. Halte die Musik so leise, dass du darüber sprechen kannst: lauter Schall schadet dem Gehör, auch im Kopfhörer.',
  understood: 'alles klar',

  opening: 'Die Musik wird geöffnet.',
  playing: ({ what }) => `Gespielt wird: ${what}.`,
  ready: ({ what }) => `Bereit zum Abspielen: ${what}.`,
  looped: ({ name }) => `${name} als Schleife`,
  marked: 'die markierten Blöcke',
  ride: 'der Ride',
  waiting: 'Der nächste Song wartet auf dich.',
  endOfMarked: 'Das waren alle markierten Blöcke.',
  endOfRide: 'Ende des Rides.',
  notPlayed: ({ name }) => `${name} lässt sich nicht abspielen: die Datei fehlt oder ist nicht lesbar. Stattdessen klicken die Beats.`,
  aSong: 'Ein Song',
  noSound: 'Dieser Browser gibt gerade keinen Ton aus.',

  clock: ({ at, total }) => `${clock(at)} von ${clock(total)}`,
  secondsLeft: 'Sekunden noch',
  eight: ({ at, of, unit }) => `${unit === 6 ? 'Sechser' : 'Achter'} ${number(at)} von ${number(of)}`,
  between: ({ phase }) => BETWEEN[phase],
  countIn: 'Einzählen.',
  thenEnd: 'dann das Ende',
  thenInCounts: ({ name, call, counts }) => `dann ${name}, ${call}, in ${plural(counts, 'Zählzeit', 'Zählzeiten')}`,
  thenIn: ({ name, call, seconds }) => `dann ${name}, ${call}, in ${duration(seconds)}`,

  markedBlocks: 'Blöcke, die du noch übst',
  unmark: ({ name }) => `${name} sitzt: Markierung entfernen`,
  part: ({ part }) => PARTS[part],

  speed: 'Tempo',
  speedOf: ({ speed }) => percent(speed),
  songs: 'Songs',
  clicks: 'Klicks',
  clickOverSongs: 'auch über den Songs auf jedem Beat klicken',
  tick: 'jede Sekunde ticken, wo kein Beat ist',
  waits: 'bei jedem Song auf mich warten',
  soundNote: ({ full }) =>
    `Ist die Datei eines Songs nicht zur Hand, klicken nur seine Beats. Bei jedem Tempo außer ${percent(full)} klingen Songs auch höher oder tiefer.`,
  noVoice: 'Dieser Browser hat keine Stimme, um Ansagen zu sprechen.',
  speakCues: 'Ansagen sprechen',
  voice: 'Stimme',
  browserVoice: 'die Stimme des Browsers',
}
