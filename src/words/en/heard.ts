import { clock, duration, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** A stretch of a song. */
interface Stretch {
  from: number
  to: number
}

/** What was heard of a song, and what taps on its beat are worth. */
export const heard = {
  // One file
  waiting: ({ name }: { name: string }) => `“${name}” is waiting.`,
  opening: ({ name }: { name: string }) => `Opening “${name}”.`,
  listening: ({ name }: { name: string }) => `Listening to “${name}”.`,
  known: ({ name }: { name: string }) => `“${name}” was recognized and linked again.`,
  stopped: ({ name }: { name: string }) => `“${name}” was stopped.`,
  noBeat: ({ name, length }: { name: string; length: number }) => `“${name}”: no clear beat found; ${clock(length)}.`,
  /** In six eighths a song is counted in two. */
  beat: ({
    name,
    bpm,
    beatsPerBar,
    length,
    doubt,
  }: {
    name: string
    bpm: number
    beatsPerBar: number
    length: number
    /** What should be looked at before it is relied on: where the tempo doesn't hold, or why it is in doubt. */
    doubt: Stretch | 'changes' | 'unsure' | null
  }) => {
    const bars = beatsPerBar === 6 ? '6/8, counted in two' : `${number(beatsPerBar)} beats per bar`
    return `“${name}”: ${measures.bpm(bpm, 2)}, ${bars}, ${clock(length)}.${doubted(doubt)}`
  },

  // A row of files
  files: ({ read, of, failed, stopped }: { read: number; of: number | null; failed: number; stopped: number }) =>
    `${[
      of === null ? `${plural(read, 'file', 'files')} read` : `${number(read)} of ${plural(of, 'file', 'files')} read`,
      ...(failed > 0 ? [`${number(failed)} can’t be read`] : []),
      ...(stopped > 0 ? [`${number(stopped)} stopped`] : []),
    ].join(', ')}.`,

  // Taps
  steady: ({ drift, length }: { drift: number; length: number }) =>
    `Steady enough: could drift ${driftText(drift)} at most by ${duration(length)}.`,
  rough: ({ drift, length }: { drift: number; length: number }) =>
    `Good enough to plan with: could drift ${driftText(drift)} by ${duration(length)}. Keep tapping for less.`,
  shaky: ({ drift, length }: { drift: number; length: number }) =>
    `Not steady yet: could drift ${driftText(drift)} by ${duration(length)}. Keep tapping, or start over.`,

  // A tempo few songs are counted at
  unusualTempo: ({ bpm, slower, from, to, meant }: { bpm: number; slower: boolean; from: number; to: number; meant: number | null }) =>
    `${measures.bpm(bpm, 2)} is ${slower ? 'slower' : 'faster'} than songs are usually counted (${from} to ${measures.bpm(to)})${meant === null ? '.' : `; is it ${number(meant)}?`}`,

  // How a cadence suits blocks
  fitsAll: ({ count }: { count: number }) =>
    count === 1 ? 'fits the block' : count === 2 ? 'fits both blocks' : `fits all ${count} blocks`,
  fitsSome: ({ count, of }: { count: number; of: number }) => `fits ${count} of ${of} blocks`,
  tooSlow: 'too slow',
  tooFast: 'too fast',
  fitsNone: 'fits no block',
}

function doubted(doubt: Stretch | 'changes' | 'unsure' | null): string {
  if (doubt === null) return ''
  if (doubt === 'changes') return ' The tempo changes; the beats follow it.'
  if (doubt === 'unsure') return ' Not sure: listen, and try half, double, or a beat to either side.'
  return ` The tempo doesn’t hold from ${clock(doubt.from)} to ${clock(doubt.to)}.`
}

const driftText = (seconds: number): string => `${number(seconds, seconds < 1 ? 2 : 1)} s`
