import { number, plural } from '#words/forms.ts'

/** Many blocks at once: what selects them, what moves them, and the rounds of a set. */

export const many = {
  // Selecting.
  alike: 'select all like this',
  alikeDo: 'select all blocks with this terrain, posture, and move',
  alikeSelected: ({ count, name }: { count: number; name: string }) => `Selected ${plural(count, 'block', 'blocks')} like ${name}`,
  noneAlike: 'No other block is like this one.',

  // A run an eight earlier or later.
  shiftEarlier: 'an eight earlier',
  shiftLater: 'an eight later',
  shiftDo: 'move the selection an eight earlier, later; the blocks beside it make room',
  shiftedEarlier: ({ name, counted }: { name: string; counted: boolean }) => `Moved ${name} ${counted ? 'an eight' : '5 seconds'} earlier`,
  shiftedLater: ({ name, counted }: { name: string; counted: boolean }) => `Moved ${name} ${counted ? 'an eight' : '5 seconds'} later`,
  shiftApart: 'Only blocks next to each other in one song can be shifted.',
  shiftNothingBefore: 'There is no block before it in this song to trade time with.',
  shiftNothingAfter: 'There is no block after it in this song to trade time with.',
  shiftSet: ({ name }: { name: string }) => `“${name}” beside it is a set, and its rounds keep their length.`,
  shiftNoRoom: ({ name }: { name: string }) => `“${name}” is too short to give up an eight.`,

  // Filling a song.
  fill: 'fill the song',
  fillDo: 'fill the song to its end: one block gets longer, a set gets more rounds, several repeat in turn',
  filled: ({ name }: { name: string }) => `Filled the song with ${name}`,
  fillApart: 'Only blocks next to each other in one song can fill it.',
  fillNoSong: 'There is no song here to fill.',
  fillFull: 'The song is full already.',
  fillNoRound: 'There is no room left for another round.',

  // Getting about.
  nextRegion: 'next area',
  regionBefore: 'previous area',
  regionDo: 'stage, details, patterns, checks: next, previous',
  goOut: 'one level out',
  goOutDo: 'one level out: from a block to its song, from a song to nothing',

  // One round of a set.
  appliesTo: 'applies to',
  everyRound: ({ rounds }: { rounds: number }) => (rounds === 2 ? 'both rounds' : `all ${number(rounds)} rounds`),
  onlyRound: ({ round }: { round: number }) => `only round ${number(round)}`,
  onlyRoundNote: 'Choosing one round takes it out of the set, so you can change it alone.',
  thisRound: 'only this round',
  thisRoundDo: 'take this round out of its set to change it alone',
  singledOut: ({ round, name }: { round: number; name: string }) => `Took round ${number(round)} out of ${name}`,

  // The panel of several blocks.
  /** A field in which they differ says so in place of a value. */
  startAndEnd: 'start and end',
  oneLevel: 'one level',
  withSong: 'with the song',
  half: 'half time',
  one: 'on the beat',
  two: 'double time',
}
