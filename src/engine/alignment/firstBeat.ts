import type { Seconds } from '#units/units.ts'
import type { TappedTempo } from './tapTempo.ts'

/**
 * Second of the song at which its first bar begins: the earliest one at or after the song's start
 * on the bars that the taps on "the one" agree on. Undefined without such a tap.
 *
 * @param ones times of taps on the first beat of a bar, on the clock of the tempo's taps
 * @param start the moment the song started to play, on the same clock
 */
export function firstBeat(tempo: TappedTempo, ones: readonly Seconds[], start: Seconds, beatsPerBar: number): Seconds | undefined {
  const votes = new Map<number, number>()
  for (const time of ones) {
    const place = modulo(Math.round((time - tempo.beat) / tempo.period), beatsPerBar)
    votes.set(place, (votes.get(place) ?? 0) + 1)
  }
  const [winner] = [...votes].sort((a, b) => b[1] - a[1])
  if (winner === undefined) return undefined
  const one = tempo.beat + winner[0] * tempo.period
  const second = modulo(one - start, beatsPerBar * tempo.period)
  // A hair before the end of a bar is the bar's start, heard a hair early.
  return beatsPerBar * tempo.period - second < EARLY ? 0 : second
}

/** Less than this before the song is a tap made early, not a bar of silence (own choice, a third of the beat-tracking tolerance). */
const EARLY: Seconds = 0.025

const modulo = (value: number, by: number): number => ((value % by) + by) % by
