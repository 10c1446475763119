import type { UNSHARED } from '#plan/link/shareable.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { plural } from '#units/plural.ts'

/** What is never shared, in words: a field that is withheld is also said to be. */
const KEPT: Record<(typeof UNSHARED)[number], string> = {
  privateNotes: 'your private notes on the ride',
  setAside: 'the findings you put aside',
  shaky: 'the blocks you marked as shaky',
  riders: 'riders you have named',
}

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
  return {
    holds: [
      'the title, the level, the slot and the aim',
      `${plural(ride.sections.length, 'section')}, ${songs.length === 0 ? 'no songs yet' : `${plural(songs.length, 'song')} by title, artist, length, beat and marks`}`,
      ...(songs.some(({ fingerprint }) => fingerprint) ? ['a number of each file that was read, by which it is told again'] : []),
      `${plural(blocks.length, 'block')} with ${cues === 0 ? 'no words of cues yet' : `the words of ${plural(cues, 'cue')}`}`,
      `the bike “${ride.bike.name}” with its scale`,
      ...(ride.leaders.length > 0
        ? [`the ${ride.leaders.length === 1 ? 'name' : 'names'} ${ride.leaders.map((leader) => leader.name).join(' and ')}`]
        : []),
      'the notes on sections and blocks',
      ...(ride.standIn ? ['the notes for a substitute, those on the room with them'] : []),
      ...(ride.houseRules || ride.avoidMoves ? ['the house rules of the room, and the moves it avoids'] : []),
      ...(ride.parent || ride.ancestors?.length ? ['numbers that tell which versions it was made from'] : []),
    ],
    never: [...Object.values(KEPT), 'your other rides', 'the versions you keep', 'any sound or music file'],
  }
}
