import type { UNSHARED } from '#plan/link/shareable.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { bikeName } from '#plan/names.ts'
import { tell, words } from '#words/words.ts'

/** What is never shared, in words: a field that is withheld is also said to be. */
const KEPT = {
  privateNotes: 'privateNotes',
  setAside: 'hiddenChecks',
  shaky: 'needsPractice',
  riders: 'riders',
} as const satisfies Record<(typeof UNSHARED)[number], keyof typeof words.handover>

/** What a link or file of this ride hands over, and what stays here; short phrases for two lists. */
interface Holdings {
  holds: string[]
  never: string[]
}

/**
 * Counts what the receiver will see of a ride. `never` names all that a link leaves out,
 * whether this ride has it or not: the receiver of any link can count on it.
 */
export function holdings(ride: Ride): Holdings {
  const songs = ride.sections.flatMap(({ song }) => song ?? [])
  const blocks = ride.sections.flatMap((section) => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
  const cues = blocks.reduce((sum, block) => sum + block.cues.length, 0)
  const { handover } = words
  return {
    holds: [
      handover.head,
      handover.songs({ songs: ride.sections.length, withMusic: songs.length }),
      ...(songs.some(({ fingerprint }) => fingerprint) ? [handover.fingerprints] : []),
      handover.blocks({ blocks: blocks.length, cues }),
      handover.bike({ name: tell(bikeName(ride.bike)) }),
      ...(ride.leaders.length > 0 ? [handover.names({ names: ride.leaders.map(({ name }) => name) })] : []),
      handover.notes,
      ...(ride.standIn ? [handover.subNotes] : []),
      ...(ride.houseRules || ride.avoidMoves ? [handover.studioRules] : []),
      ...(ride.parent || ride.ancestors?.length ? [handover.versionIds] : []),
    ],
    never: [...Object.values(KEPT).map((key) => handover[key]), handover.otherRides, handover.versions, handover.soundFiles],
  }
}
