import { computeRide } from '#engine/computeRide.ts'
import type { Ride } from '#plan/model.ts'
import type { Spoken } from './speaking.ts'

/** Rides computed before what still does not fit is left out. */
const TRIES = 5

/**
 * The ride with its words, less those the engine's own rules on words do not pass: they are said shorter, as often as there
 * is a shorter way, and then left out.
 */
export function mended(ride: Ride, spoken: readonly Spoken[], withCues: (ride: Ride, spoken: readonly Spoken[]) => Ride): Ride {
  let said = spoken
  for (let tries = 0; ; tries++) {
    const whole = withCues(ride, said)
    const bad = new Set(
      computeRide(whole).findings.flatMap(({ id, rule, severity }) =>
        // Once something was said shorter, where it begins is no reason to leave it out.
        ABOUT_A_CUE.has(rule) && (tries === 0 || severity !== 'hint') ? [id.slice(rule.length + 1)] : [],
      ),
    )
    const mine = said.filter(({ cue }) => bad.has(cue.id))
    if (mine.length === 0) return whole
    said = said.flatMap((one): Spoken[] => {
      if (!bad.has(one.cue.id)) return [one]
      const [shorter, ...others] = tries < TRIES - 1 ? one.shorter : []
      return shorter === undefined ? [] : [{ ...one, cue: { ...one.cue, text: shorter }, shorter: others }]
    })
    if (tries >= TRIES) return withCues(ride, said)
  }
}

/** Rules whose findings are about one cue and carry its id. */
const ABOUT_A_CUE: ReadonlySet<string> = new Set([
  'cueNumbers',
  'cueLate',
  'cuePlace',
  'cueRoom',
  'cueCollisions',
  'resistanceFirst',
  'quietKept',
  'breathlessWords',
  'closingWords',
])
