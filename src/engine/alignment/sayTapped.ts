import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'
import type { TappedTempo } from './tapTempo.ts'
import { driftSeconds } from './tempoError.ts'

/** What taps are worth: good to plan by, to be gone on with, or too shaky. */
interface TapVerdict {
  grade: 'steady' | 'rough' | 'shaky'
  text: string
}

/** Drift at the end of a song that riders would not hear as off the beat, and one they would clearly (a beat at 120). */
const STEADY_DRIFT: Seconds = 0.15
const SHAKY_DRIFT: Seconds = 0.5

/** Whether tapped beats hold to a song's end, in one sentence that says by how much they might not. */
export function sayTapped(tempo: TappedTempo, length: Seconds): TapVerdict {
  const drift = driftSeconds(length, (100 * tempo.uncertainty) / tempo.bpm)
  const by = `${formatNumber(drift, drift < 1 ? 2 : 1)} s`
  const end = `by the end of ${formatDuration(length)}`
  if (drift <= STEADY_DRIFT) return { grade: 'steady', text: `Steady enough: ${end} the beat is off by ${by} at most.` }
  if (drift <= SHAKY_DRIFT) return { grade: 'rough', text: `Good to draft by: ${end} the beat may be off by ${by}; tap on for less.` }
  return { grade: 'shaky', text: `Too shaky still: ${end} the beat may be off by ${by}; tap on, or start again.` }
}
