import { beatsIn } from '#engine/timeline/beatsIn.ts'
import type { Placed, Timeline } from '#engine/timeline/layTimeline.ts'
import type { Foot, Ride, Section, StrikesPerBeat } from '#plan/model.ts'
import { strikesOf } from './strikesOf.ts'

/** The lead foot of a played block. */
export interface Footing {
  strikesPerBeat: StrikesPerBeat
  foot: Foot | null
  spoken: boolean
  /** Why there is no foot where one could be: the strikes end between two beats, or the beat was left and no foot named since. */
  lost?: 'between' | 'offBeat'
  /** True where an odd number of strikes hands the one of the next block to the other foot. */
  flips: boolean
}

export const otherFoot = (foot: Foot): Foot => (foot === 'left' ? 'right' : 'left')

/** The foot that lands after some strikes: the same after an even number, the other after an odd one, none after a broken one. */
export function footAfter(foot: Foot, strikes: number): Foot | null {
  const whole = Math.round(strikes)
  // Counts that came out of seconds carry rounding errors.
  if (Math.abs(strikes - whole) > 1e-6) return null
  return whole % 2 === 0 ? foot : otherFoot(foot)
}

/**
 * The foot that lands on the first count of every block. A section's lead foot (or the first
 * block's own) sets it; inside the section it follows the strikes, N beats giving N × strikes
 * per beat; beats over or missing are beats, too. Off the beat and with legs still there is none until a block names one.
 */
export function trackFeet(ride: Ride, { blocks, sections }: Timeline): Footing[] {
  const footings: Footing[] = []
  for (const [index, placed] of sections.entries()) {
    const section = ride.sections[index]!
    // The foot last named or set, and the strikes since.
    let named: Foot | null = section.lead ?? null
    let strikes = 0
    let lost: Footing['lost']
    for (let i = placed.firstBlock; i < placed.endBlock; i++) {
      const played = blocks[i]!
      const { lead } = played.block
      const strikesPerBeat = strikesOf(played.block, section)
      const beats = beatsRidden(played, section, strikesPerBeat)
      if (beats === null || strikesPerBeat === null) {
        footings.push({ strikesPerBeat, foot: null, spoken: false, flips: false })
        if (named) lost = 'offBeat'
        named = null
        continue
      }
      const falls = named && footAfter(named, strikes)
      const foot = footOf(lead, falls)
      const spoken = foot !== null && (foot !== falls || (i === placed.firstBlock && section.lead !== undefined))
      if (foot !== falls) {
        named = foot
        strikes = 0
        lost = undefined
      }
      const next = strikes + beats * strikesPerBeat
      const flips = foot !== null && footAfter(foot, beats * strikesPerBeat) === otherFoot(foot)
      const cause = foot === null ? (named ? 'between' : lost) : undefined
      footings.push({ strikesPerBeat, foot, spoken, flips, lost: cause })
      strikes = next
    }
  }
  return footings
}

function beatsRidden({ block, countFrom, countTo }: Placed, section: Section, strikesPerBeat: StrikesPerBeat): number | null {
  if (strikesPerBeat === null || countFrom === undefined || countTo === undefined) return null
  if (block.cadence === 'legsStill' || block.posture === 'offBike') return null
  return beatsIn(section, countFrom, countTo)
}

function footOf(lead: 'keep' | 'swap' | Foot | undefined, falls: Foot | null): Foot | null {
  if (lead === 'left' || lead === 'right') return lead
  return lead === 'swap' && falls ? otherFoot(falls) : falls
}
