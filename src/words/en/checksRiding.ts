import { measures } from './measures.ts'

const SEAT = { seated: 'seated', standing: 'standing' }

const SIDES = { left: 'left', right: 'right' }
type Side = keyof typeof SIDES

const STROKES = { 0.5: 'in half time', 1: 'on the beat', 2: 'in double time' }

interface Rpm {
  from: number
  to: number
}

/** Checks of cadence, feet, hands, and moves. */
export const checksRiding = {
  // Cadence
  cadenceBounds: ({ block, seat, rpm, usual }: { block: string; seat: keyof typeof SEAT; rpm: Rpm; usual: Rpm }) =>
    `${block} is ridden ${SEAT[seat]} at ${measures.rpmRange(rpm)}; ${measures.rpmRange(usual)} is usual ${SEAT[seat]}.`,
  rideStrokes: ({ strokes }: { strokes: keyof typeof STROKES }) => `Ride it ${STROKES[strokes]}`,
  putStrokes: ({ block, strokes }: { block: string; strokes: keyof typeof STROKES }) => `Put ${block} ${STROKES[strokes]}`,
  rideSeated: 'Ride it seated',
  noBeat: ({ block }: { block: string }) => `${block} has no beat to follow and no cadence is set.`,
  offBeat: ({ block }: { block: string }) => `${block} is off the beat and no cadence is set.`,
  offBeatCadence: ({ block, rpm, beat }: { block: string; rpm: Rpm; beat: Rpm }) =>
    `${block} is set to ${measures.rpmRange(rpm)}, but on this beat the legs turn at ${measures.rpmRange(beat)}.`,
  markOffBeat: 'Mark it off the beat',
  markedOffBeat: ({ block }: { block: string }) => `Marked ${block} off the beat`,

  // The lead foot
  leadUnset: ({ song, block }: { song: string; block: string }) =>
    `No lead foot is set for ${song}, so the accents of ${block} count for neither leg.`,
  noFootOnOne: ({ block }: { block: string }) =>
    `No foot lands on beat 1 of ${block}: the block before it leaves the feet between two strokes.`,
  leadOpen: ({ block }: { block: string }) => `The lead foot of ${block} is open: the block before it leaves the beat.`,
  footFlips: ({ foot, block, before }: { foot: Side; block: string; before: string }) =>
    `The ${SIDES[foot]} foot lands on beat 1 of ${block}: ${before} has an odd number of strokes.`,
  lead: ({ foot }: { foot: Side }) => `Lead with the ${SIDES[foot]} foot`,
  led: ({ block, foot }: { block: string; foot: Side }) => `Changed the lead foot of ${block} to ${SIDES[foot]}`,

  // Hands
  endsSeated: ({ block }: { block: string }) => `${block} is seated with hands at the ends; that reach is for standing climbs.`,
  centerStanding: ({ block }: { block: string }) => `${block} is out of the saddle with hands at the center; wide is steadier.`,
  handsWide: 'Hands wide',
  setHandsWide: ({ block }: { block: string }) => `Set ${block} to hands wide`,

  // Moves to avoid
  avoidedMove: ({ block, move, instead }: { block: string; move: string; instead: string | null }) =>
    `${block} has “${move}”, which this room doesn’t do; ride it without${instead === null ? '' : `, or do “${instead}” on the same counts`}.`,
  leaveMoveOut: ({ move }: { move: string }) => `Leave out “${move}”`,
  leftMoveOut: ({ block, move }: { block: string; move: string }) => `Left “${move}” out of ${block}`,
  makeMove: ({ move }: { move: string }) => `Make it “${move}”`,
  madeMove: ({ block, move }: { block: string; move: string }) => `Changed the move of ${block} to “${move}”`,
  avoidedHover: ({ block }: { block: string }) => `${block} is hovering, which this room doesn’t do; ride it standing.`,
  rideStanding: 'Ride it standing',
  madeStanding: ({ block }: { block: string }) => `Changed ${block} to standing`,
  avoidedJumps: ({ block }: { block: string }) => `${block} is jumps, which this room doesn’t do; make it a seated climb.`,
  makeClimb: 'Make it a seated climb',
  madeClimb: ({ block }: { block: string }) => `Made ${block} a seated climb`,
}
