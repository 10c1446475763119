import type { en } from '#words/en/index.ts'
import { and, clock, duration, number, percent, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

const { eights } = measures

const longer = (seconds: number) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'kürzer' : 'länger'}`
const round = (number: number | null) => (number === null ? '' : ` in Runde ${number}`)

export const fit: typeof en.fit = {
  needsBeat: 'Nur ein Song mit bekanntem Beat lässt sich anpassen.',
  noBlocks: 'Es gibt keine Blöcke zum Anpassen.',
  inSeconds: ({ block }) => `${block} ist in Sekunden gemessen und hat keine Achter zum Anpassen.`,
  allLocked: 'Jeder Block behält seine Länge, nichts kann nachgeben.',
  outOfReach: ({ room, nearest, unit }) => {
    const song = `Der Song lässt Platz für ${eights(room, unit)}`
    return nearest.length === 0
      ? `${song}, und keine Länge dieser Blöcke kommt in die Nähe.`
      : `${song}; am nächsten kommen die Blöcke mit ${nearest.map((counts) => eights(counts, unit)).join(' oder ')}.`
  },
  change: ({ block, from, to, unit }) => `${block} ${eights(to, unit)} statt ${eights(from, unit)}`,
  fittedSection: ({ section }) => `${section} an den Song angepasst`,
  fittedSectionTo: ({ section, counts, unit }) => `${section} angepasst: ${eights(counts, unit)} des Songs`,
  endAfter: ({ counts, unit }) => `Song kürzen: ${eights(counts, unit)}`,

  trimmed: ({ song, from, to, unit, seconds, changes }) =>
    `${song} ${to < from ? 'endet früher' : 'läuft weiter'}: ${eights(to, unit)} statt ${eights(from, unit)}, ${longer(seconds)}${changes.length === 0 ? '' : ` (${changes.join(', ')})`}.`,
  fittedRide: ({ seconds }) => `Ride auf ${duration(seconds)} angepasst`,
  nothingGives: 'Nichts anzupassen: Die Songs haben keinen Beat, nur gesperrte Blöcke oder laufen schon bis zum Ende.',
  noneInside: ({ under, slacks }) =>
    `Kein Phrasenende liegt höchstens ${duration(under)} vor dem Ende der Stunde; am nächsten: ${and(slacks.map((slack) => `${duration(Math.abs(slack))} ${slack < 0 ? 'zu lang' : 'zu kurz'}`))}.`,

  nothingPlanned: 'Es ist noch nichts geplant, woraus eine andere Version werden könnte.',
  variantOff: ({ minutes, slack }) =>
    `Näher kommen diese Songs ${minutes} Minuten nicht: ${duration(Math.abs(slack))} ${slack < 0 ? 'zu lang' : 'zu kurz'}.`,
  noVariant: ({ minutes }) => `Aus diesen Songs wird keine Stunde von ${minutes} Minuten mit Warm-up und Cool-down.`,
  variantProblem: ({ problem }) => `Gegen jede Auswahl dieser Songs spricht etwas. Gegen diese: ${problem}`,
  endTooShort: ({ end, minutes, has, needs }) =>
    `In ${minutes} Minuten bleibt mit diesen Songs ein ${end === 'warmUp' ? 'Warm-up' : 'Cool-down'} von ${duration(has)}; nötig sind ${duration(needs)}.`,
  otherMinutes: ({ minutes, was }) => `${minutes} Minuten statt ${was}.`,
  leftOut: ({ song, seconds }) => `${song} entfällt (${duration(seconds)}).`,
  repeated: ({ song, times }) =>
    `${song} kommt ${times === 2 ? 'zweimal' : `${number(times)}-mal`}; tausche einen gegen einen ähnlich langen Song.`,
  repeatedEnd: ({ end, song, times }) =>
    `${end === 'start' ? 'Der lockere Anfang' : 'Das lockere Ende'} von ${song} kommt ${times === 1 ? 'noch einmal' : `noch ${number(times)}-mal`}; tausche gegen einen ähnlich langen Song.`,
  statesTotal: ({ block, total }) => `${block} nennt den Widerstand selbst, ${total}, weil fehlt, was davor kam.`,
  staysWarmUp: ({ is, was }) => `Warm-up ${percent(is)} der Stunde, vorher ${percent(was)}.`,
  staysCoolDown: ({ is, was }) => `Cool-down ${percent(is)}, vorher ${percent(was)}.`,
  staysFinish: ({ song, same }) => `Finale: ${song}${same ? ', wie vorher' : ''}.`,
  staysShape: ({ is, was, work, workWas }) =>
    `Form: ${is}${was === null ? ', wie vorher' : `, vorher ${was}`}; ${percent(work)} davon ist Arbeit, vorher ${percent(workWas)}.`,

  followsStarts: ({ seconds }) => `Alles danach beginnt ${duration(Math.abs(seconds))} ${seconds > 0 ? 'später' : 'früher'}.`,
  rideEnds: ({ at, slack }) =>
    `Der Ride endet bei ${clock(at)}, ${duration(Math.abs(slack))} ${slack < 0 ? 'über der Stundenlänge' : 'vor dem Ende der Stunde'}.`,

  fallsOff: ({ block, round: number, counts, unit }) => `${block}${round(number)} fällt ganz hinten heraus (${eights(counts, unit)}).`,
  fallsOffPart: ({ block, round: number, counts, unit }) => `Von ${block}${round(number)} fällt das Ende heraus (${eights(counts, unit)}).`,
  leftOpen: ({ counts, unit }) => `Leer bleiben am Ende des Songs ${eights(counts, unit)}.`,
  songLonger: ({ seconds }) => `Der Song wird ${longer(seconds)}.`,
  legsMove: ({ from, to }) => `Trittfrequenz von ${number(from, 0)} auf ${measures.rpm(to)}.`,

  reasons: ({ items }) => items.join(', '),
  sameCadence: 'gleiche Trittfrequenz',
  cadenceApart: ({ rpm }) => `${measures.rpm(Math.abs(rpm), 1)} ${rpm > 0 ? 'schneller' : 'langsamer'}`,
  suitsTerrain: ({ rpm }) => `${measures.rpm(rpm)}, passt zum Gelände`,
  apartFromTerrain: ({ rpm, apart }) =>
    `${measures.rpm(rpm)}, ${number(Math.abs(apart), 1)} zu ${apart > 0 ? 'schnell' : 'langsam'} für das Gelände`,
  sameLength: 'gleich lang',
  lengthApart: ({ eights: apart }) => `${plural(Math.abs(apart), 'Achter', 'Achter')} ${apart > 0 ? 'länger' : 'kürzer'}`,
  drive: ({ apart }) => (apart === 0 ? 'gleiche Energie' : apart > 0 ? 'mehr Energie' : 'weniger Energie'),
  clean: 'clean',
  playedLately: 'kürzlich gespielt',

  slotTitle: 'an die Stundenlänge anpassen',
  slotWhere: ({ total, slot, slack }) =>
    `${clock(total)} geplant, ${clock(slot)} Stundenlänge, ${duration(Math.abs(slack))} ${slack < 0 ? 'zu lang' : 'frei'}`,
  use: 'übernehmen',
  nearest: 'am nächsten',
  slack: ({ seconds }) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'zu lang' : 'zu kurz'}`,
  songsEnd: 'Songs enden an einer anderen Phrase; die Blöcke ändern sich so wenig wie möglich.',
  thenEnds: 'Der Ride endet dann bei',
  thenEndsSlack: ({ seconds }) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'über der Stundenlänge' : 'vor dem Ende der Stunde'}`,
  nothingToDo: ({ seconds }) => `Nichts zu tun: Der Ride endet ${duration(Math.abs(seconds))} vor dem Ende der Stunde.`,
  showSong: 'Song zeigen',
  fromTo: ({ from, to, unit }) => `${from} → ${to} ${unit === 6 ? 'Sechser' : 'Achter'}`,
  longer: ({ seconds }) => longer(seconds),
  blockFromTo: ({ block, from, to }) => `${block} ${from} → ${to}`,

  lengthTitle: 'kürzere oder längere Version',
  lengthWhere: ({ title, minutes }) => `von „${title}“, ${minutes} Minuten`,
  saveAsRide: 'als neuen Ride speichern',
  minutes: 'Minuten',
  working: 'Wird berechnet …',
  whatStays: 'was bleibt',
  whatChanges: 'was sich ändert',
  cannotKeep: 'Dieses Fenster kann nichts speichern. Sichere den Ride als Datei, bevor du einen anderen öffnest.',
  madeFrom: ({ title, parent }) => `„${title}“ aus „${parent}“ gemacht`,
  versionOf: ({ minutes }) => `Version mit ${minutes} Minuten`,

  cancel: 'abbrechen',
  close: 'schließen',
}
