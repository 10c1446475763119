import { useState } from 'react'
import type { Seconds } from '#units/units.ts'

/** What was tapped, in seconds of one clock. */
interface Taps {
  beats: readonly Seconds[]
  ones: readonly Seconds[]
  /** When the song began to play. */
  start: Seconds | null
}

const NOTHING: Taps = { beats: [], ones: [], start: null }
/** Older taps say little and the longest songs have no more. */
const MOST_TAPS = 1200
/** After a pause this long a tap is the first of a new row. */
const PAUSE: Seconds = 12

export type Tap = 'beat' | 'one' | 'start'

/**
 * Taps as they are made. Times are the events' own, taken when the key or finger went down, not
 * when the page got round to it. A one is a beat too; the start of the song begins a new row.
 */
export function useTaps() {
  const [taps, setTaps] = useState(NOTHING)
  const tap = (kind: Tap, timeStamp: number) => {
    const time = timeStamp / 1000
    setTaps((before) => {
      if (kind === 'start') return { ...NOTHING, start: time }
      const paused = time - (before.beats.at(-1) ?? time) > PAUSE
      const { beats, ones, start } = paused ? { ...NOTHING, start: before.start } : before
      return {
        start,
        beats: [...beats, time].slice(-MOST_TAPS),
        ones: kind === 'one' ? [...ones, time].slice(-MOST_TAPS) : ones,
      }
    })
  }
  return { taps, tap, clear: () => setTaps(NOTHING) }
}
