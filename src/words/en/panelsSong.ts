import { bytes, clock, number, percent, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** Details of a song: a section of the ride, its song, and the song's beat. */

const GROUPS = { eight: 'eight', six: 'six' }

const PARTS = { intro: 'intro', verse: 'verse', build: 'build', chorus: 'chorus', drop: 'drop', break: 'break', end: 'end' }

const beats = (count: number) => plural(count, 'beat', 'beats')

const barsOf = (count: number) => `${count} beats per bar`

export const panelsSong = {
  // The head.
  where: ({ place, from, to }: { place: number; from: number; to: number }) => `song ${place} · ${clock(from)} to ${clock(to)}`,
  resistanceInOut: ({ enters, leaves }: { enters: string; leaves: string }) => `resistance in ${enters}, out ${leaves}`,
  notCovered: ({ amount }: { amount: string }) => `${amount} of the song not covered`,
  pastEnd: ({ amount }: { amount: string }) => `${amount} past the end`,
  aligned: ({ share, group }: { share: number; group: keyof typeof GROUPS }) =>
    `${percent(share)} of the changes on the ${GROUPS[group]} or better`,
  talking: ({ share }: { share: number }) => `talking ${percent(share)} of the song`,
  talkingLongest: ({ share, seconds, words }: { share: number; seconds: number; words: string }) =>
    `talking ${percent(share)} of the song; longest ${number(seconds, 1)} s: “${words}”`,

  // Fitting the blocks.
  fitBlocks: 'fit blocks to the song',
  snapBlocks: ({ six }: { six: boolean }) => `Snap blocks to ${six ? 'sixes' : 'eights'}`,
  leftOpen: ({ counts, eight }: { counts: number; eight: number }) =>
    `${measures.eights(counts, eight)} stay open: blocks that keep their length leave no whole ones.`,
  fitThem: 'Fit the blocks',

  // The song.
  song: 'song',
  titleNeeded: 'A song needs a title. To ride without one, remove the song below.',
  artist: 'artist',
  tempo: 'tempo',
  tempoUnknown: 'not known: blocks in seconds',
  bpm: 'bpm',
  strokes: 'pedal strokes per beat',
  halfTime: '½, half time',
  onBeat: '1, on the beat',
  doubleTime: '2, double time',
  offBeat: 'off the beat',
  cadenceSet: 'cadence is set',
  firstBeat: 'first beat',
  intoSong: 's into the song',
  bars: 'bars',
  beatsPerBar: ({ count }: { count: number }) => barsOf(count),
  oddBeats: 'odd beats',
  oddHint: 'One per line: the eight they come before, and how many are extra (33 +2) or missing (65 −1).',
  zonesMarkersLyrics: 'no-talk zones, markers, lyrics',
  noTalk: 'no-talk zones',
  noTalkHint: 'Eights of the song to keep free of talk.',
  markers: 'markers',
  markersExample: '1 intro\n33 chorus',
  markersHint: 'One per line: the eight it starts at, and its name.',
  lyrics: 'lyrics',
  clean: 'clean',
  heldZones: ({ count }: { count: number }) => plural(count, 'no-talk zone', 'no-talk zones'),
  heldMarkers: ({ count }: { count: number }) => plural(count, 'marker', 'markers'),

  // The beat put right.
  fixBeat: 'fix the beat',
  /** Moves the beat by so many milliseconds, later where over 0. */
  byMilliseconds: ({ amount }: { amount: string }) => `${amount} ms`,
  byBeat: ({ amount }: { amount: string }) => `${amount} beat`,
  half: ({ bpm }: { bpm: number }) => `half: ${measures.bpm(bpm, 2)}`,
  double: ({ bpm }: { bpm: number }) => `double: ${measures.bpm(bpm, 2)}`,
  extraOrMissing: 'extra or missing beats',
  extraExample: 'before eight 33',
  extraHint: 'The eight they come before. Legs keep going through them, and everything after lines up with the music.',
  extra: ({ beats: count }: { beats: number }) => `${count} extra`,
  missing: ({ beats: count }: { beats: number }) => `${count} missing`,

  // The stretch that is ridden.
  playFrom: 'play from',
  startsOn: ({ six }: { six: boolean }) => `the ${six ? 'six' : 'eight'} it starts on`,
  firstGroup: ({ six }: { six: boolean }) => `${six ? 'six' : 'eight'} 1, the first beat`,
  playTo: 'play to',
  ofInSong: ({ count }: { count: number }) => `of ${count} in the song`,
  lastWhole: ({ six, end }: { six: boolean; end: string }) => `${six ? 'six' : 'eight'} ${end}, the last whole one`,
  startBeforeEnd: ({ six, end }: { six: boolean; end: string }) =>
    `This song is played to ${six ? 'six' : 'eight'} ${end}. Start before that.`,
  endAfterStart: ({ six, start }: { six: boolean; start: string }) =>
    `This song is played from ${six ? 'six' : 'eight'} ${start}. End after that.`,
  songEndsAfter: ({ six, end }: { six: boolean; end: string }) => `The song ends after ${six ? 'six' : 'eight'} ${end}.`,
  leadIn: 'lead-in',
  beforeCount: 's before count 1',
  crossfade: 's, a crossfade',
  notSet: 'not set',
  nameHint: 'what you call this stretch',

  // Another song, or none.
  addSong: 'add a song',
  addTheSong: 'add the song',
  becomeEights: 'With a tempo, the blocks snap to whole eights of about the same length.',
  keepCounts: 'Blocks keep their counts, and the clock follows the new tempo. Without a tempo they become seconds.',
  blocksKept: ({ count, counts, eight }: { count: number; counts: number; eight: number }) =>
    count === 1
      ? `The block keeps its counts, ${measures.eights(counts, eight)}.`
      : `All ${plural(count, 'block', 'blocks')} keep their counts, ${measures.eights(counts, eight)} in all.`,
  titleToSee: 'Write a title to see what falls off the end.',
  replaceSong: 'replace the song',
  removeSong: 'remove the song',
  removeBeat: 'The blocks stay, in whole seconds, and keep the cadence the beat gave them. Undo brings the song back.',
  removeOnly: 'The blocks stay as they are. Undo brings the song back.',
  removeNamed: ({ title }: { title: string }) => `remove “${title}”`,
  newTitle: 'new title',
  newArtist: 'new artist',
  newTempo: 'new tempo',
  newLength: 'new length',
  titleHint: 'a song needs a title',
  tempoHint: 'bpm, if you know it',
  bestFirst: 'from my songs, best match first',
  byArtist: ({ title, artist }: { title: string; artist: string }) => `${title}, ${artist}`,
  noTempo: 'no tempo known',
  addToMySongs: 'add to my songs',
  updateMySongs: 'update it in my songs',

  // The beat of a file.
  beatFromFile: 'beat from a file',
  detectBeat: 'detect the beat from a file',
  dropFiles: 'Or drop music files here. They are read on this device and sent nowhere.',
  reading: ({ file }: { file: string }) => `reading ${file}`,
  stop: 'stop',
  applyThis: 'use this',
  detectAgain: 'detect again',
  file: 'file',
  keepFile: ({ size }: { size: number }) => `keep it on this device (${bytes(size)})`,

  // The beat heard.
  hearBeat: 'hear the beat',
  click: 'click',
  dropToHear:
    'Drop the song’s file below to hear it; until then its beats click alone. Or play it elsewhere, and press when you hear beat 1:',
  beatOneNow: 'beat 1 is now',
  placeInSong: 'place in the song',
  beforeFirstBeat: 'before the first beat',
  placeSays: ({ six, place, count }: { six: boolean; place: string; count: number }) => `${six ? 'six' : 'eight'} ${place}, count ${count}`,
  markHere: 'mark here',
  part: ({ part }: { part: keyof typeof PARTS }) => PARTS[part],
  markersSnap: 'markers snap to',
  theEight: 'the eight',
  theCount: 'the count',
  noTalkFrom: 'no talking from here',
  noTalkTo: 'no talking to here',
  otherNames: 'Other names go under markers, with the ones already there.',
  thisIsOne: 'that’s a beat 1',
  startAgain: 'start again',
  applyBars: ({ count, odd }: { count: number; odd: boolean }) => `use ${barsOf(count)}${odd ? ' and the odd beats' : ''}`,
  onesNone: ({ sure }: { sure: number }) => `Tap the first beat of each bar; ${sure} make it sure.`,
  onesFew: ({ tapped, sure }: { tapped: number; sure: number }) => `${tapped} of ${sure} taps.`,
  onesUnsure: ({ tapped, sure }: { tapped: number; sure: number }) => `${tapped} of ${sure} taps, which don’t agree on a bar yet.`,
  onesSettled: ({ agree, of }: { agree: number; of: number }) => `${agree} of ${of} taps agree: the bars are right as they are.`,
  onesSay: ({ agree, of, count, shift, odd }: OnesValues) =>
    `${agree} of ${of} taps agree: ${[
      barsOf(count),
      ...(shift === 0 ? [] : [`beat 1 ${beats(Math.abs(shift))} ${shift > 0 ? 'later' : 'earlier'}`]),
      ...odd,
    ].join(', ')}.`,

  // The tempo tapped.
  tapTempo: 'tap the tempo',
  tapTempoOf: ({ title }: { title: string }) => `tap the tempo of ${title}`,
  cancel: 'cancel',
  applyTempo: 'use the tempo',
  applyBpm: ({ bpm }: { bpm: number }) => `use ${measures.bpm(bpm, 2)}`,
  tapAlong: 'Play the song in any player and tap along: any letter or the space bar, or the field below.',
  tap: 'tap',
  plusMinus: ({ bpm }: { bpm: number }) => `bpm, ± ${number(bpm, 2)}`,
  onEveryBeat: 'on every beat',
  tapsSoFar: ({ count, least }: { count: number; least: number }) => `${count} of at least ${least} taps`,
  tapsNoBeat: ({ count }: { count: number }) => `${count} taps, no beat yet`,
  songStarts: 'the song starts',
  beatOne: 'beat 1',
  halve: 'half',
  doubled: 'double',
  notSteady: ({ from, to }: { from: number; to: number }) =>
    `Those taps aren’t a steady beat between ${from} and ${to} bpm. Keep tapping evenly, or start again.`,
  tapHalfTime: 'half time',
  tapOnBeat: 'on the beat',
  tapDoubleTime: 'double time',
  tooSlow: 'too slow',
  tooFast: 'too fast',
  canBeRidden: 'can be ridden',
  tapsUsed: ({ used, leftOut, missed, jitter }: { used: number; leftOut: number; missed: number; jitter: number }) =>
    [
      `${used} taps`,
      ...(leftOut > 0 ? [`${leftOut} left out`] : []),
      ...(missed > 0 ? [`${beats(missed)} not tapped`] : []),
      `scatter ${number(jitter * 1000, 0)} ms`,
    ].join(' · '),
  firstBarAt: ({ seconds }: { seconds: number }) => `The first bar begins ${number(seconds, 2)} s into the song.`,
  toPlaceFirst: 'To place the first beat too, start the song here with 0, then tap the first beats of some bars with 1.',
  tapFirstBeats: 'Tap the first beat of some bars with 1.',
  fewMore: 'A few more beats.',

  // Of the key map.
  keyBeat: 'a beat',
  keyStart: 'the song starts here',
  keyOne: 'the first beat of a bar',
  keyAgain: 'start over',
}

interface OnesValues {
  agree: number
  of: number
  count: number
  shift: number
  odd: readonly string[]
}
