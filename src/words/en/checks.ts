import { plural } from '#words/forms.ts'
import { type KnobSize, measures } from './measures.ts'

/** What all checks share: how repairs are held back, and the repairs that several rules offer. */
export const checks = {
  /** A repair with the block it is made in. */
  fixIn: ({ fix, block }: { fix: string; block: string }) => `${fix} in ${block}`,
  wouldBring: ({ fix, finding }: { fix: string; finding: string }) => `“${fix}” would bring up another check: ${finding}`,
  wouldWorsen: ({ fix, finding }: { fix: string; finding: string }) => `“${fix}” would make another one worse: ${finding}`,
  goesAgainst: ({ fix, other }: { fix: string; other: string }) => `“${fix}” would undo “${other}”, which matters more.`,
  fixedMany: ({ count }: { count: number }) => `Fixed ${plural(count, 'check', 'checks')}`,

  // Length
  extend: ({ block, by }: { block: string; by: string }) => `Extend ${block} by ${by}`,
  extended: ({ block, by }: { block: string; by: string }) => `Extended ${block} by ${by}`,
  shorten: ({ block, by }: { block: string; by: string }) => `Shorten ${block} by ${by}`,
  shortened: ({ block, by }: { block: string; by: string }) => `Shortened ${block} by ${by}`,

  // Resistance
  add: ({ size }: { size: KnobSize }) => `Add ${measures.knob(size)}`,
  added: ({ size, block }: { size: KnobSize; block: string }) => `Added ${measures.knob(size)} to ${block}`,
  takeOff: ({ size }: { size: KnobSize }) => `Take ${measures.knob(size)} off`,
  tookOff: ({ size, block }: { size: KnobSize; block: string }) => `Took ${measures.knob(size)} off ${block}`,

  // Posture
  keepSeated: ({ block }: { block: string }) => `Keep ${block} seated`,
  madeSeated: ({ block }: { block: string }) => `Changed ${block} to seated`,

  // Cadence
  rideOnBeat: 'Ride it on the beat',
  putOnBeat: ({ block }: { block: string }) => `Put ${block} on the beat`,
  rideAt: (rpm: { from: number; to: number }) => `Ride it at ${measures.rpmRange(rpm)}`,
  setCadence: ({ block, ...rpm }: { block: string; from: number; to: number }) => `Set ${block} to ${measures.rpmRange(rpm)}`,

  // Off the bike
  stayOnBike: 'Stay on the bike',
  stayedOnBike: ({ block }: { block: string }) => `Stayed on the bike in ${block}`,
}
