import type { Press } from '#actions/action.ts'
import type { Findable } from './ranked.ts'

/** A line of the list: what was found, and what a press of it does. */
export interface Row extends Findable {
  label: string
  /** Beside it: the artist of a song, what an action does. */
  also?: string
  /** Under it: where it stands, and when that was. */
  where?: string
  /** At its end: what it is, or its keys. */
  note?: string
  /** Why it cannot be done now. */
  why?: string
  /** Absent where it cannot be done. */
  go?: (press: Press) => void
}
