import type { Beats, Hearing } from '#plan/songs/heardSong.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** Below this the analysis itself is in doubt, and says so. */
const SURE = 0.6

/** Where the hearing of a file stands, or what it gave, in words. */
export function sayHearing(name: string, hearing: Hearing): string {
  switch (hearing.kind) {
    case 'waiting':
      return `“${name}” waits its turn.`
    case 'decoding':
      return `Opening “${name}”.`
    case 'analysing':
      return `Listening to “${name}”.`
    case 'known':
      return `“${name}” was heard before, and is linked again.`
    case 'aborted':
      return `“${name}” was stopped.`
    case 'failed':
      return hearing.sentence
    case 'heard': {
      const { beats, lengthSeconds } = hearing.song
      const length = formatClock(Math.round(lengthSeconds))
      return beats ? `“${name}”: ${sayBeats(beats)}, ${length}.${sayDoubts(beats)}` : `“${name}” has no beat that can be heard; ${length}.`
    }
  }
}

/** Whether what was heard should be looked at before it is relied on. */
export const isDoubtful = (hearing: Hearing): boolean =>
  hearing.kind === 'heard' && (hearing.song.beats === null || sayDoubts(hearing.song.beats) !== '')

function sayBeats({ bpm, beatsPerBar }: Beats): string {
  const bars = beatsPerBar === 6 ? 'six eighths, counted in two' : `${beatsPerBar} beats a bar`
  return `${formatNumber(bpm, 2)} bpm, ${bars}`
}

function sayDoubts({ confidence, steady, drifts }: Beats): string {
  if (!steady) return ' The tempo changes; the beats follow it.'
  const [first] = drifts
  if (first) return ` The tempo does not hold from ${formatClock(Math.round(first.from))} to ${formatClock(Math.round(first.to))}.`
  return confidence < SURE ? ' Not sure of it: listen, and try half, double or a beat to either side.' : ''
}
