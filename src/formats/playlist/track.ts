import type { Seconds } from '#units/units.ts'

/** A song as a playlist file names it. */
export interface Track {
  title: string
  artist?: string
  seconds: Seconds
  /** What the leader needs to know of it in one line. */
  note?: string
}
