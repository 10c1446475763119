import { grouped } from '#words/forms.ts'

/** What is wrong with a line of a pasted list of songs, or an entry of a playlist file. */
export const lists = {
  noTitle: 'This line has no title.',
  longTitle: 'The title or artist on this line is too long. At most 300 characters are kept.',
  twoLengths: ({ first, second }: { first: string; second: string }) => `This line has two lengths, ${first} and ${second}. Leave one.`,
  twoTempos: ({ first, second }: { first: string; second: string }) => `This line has two tempos, ${first} and ${second}. Leave one.`,
  tooManySeconds: ({ length }: { length: string }) =>
    `The length ${length} has more than 59 seconds. Write minutes and seconds, such as 3:45.`,
  /** Shorter or longer than any song. */
  lengthOutside: ({ length }: { length: string }) => `A song lasts from 1 second to 6 hours, and ${length} doesn’t.`,
  unclearLength: ({ length }: { length: string }) => `It isn’t clear how long ${length} is. Write minutes and seconds, such as 3:45.`,
  unreadLength: ({ length }: { length: string }) => `“${length}” isn’t a length. Write minutes and seconds, such as 3:45.`,
  tempoOutside: ({ tempo }: { tempo: string }) => `A tempo is between 20 and 400 bpm, and ${tempo} isn’t.`,
  unreadTempo: ({ tempo }: { tempo: string }) => `“${tempo}” isn’t a tempo. Write beats per minute, such as 128.`,
  tooManyTracks: ({ most }: { most: number }) => `Only the first ${grouped(most)} tracks were read.`,
  tooManyLines: ({ most }: { most: number }) => `Only the first ${grouped(most)} lines were read.`,

  /** In place of the text of an entry that has none. */
  untitledTrack: 'a track without a title',
  laterTracks: 'the tracks from here on',
}
