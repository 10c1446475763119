import type { Constants } from '#engine/constants.ts'
import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import type { Level } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'

/** How long an attack lasts (common practice). */
const ATTACK: Readonly<{ least: Seconds; most: Seconds }> = { least: 12, most: 32 }
/** Riders settle into a song before its first one (common practice). */
const SETTLE: Seconds = 20

/**
 * A song's form with an attack inside each quieter stretch that is longer than riders need: in whole phrases, as long
 * as leaves them the recovery of what was before it and its own. Builds stay as they are.
 *
 * @param heard whether the form is that of the sound: then what it ends with is left as it is
 */
export function withAttacks(
  segments: readonly Segment[],
  eightSeconds: Seconds,
  heard: boolean,
  level: Level,
  rules: Constants,
): Segment[] {
  const up = (length: Seconds) => Math.ceil(length / eightSeconds / PHRASE_EIGHTS - 1e-9) * PHRASE_EIGHTS
  const restOf = (eights: number) => recoveryNeed({ work: eights * eightSeconds, peak: rules.hardEffort, allOut: false }, level, rules)
  const lengths = [8, 6, 4].filter((eights) => eights * eightSeconds >= ATTACK.least && eights * eightSeconds <= ATTACK.most)
  return segments.flatMap((segment, index) => {
    const [before, next] = [segments[index - 1], segments[index + 1]]
    if (segment.up || (before && !before.up) || (next ? !next.up : heard)) return [segment]
    return broken(segment, up(before ? restOf(before.eights) : SETTLE))
  })

  function broken({ eights, up: _, build = 0 }: Segment, rest: number): Segment[] {
    const attack = lengths.find((length) => (eights - rest - length - build) * eightSeconds >= restOf(length) - 1e-6)
    if (attack === undefined) return [{ eights, up: false, ...(build > 0 && { build }) }]
    const after = broken({ eights: eights - rest - attack, up: false, ...(build > 0 && { build }) }, up(restOf(attack)))
    const [only] = after
    if (after.length > 1 || !only) return [{ eights: rest, up: false }, { eights: attack, up: true }, ...after]
    // The last one comes late, so that riders go from it into what the stretch led to.
    const spare = only.eights - build - Math.ceil(restOf(attack) / eightSeconds - 1e-9)
    const later = Math.floor(spare / PHRASE_EIGHTS) * PHRASE_EIGHTS
    return [
      { eights: rest + later, up: false },
      { eights: attack, up: true },
      { ...only, eights: only.eights - later },
    ]
  }
}
