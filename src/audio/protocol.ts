import type { BeatHints, Beats } from '#plan/songs/heardSong.ts'

/** What the page asks of the worker; the channels are handed over, not copied. */
export interface Question {
  channels: Float32Array[]
  sampleRate: number
  hints: BeatHints
}

/** What the worker says: what the sound looks like, any number of shares, and then one of the others. */
export type Answer =
  | { kind: 'sound'; peaks: Uint8Array; loudness: Float32Array }
  | { kind: 'share'; share: number }
  /** Null: the song is too short or too quiet to have a beat. */
  | { kind: 'beats'; beats: Beats | null }
  | { kind: 'failed'; message: string }

/** A message from the worker, or null for anything that is none: an extension of the browser may post as well. */
export function parseAnswer(data: unknown): Answer | null {
  if (!isObject(data)) return null
  if (data.kind === 'share') return isShare(data.share) ? { kind: 'share', share: data.share } : null
  if (data.kind === 'sound') {
    const { peaks, loudness } = data
    return peaks instanceof Uint8Array && loudness instanceof Float32Array ? { kind: 'sound', peaks, loudness } : null
  }
  if (data.kind === 'failed') return typeof data.message === 'string' ? { kind: 'failed', message: data.message } : null
  if (data.kind !== 'beats') return null
  if (data.beats === null) return { kind: 'beats', beats: null }
  return isBeats(data.beats) ? { kind: 'beats', beats: data.beats } : null
}

function isBeats(value: unknown): value is Beats {
  if (!isObject(value)) return false
  const { bpm, beats, downbeats, eights, beatsPerBar, firstBeat, confidence, drifts, steady } = value
  return (
    isNumber(bpm) &&
    bpm > 0 &&
    isRising(beats) &&
    beats.length >= 2 &&
    isRising(downbeats) &&
    isRising(eights) &&
    (beatsPerBar === 3 || beatsPerBar === 4 || beatsPerBar === 6) &&
    isNumber(firstBeat) &&
    isShare(confidence) &&
    typeof steady === 'boolean' &&
    Array.isArray(drifts) &&
    drifts.every((drift) => isObject(drift) && isNumber(drift.from) && isNumber(drift.to) && isNumber(drift.offBy))
  )
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
const isNumber = (value: unknown): value is number => Number.isFinite(value)
const isShare = (value: unknown): value is number => isNumber(value) && value >= 0 && value <= 1
const isRising = (value: unknown): value is number[] =>
  Array.isArray(value) && value.every((second, i) => isNumber(second) && (i === 0 || second > value[i - 1]))
