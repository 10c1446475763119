import { and, duration, number } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What was done in a class that is being taught, where it stands, and how it could end on time. */

/** What no longer fits into the song, by name. */
const fallen = (names: readonly string[]): string =>
  names.length === 0
    ? ''
    : names.length > 2
      ? `; ${names.length} blocks fall off the end of the song`
      : `; ${and(names)} ${names.length > 1 ? 'fall' : 'falls'} off the end of the song`

export const led = {
  // What an action did
  noBlockToRepeat: 'No block is running to repeat.',
  roundAgain: ({ fallen: names }: { fallen: readonly string[] }) => `This round once more${fallen(names)}.`,
  blockAgain: ({ block, fallen: names }: { block: string; fallen: readonly string[] }) => `${block} once more${fallen(names)}.`,
  nothingBegun: 'Nothing has started yet.',
  blocksOver: 'The blocks of this song are over.',
  songStarts: 'The song starts now.',
  blockRestarts: ({ block, fallen: names }: { block: string; fallen: readonly string[] }) => `${block} again${fallen(names)}.`,
  classOver: 'No song is left: the class is over.',
  classEnds: 'The class ends here; undo brings it back.',
  musicOver: 'The music is over, so there’s no beat 1 to set.',
  noBeats: 'No beat is known here, so there’s no beat 1 to set.',
  onBeatOne: 'On beat 1.',
  shifted: ({ seconds }: { seconds: number }) => {
    const size = Math.abs(seconds)
    return `On beat 1: the song is ${size < 10 ? `${number(size, 1)} s` : duration(size)} ${seconds > 0 ? 'later' : 'earlier'} than shown.`
  },
  waiting: 'Waiting.',
  holding: 'Holding here.',
  holdingEight: 'Holding this eight.',
  nothingHeld: 'Nothing is on hold.',
  on: ({ fallen: names }: { fallen: readonly string[] }) => `Moving on${fallen(names)}.`,
  nothingAfter: 'Nothing comes after this.',
  onTo: ({ block }: { block: string }) => `On to ${block}.`,
  onToAfterEight: ({ song }: { song: string }) => `On to ${song} at the end of this eight.`,
  noSongToSkip: 'No song is left to skip.',
  songEnds: ({ song }: { song: string }) => `${song} ends here.`,
  songSkipped: ({ song }: { song: string }) => `${song} is skipped.`,
  noLongerToCome: 'That’s already over.',
  cut: 'Cut.',

  // Where the class stands against its plan and its length
  clock: ({ behind, spare }: { behind: number; spare: number }) => {
    const against = Math.abs(spare) < 1 ? 'ends on time' : `${duration(Math.abs(spare))} ${spare > 0 ? 'to spare' : 'over class time'}`
    return behind === 0 ? against : `${duration(Math.abs(behind))} ${behind > 0 ? 'behind' : 'ahead'}, ${against}`
  },

  // Ways to end on time
  proposal: ({ cuts, less, spare }: { cuts: readonly string[]; less: number; spare: number }) => {
    const what = cuts.join(', ')
    return `${what.charAt(0).toUpperCase()}${what.slice(1)} (−${duration(less)}): you finish ${spare < 1 ? 'on time' : `${duration(spare)} early`}.`
  },
  cutSong: ({ song }: { song: string }) => `skip ${song}`,
  cutRounds: ({ rounds, song }: { rounds: number; song: string }) => `${rounds === 1 ? 'one round' : `${rounds} rounds`} fewer in ${song}`,
  cutPhrase: ({ block, song, counts, unit }: { block: string; song: string; counts: number; unit: number }) =>
    `${block} in ${song} ${measures.eights(counts, unit)} shorter`,
  cutOutro: ({ song, counts, unit }: { song: string; counts: number; unit: number }) =>
    `end ${song} ${measures.eights(counts, unit)} early`,
  startsWith: ({ song, call }: { song: string; call: string }) => `${song} then starts with “${call}”.`,
  sentences: ({ items }: { items: readonly string[] }) => items.join(' '),
}
