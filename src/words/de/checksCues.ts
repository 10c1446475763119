import type { en } from '#words/en/index.ts'
import { and, capitalized, clock, duration, number, plural } from '#words/forms.ts'

const KINDS = {
  section: 'Song',
  set: 'Satz',
  resistance: 'Widerstand',
  posture: 'Haltung',
  hands: 'Händen',
  move: 'Bewegung',
  pace: 'Trittfrequenz',
  foot: 'Startfuß',
}

const NEEDS = {
  resistanceAndPosture: 'Widerstand und danach Haltung brauchen',
  posture: 'ein Wechsel der Haltung braucht',
  resistance: 'ein Dreh am Knopf braucht',
  other: 'ein Wechsel braucht',
}

const UNSAID = { long: 'wie lange', many: 'wie viele', hard: 'wie hart' }

const SIDES = { left: 'linke', right: 'rechte' }

const counts = (count: number): string => plural(count, 'Zählzeit', 'Zählzeiten')

const ahead = ({ amount, counted }: { amount: number; counted: boolean }): string =>
  counted ? counts(Math.round(amount)) : `${number(amount, 1)} s`

export const checksCues: typeof en.checksCues = {
  theCountIn: 'das Einzählen',

  cueNumbers: ({ cue, wrong }) =>
    `${capitalized(cue)} sagt ${and(wrong.map(({ said, planned }) => `„${said}“, wo „${planned}“ geplant ist`))}.`,
  say: ({ words }) => `„${words}“ sagen`,
  corrected: ({ cue }) => `${capitalized(cue)} berichtigt`,
  takeCountOut: 'Zählung aus dem Text nehmen',
  tookCountOut: ({ cue }) => `Zählung herausgenommen: ${cue}`,
  takeNumberOut: 'Zahl aus dem Text nehmen',
  tookNumberOut: ({ cue }) => `Zahl herausgenommen: ${cue}`,

  cueLate: ({ cue, counts: count, block, needs, needed }) =>
    `${capitalized(cue)} endet ${counts(count)} vor ${block}; ${NEEDS[needs]} ${number(needed)}.`,
  previewLate: ({ cue, block, starts, least }) =>
    `${capitalized(cue)} beginnt ${ahead(starts)} vor ${block}; eine Vorschau beginnt mindestens ${ahead(least)} davor.`,
  announceLate: ({ cue, block, starts, least }) =>
    `${capitalized(cue)} beginnt ${ahead(starts)} vor ${block}; eine Ankündigung beginnt mindestens ${ahead(least)} davor.`,
  announceEarly: ({ cue, block, ends, most }) =>
    `${capitalized(cue)} endet ${ahead(ends)} vor ${block}; eine Ankündigung endet höchstens ${ahead(most)} davor.`,
  shortCountIn: ({ block, counts: count, least }) =>
    `Das Einzählen zu ${block} hat ${counts(count)}; dieses Studio zählt ${number(least)} oder mehr.`,
  countIn: ({ counts: count }) => `${number(count)} einzählen`,
  countedIn: ({ counts: count, block }) => `${number(count)} zu ${block} eingezählt`,
  endBefore: (by) => `Text ${ahead(by)} davor enden lassen`,
  movedToEnd: ({ cue, ...by }) => `${capitalized(cue)} endet jetzt ${ahead(by)} davor`,

  cueRoom: ({ cue, takes, has }) => `${capitalized(cue)} braucht ${number(takes, 1)} s und hat ${number(has, 1)} s.`,
  cueCollisions: ({ cue, seconds, before }) => `${capitalized(cue)} beginnt ${number(seconds, 1)} s, bevor ${before} zu Ende ist.`,
  quietKept: ({ cue, seconds, song }) =>
    `${capitalized(cue)} dauert ${number(seconds, 1)} s in eine sprechfreie Stelle von ${song} hinein.`,
  tooMuchTalk: ({ from, seconds, window, most, cue }) =>
    `Ab ${clock(from)} wird in ${number(window, 0)} s ${number(seconds, 0)} s lang gesprochen, mehr als ${number(most, 0)}; am längsten ist ${cue}.`,
  breathlessWords: ({ cue, words, block, buildUp, most }) =>
    `${capitalized(cue)} hat ${number(words)} Wörter vor ${block}, bei einem Aufbau von ${number(buildUp, 1)}; bis zu ${number(most)} gehen gut.`,

  unannounced: ({ kinds, block }) => `Keine Ansage kündigt den Wechsel von ${and(kinds.map((kind) => KINDS[kind]))} in ${block} an.`,
  announce: ({ words }) => `„${words}“ ankündigen`,
  announced: ({ block }) => `${block} angekündigt`,
  hardBoutWords: ({ block, missing }) => `${block} ist hart, und die Ansagen sagen nicht, ${and(missing.map((one) => UNSAID[one]))}.`,
  saidHowLong: ({ block }) => `Gesagt, wie lange ${block} dauert`,
  moveWithoutForm: ({ move, block }) => `Das erste „${move}“ des Rides, in ${block}, hat keinen Technikhinweis.`,
  addForm: ({ words }) => `„${words}“ hinzufügen`,
  addedForm: ({ block }) => `Technikhinweis zu ${block} hinzugefügt`,
  resistanceFirst: ({ cue, block }) => `${capitalized(cue)} ruft die Fahrer in ${block} hoch, bevor der Widerstand zum Stehen da ist.`,
  putResistanceFirst: ({ cue }) => `Widerstand nach vorn gestellt: ${cue}`,

  openingCard: ({ takes, has }) => `Die Eröffnung dauert ${duration(takes)}, die Begrüßung hat ${duration(has)}.`,
  lengthenBriefing: ({ seconds }) => `Begrüßung auf ${duration(seconds)} stellen`,
  madeRoomForOpening: 'Platz für die Eröffnung gemacht',
  closingWords: ({ cue, block, seconds }) => `${capitalized(cue)} in ${block} endet ${duration(seconds)} nach dem Ende der Stunde.`,
  endsOnPedals: ({ block }) =>
    `Der Ride endet mit drehenden Beinen in ${block}; plane, wie alle das Rad anhalten und dehnen, denn niemand sieht sie absteigen.`,
  stopWheel: 'Dehnen bei stehendem Rad daraus machen',
  stoppedWheel: ({ block }) => `Rad in ${block} angehalten`,
  stretchSides: ({ longer, most, shorter, least }) =>
    `Beim Dehnen am Ende wird die ${SIDES[longer]} Seite ${duration(most)} gehalten, die ${SIDES[shorter]} ${duration(least)}; mach beide gleich lang.`,
  feelWithChange: ({ block }) => `${block} ist eine neue Last nur in Zahlen; auf einem anderen Rad weiß niemand, wonach zu suchen ist.`,
  sayFeel: ({ feel }) => `sagen, dass es sich wie „${feel}“ anfühlt`,
  saidFeel: ({ block }) => `${block} ein Gefühl gegeben`,
  walkOnline: ({ block }) => `In ${block} verlässt du das Rad, und vor der Kamera gibt es keinen Raum für einen Gang.`,
  mirrorOnline: ({ cue, block, words }) =>
    `${capitalized(cue)} in ${block} sagt „${words}“; zu Hause wird mehr gehört als gesehen, also sag, was zu tun ist.`,
  seatedOption: ({ block }) => `${block} ist aus dem Sattel, und bis dahin hat dieser Song nicht angeboten, sitzen zu bleiben.`,
  offerSeat: 'sitzend anbieten',
  offeredSeat: ({ block }) => `${block} sitzend angeboten`,
}
