import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import type { DraftTask } from './draftPlaylists.ts'

/** A draft as it is judged: what was asked, what was proposed, and what the engine computes of it. */
export interface Drafted {
  task: DraftTask
  ride: Ride
  report: RideReport
  told: { arc: readonly string[]; songs: readonly { sectionId: string; text: string }[] }
}

/** One thing asked of drafts: whether one has it; undefined where it does not apply. */
export interface Criterion {
  id: string
  words: string
  /** Share of the drafts that should have it. */
  aim: number
  judge: (drafted: Drafted) => boolean | undefined
}
