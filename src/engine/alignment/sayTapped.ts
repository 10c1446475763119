import type { Seconds } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'
import type { TappedTempo } from './tapTempo.ts'
import { driftSeconds } from './tempoError.ts'

/** What taps are worth: good to plan by, to be gone on with, or too shaky. */
interface TapVerdict {
  grade: 'steady' | 'rough' | 'shaky'
  text: Said
}

/** Drift at the end of a song that riders would not hear as off the beat, and one they would clearly (a beat at 120). */
const STEADY_DRIFT: Seconds = 0.15
const SHAKY_DRIFT: Seconds = 0.5

/** Whether tapped beats hold to a song's end, in one sentence that says by how much they might not. */
export function sayTapped(tempo: TappedTempo, length: Seconds): TapVerdict {
  const drift = driftSeconds(length, (100 * tempo.uncertainty) / tempo.bpm)
  const grade = drift <= STEADY_DRIFT ? 'steady' : drift <= SHAKY_DRIFT ? 'rough' : 'shaky'
  return { grade, text: say(`heard.${grade}`, { drift, length }) }
}
