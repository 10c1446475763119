import { isSet, type Ride } from '#plan/model.ts'

/** What a link or file of this ride hands over, and what stays here; short phrases for two lists. */
export interface Holdings {
  holds: string[]
  never: string[]
}

/**
 * Counts what the receiver will see of a ride. `never` names all that a link leaves out,
 * whether this ride has it or not: the receiver of any link can count on it.
 */
export function holdings(ride: Ride): Holdings {
  const songs = ride.sections.filter((section) => section.song).length
  const blocks = ride.sections.flatMap((section) => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
  const cues = blocks.reduce((sum, block) => sum + block.cues.length, 0)
  return {
    holds: [
      'the title, the level, the slot and the aim',
      `${counted(ride.sections.length, 'section')}, ${songs === 0 ? 'no songs yet' : `${counted(songs, 'song')} by title, artist, length and beat`}`,
      `${counted(blocks.length, 'block')} with ${cues === 0 ? 'no words of cues yet' : `the words of ${counted(cues, 'cue')}`}`,
      `the bike “${ride.bike.name}” with its scale`,
      ...(ride.leaders.length > 0
        ? [`the ${ride.leaders.length === 1 ? 'name' : 'names'} ${ride.leaders.map((leader) => leader.name).join(' and ')}`]
        : []),
      'the notes on sections and blocks',
      ...(ride.houseRules || ride.avoidMoves ? ['the house rules of the room, and the moves it avoids'] : []),
      ...(ride.parent || ride.ancestors?.length ? ['numbers that tell which versions it was made from'] : []),
    ],
    never: [
      'your private notes on the ride',
      'the findings you put aside',
      'riders you have named',
      'your other rides',
      'the versions you keep',
      'any sound or music file',
    ],
  }
}

const counted = (amount: number, noun: string): string => `${amount} ${noun}${amount === 1 ? '' : 's'}`
