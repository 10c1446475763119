import type { Seconds } from '#units/units.ts'

/** A score's clock on the clock of the sound card. */
export interface PlayClock {
  /** Where the score is at a time of the sound card. */
  at: (time: Seconds) => Seconds
  /** When the sound card is at a place of the score. */
  when: (at: Seconds) => Seconds
  readonly startedAt: Seconds
  readonly from: Seconds
  /** Seconds of the score in one second. */
  readonly rate: number
}

/** The score stands at `from` at the time `startedAt`, and goes on from there. */
export const playClock = (startedAt: Seconds, from: Seconds, rate: number): PlayClock => ({
  startedAt,
  from,
  rate,
  at: (time) => from + (time - startedAt) * rate,
  when: (at) => startedAt + (at - from) / rate,
})
