/** Every sentence about a line of a pasted playlist. */
export const ABOUT_LINE = {
  noTitle: 'This line has no title.',
  longTitle: 'The title or artist of this line is too long; at most 300 characters are kept.',
  twoLengths: (first: string, second: string) => `This line has two lengths, ${first} and ${second}; leave one.`,
  twoTempi: (first: string, second: string) => `This line has two tempi, ${first} and ${second}; leave one.`,
  seconds: (length: string) => `The length ${length} has more than 59 seconds; write it as minutes and seconds, 3:45.`,
  length: (length: string) => `A song lasts from 1 second to 6 hours; ${length} does not.`,
  unclearLength: (length: string) => `It is not clear how long ${length} is; write minutes and seconds, 3:45.`,
  unreadLength: (length: string) => `“${length}” is not a length; write minutes and seconds, 3:45.`,
  tempo: (tempo: string) => `A tempo lies between 20 and 400 beats a minute; ${tempo} does not.`,
  unreadTempo: (tempo: string) => `“${tempo}” is not a tempo; write beats a minute, 128.`,
  tooMuchTracks: (most: number) => `Only the first ${most} tracks were read.`,
  tooMuch: (most: number) => `Only the first ${most} lines were read.`,
}
