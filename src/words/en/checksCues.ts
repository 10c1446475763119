import { and, capitalized, clock, duration, number, plural } from '#words/forms.ts'

/** What changes from one block to the next. */
const KINDS = {
  section: 'song',
  set: 'set',
  resistance: 'resistance',
  posture: 'posture',
  hands: 'hands',
  move: 'move',
  pace: 'pace',
  foot: 'lead foot',
}

const NEEDS = {
  resistanceAndPosture: 'resistance and then posture',
  posture: 'a change of posture',
  resistance: 'a turn of the knob',
  other: 'a change',
}

/** What riders ask of a hard effort. */
const UNSAID = { long: 'how long', many: 'how many', hard: 'how hard' }

const SIDES = { left: 'left', right: 'right' }

/** An amount of time ahead of a change: counts under a song, else seconds. */
interface Ahead {
  amount: number
  counted: boolean
}

const ahead = ({ amount, counted }: Ahead): string => (counted ? plural(Math.round(amount), 'count', 'counts') : `${number(amount, 1)} s`)

/** Checks of what is said, in the room and to a camera, and their repairs. */
export const checksCues = {
  /** A cue without words of its own, as it stands in a sentence. */
  theCountIn: 'the count-in',

  // Numbers
  cueNumbers: ({ cue, wrong }: { cue: string; wrong: readonly { said: string; planned: string }[] }) =>
    `${capitalized(cue)} says ${and(wrong.map(({ said, planned }) => `“${said}” where the plan is “${planned}”`))}.`,
  say: ({ words }: { words: string }) => `Say “${words}”`,
  corrected: ({ cue }: { cue: string }) => `Corrected ${cue}`,
  takeCountOut: 'Take the count out of the words',
  tookCountOut: ({ cue }: { cue: string }) => `Took the count out of ${cue}`,
  takeNumberOut: 'Take the number out of the words',
  tookNumberOut: ({ cue }: { cue: string }) => `Took the number out of ${cue}`,

  // When
  cueLate: ({
    cue,
    counts,
    block,
    needs,
    needed,
  }: {
    cue: string
    counts: number
    block: string
    needs: keyof typeof NEEDS
    needed: number
  }) => `${capitalized(cue)} ends ${plural(counts, 'count', 'counts')} before ${block}; ${NEEDS[needs]} needs ${number(needed)}.`,
  previewLate: ({ cue, block, starts, least }: { cue: string; block: string; starts: Ahead; least: Ahead }) =>
    `${capitalized(cue)} starts ${ahead(starts)} before ${block}; previews start at least ${ahead(least)} before.`,
  announceLate: ({ cue, block, starts, least }: { cue: string; block: string; starts: Ahead; least: Ahead }) =>
    `${capitalized(cue)} starts ${ahead(starts)} before ${block}; announcements start at least ${ahead(least)} before.`,
  announceEarly: ({ cue, block, ends, most }: { cue: string; block: string; ends: Ahead; most: Ahead }) =>
    `${capitalized(cue)} ends ${ahead(ends)} before ${block}; announcements end at most ${ahead(most)} before.`,
  shortCountIn: ({ block, counts, least }: { block: string; counts: number; least: number }) =>
    `The count-in to ${block} is ${plural(counts, 'count', 'counts')}; this studio counts ${number(least)} or more.`,
  countIn: ({ counts }: { counts: number }) => `Count in ${number(counts)}`,
  countedIn: ({ counts, block }: { counts: number; block: string }) => `Counted ${number(counts)} into ${block}`,
  endBefore: (by: Ahead) => `End the words ${ahead(by)} before`,
  movedToEnd: ({ cue, ...by }: Ahead & { cue: string }) => `Moved ${cue} to end ${ahead(by)} before`,

  // Room for words
  cueRoom: ({ cue, takes, has }: { cue: string; takes: number; has: number }) =>
    `${capitalized(cue)} takes ${number(takes, 1)} s to say and has ${number(has, 1)} s.`,
  cueCollisions: ({ cue, seconds, before }: { cue: string; seconds: number; before: string }) =>
    `${capitalized(cue)} starts ${number(seconds, 1)} s before ${before} is over.`,
  quietKept: ({ cue, seconds, song }: { cue: string; seconds: number; song: string }) =>
    `${capitalized(cue)} talks for ${number(seconds, 1)} s over a no-talk zone in ${song}.`,
  tooMuchTalk: ({ from, seconds, window, most, cue }: { from: number; seconds: number; window: number; most: number; cue: string }) =>
    `From ${clock(from)} there are ${number(seconds, 0)} s of talking in ${number(window, 0)} s, more than ${number(most, 0)}; the longest cue is ${cue}.`,
  breathlessWords: ({ cue, words, block, buildUp, most }: { cue: string; words: number; block: string; buildUp: number; most: number }) =>
    `${capitalized(cue)} is ${number(words)} words before ${block}, at a build-up of ${number(buildUp, 1)}; up to ${number(most)} come out well.`,

  // What is left unsaid
  unannounced: ({ kinds, block }: { kinds: readonly (keyof typeof KINDS)[]; block: string }) =>
    `No cue announces the change of ${and(kinds.map((kind) => KINDS[kind]))} into ${block}.`,
  announce: ({ words }: { words: string }) => `Announce “${words}”`,
  announced: ({ block }: { block: string }) => `Announced ${block}`,
  hardBoutWords: ({ block, missing }: { block: string; missing: readonly (keyof typeof UNSAID)[] }) =>
    `${block} is hard and the cues don’t say ${and(missing.map((one) => UNSAID[one]))}.`,
  saidHowLong: ({ block }: { block: string }) => `Said how long ${block} is`,
  moveWithoutForm: ({ move, block }: { move: string; block: string }) => `The first “${move}” of the ride, in ${block}, has no form cue.`,
  addForm: ({ words }: { words: string }) => `Add “${words}”`,
  addedForm: ({ block }: { block: string }) => `Added a form cue to ${block}`,
  resistanceFirst: ({ cue, block }: { cue: string; block: string }) =>
    `${capitalized(cue)} calls riders up into ${block} before the resistance they stand on.`,
  putResistanceFirst: ({ cue }: { cue: string }) => `Put the resistance first in ${cue}`,

  // To a camera
  openingCard: ({ takes, has }: { takes: number; has: number }) =>
    `The opening takes ${duration(takes)} to say and the welcome has ${duration(has)}.`,
  lengthenBriefing: ({ seconds }: { seconds: number }) => `Make the welcome ${duration(seconds)}`,
  madeRoomForOpening: 'Made room for the opening',
  closingWords: ({ cue, block, seconds }: { cue: string; block: string; seconds: number }) =>
    `${capitalized(cue)} in ${block} ends ${duration(seconds)} after class time is over.`,
  endsOnPedals: ({ block }: { block: string }) =>
    `The ride ends with legs turning in ${block}; plan how riders stop the wheel and stretch, since nobody can see them step down.`,
  stopWheel: 'Make it a stopped-wheel stretch',
  stoppedWheel: ({ block }: { block: string }) => `Stopped the wheel in ${block}`,
  stretchSides: ({
    longer,
    most,
    shorter,
    least,
  }: {
    longer: keyof typeof SIDES
    most: number
    shorter: keyof typeof SIDES
    least: number
  }) =>
    `The closing stretches hold the ${SIDES[longer]} side for ${duration(most)} and the ${SIDES[shorter]} for ${duration(least)}; make them equal.`,
  feelWithChange: ({ block }: { block: string }) =>
    `${block} is a new load told in numbers alone; on another bike riders can’t know what to look for.`,
  sayFeel: ({ feel }: { feel: string }) => `Say it feels like “${feel}”`,
  saidFeel: ({ block }: { block: string }) => `Gave ${block} a feel`,
  walkOnline: ({ block }: { block: string }) => `In ${block} you leave the bike, and on camera there is no room to walk.`,
  mirrorOnline: ({ cue, block, words }: { cue: string; block: string; words: string }) =>
    `${capitalized(cue)} in ${block} says “${words}”; riders at home listen more than they see, so say what to do.`,
  seatedOption: ({ block }: { block: string }) =>
    `${block} is out of the saddle, and so far this song hasn’t offered a way to stay seated.`,
  offerSeat: 'Offer it seated',
  offeredSeat: ({ block }: { block: string }) => `Offered ${block} seated`,
}
