import type { en } from '#words/en/index.ts'
import { chosen, clock, duration, effort, number } from '#words/forms.ts'

const DOT = '\u00a0· '

const FOOT_ON_ONE = { left: 'linker Fuß auf der Eins', right: 'rechter Fuß auf der Eins' }

const FOOT_LEADS = { left: 'links beginnt', right: 'rechts beginnt' }

const NEXT_SONG = { left: 'Nächster Song. Linker Fuß auf der Eins.', right: 'Nächster Song. Rechter Fuß auf der Eins.' }

const HANDS = { centre: 'Hände\u00a0Mitte', wide: 'Hände\u00a0breit', ends: 'Hände\u00a0Hörnchen' }

export const leading: typeof en.leading = {
  place: 'unterrichten',
  keepsAwakeNot: 'Dieser Browser hält den Bildschirm nicht wach. Schalte den Ruhezustand in den Systemeinstellungen aus.',

  follows: 'Diese Stunde läuft in einem anderen Fenster. Dieses hier zeigt sie mit an.',
  teachHere: 'hier unterrichten',
  otherClass: ({ led }) => `Du unterrichtest noch „${led}“.`,
  oneAtATime: ({ opened }) => `Du hast „${opened}“ geöffnet. Es läuft immer nur eine Stunde.`,

  fromBeatOne: ({ minutes }) => `${number(minutes)} Minuten ab der ersten Eins.`,
  dueIn: ({ from, to, seconds }) => `Stunde ${from}–${to} · erste Eins in ${duration(seconds)}`,
  dueNow: ({ from, to }) => `Stunde ${from}–${to} · die erste Eins ist jetzt fällig`,
  late: ({ from, to, seconds }) => `Stunde ${from}–${to} · du startest ${duration(seconds)} zu spät`,
  toSay: ({ seconds }) => `Etwa ${duration(seconds)} zu sprechen.`,
  toSayOf: ({ seconds, welcome }) => `Etwa ${duration(seconds)} zu sprechen; deine Begrüßung dauert ${duration(welcome)}.`,
  toSayOver: ({ seconds, welcome }) => `Etwa ${duration(seconds)} zu sprechen, länger als deine Begrüßung von ${duration(welcome)}.`,
  first: 'Zuerst:',
  atBase: 'auf Grundwiderstand',
  at: ({ total }) => `auf ${total}`,

  ended: 'Stunde beendet.',
  logIt: ({ title }) => `„${title}“ ist geschafft. Trag die Stunde jetzt oder später ins Logbuch ein.`,
  log: 'Stunde eintragen',

  of: ({ seconds }) => `von ${clock(seconds)}`,
  songEight: ({ eight, of }) => `Achter ${number(eight)} von ${number(of)}`,
  nothingToSkip: ({ seconds }) => `${duration(seconds)} zu lang, und kein Song, der entfallen darf, ist lang genug.`,

  holding: ({ seconds }) => `angehalten, ${duration(seconds)}`,
  leads: ({ name }) => `${name} führt`,
  leadsAndSpeaks: ({ leads, speaks }) => `${leads} führt, ${speaks} spricht`,
  round: ({ round, of }) => `Runde ${number(round)} von ${number(of)}`,
  footOnOne: ({ foot }) => FOOT_ON_ONE[foot],
  bodyWithHands: ({ posture, hands }) => `${posture}, ${HANDS[hands]}`,
  effort: ({ from, to }) => (from === to ? `Belastung\u00a0${effort(from)}` : `Belastung\u00a0${effort(from)} bis ${effort(to)}`),
  allOut: 'alles geben',
  water: 'trinken',
  resistance: ({ turns, change }) => `${turns ? 'Umdrehungen' : 'Widerstand'} · ${change}`,
  beAt: ({ range }) => `jetzt auf ${range}`,
  cadence: 'Trittfrequenz',
  cadenceOf: ({ from, to }) => (from === to ? number(from, 0) : `${number(from, 0)} bis ${number(to, 0)}`),
  wheel: 'Schwungrad',
  stopped: 'steht',
  feels: ({ feel }) => `fühlt sich so an: ${feel}`,
  easier: ({ text }) => `leichter: ${text}`,
  harder: ({ text }) => `schwerer: ${text}`,
  eightsLeft: ({ eights, seconds }) => `${chosen(eights, { one: 'letzter Achter', other: 'Achter übrig' })}${DOT}${duration(seconds)}`,
  secondsLeft: 'Sekunden übrig',
  left: 'übrig',
  secondsToOne: 'Sekunden bis zur Eins',
  toOne: 'bis zur Eins',
  countIn: 'Einzählen.',
  spoken: ({ name, length, call }) => `${name}, ${length}, ${call}.`,

  welcome: 'Begrüßung',
  musicNext: 'Gleich kommt die Musik.',
  nextSong: 'Nächster Song.',
  nextSongFoot: ({ foot }) => NEXT_SONG[foot],
  playsOn: 'Der Song läuft weiter',
  nothingPlanned: 'Nichts geplant.',
  stayIn: ({ block }) => `Nichts geplant: Bleib bei ${block} oder geh weiter.`,
  offTheBikes: 'Runter von den Rädern',
  wipeDown: 'Räder stehen, abwischen, trinken.',
  thatIsClass: 'Geschafft!',
  stretch: 'Räder anhalten; beide Seiten dehnen.',
  endOfClass: 'Ende der Stunde.',

  next: 'dann:',
  inCounts: ({ counts }) => `in ${number(counts)}`,
  ofSong: ({ song, block }) => `„${song}“: ${block}`,
  callTo: ({ call, total }) => `${call} (${total})`,
  footLeads: ({ foot }) => FOOT_LEADS[foot],
  quote: ({ words }) => `„${words}“`,
  wipeDownNext: 'Abwischen',
  theEnd: 'Ende',
}
