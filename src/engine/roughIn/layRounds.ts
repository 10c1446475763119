import { recoveryNeed } from '#engine/recovery/recoveryNeed.ts'
import type { Effort } from '#units/units.ts'
import type { Chunk, Planned } from './chunks.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import { SHORTEST_BLOCK } from './segments.ts'
import { RISE, type WorkSong } from './workSong.ts'

/** A song as rounds of work and recovery: what comes before its first louder stretch, then the rounds. Null where two of them do not fit. */
export function layRounds(song: WorkSong, effort: Effort): Planned[] | null {
  const { recipe, segments, eightSeconds, plan, level, rules } = song
  const first = segments.findIndex(({ up }) => up)
  if (first < 0) return null
  const build = segments[first - 1]?.build ?? 0
  const quiet = sum(segments.slice(0, first))
  // Where the music does not build towards them, rounds begin once they are called.
  const lead = build > 0 ? quiet : Math.min(quiet, Math.ceil(CALLED / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS)
  const body = sum(segments) - lead
  const { from, to } = plan.pushSeconds
  // Riders who set each push up need the longer recovery for it.
  const lengths = (standsUp(song) && level !== 'advanced' ? [8, 6, 4, 2, 3] : [4, 6, 8, 2, 3]).filter(
    (eights) => eights * eightSeconds >= from && eights * eightSeconds <= to,
  )
  for (const push of lengths) {
    const need = recoveryNeed({ work: push * eightSeconds, peak: Math.max(effort, rules.hardEffort), allOut: false }, level, rules)
    const recover = roundUp(push + Math.ceil(need / eightSeconds - 1e-9), PHRASE_EIGHTS) - push
    const leftOf = (count: number) => body - count * (push + recover)
    const most = Math.min(plan.rounds, Math.floor(body / (push + recover)))
    // What is left after them is none or a block of its own.
    const allInRounds = leftOf(most) === 0 && song.rest === 0
    const rounds = allInRounds || leftOf(most) * eightSeconds >= SHORTEST_BLOCK ? most : most - 1
    if (rounds < 2) continue
    const quieter = { pattern: recipe.down, effort: plan.down - 0.5 }
    const easy = recipe.style === 'push' ? { pattern: 'recover', effort: 3 } : quieter
    const left = leftOf(rounds)
    const setUp = standsUp(song) ? Math.ceil(SHORTEST_BLOCK / eightSeconds / 2) * 2 : 0
    const sits = (recover - setUp) * eightSeconds >= SHORTEST_BLOCK ? recover - setUp : recover
    return [
      ...leading(lead, build, quieter),
      {
        rounds,
        parts: [
          { pattern: recipe.ups[0], eights: push, effort },
          { ...easy, eights: sits },
          ...(sits < recover ? [{ pattern: 'standing-flat', effort: SET_UP, eights: recover - sits }] : []),
        ],
      },
      ...(left > 0 ? [{ ...quieter, eights: left }] : []),
    ]
  }
  return null
}

/** Riders come out of the saddle at the end of a recovery to set the next push up, no harder than they recover (common practice). */
const SET_UP: Effort = 4.5

/** Where the level's riders change place often, and are not up in the rounds themselves. */
const standsUp = ({ recipe, plan }: WorkSong): boolean => plan.setsUp && recipe.style === 'push'

/** In about this time rounds are called (common practice). */
const CALLED = 30

/** What comes before the rounds, rising at its end where the music builds towards them. */
function leading(eights: number, build: number, chunk: Omit<Chunk, 'eights'>): Chunk[] {
  const rising = Math.min(build, eights)
  return [
    { ...chunk, eights: eights - rising },
    { ...chunk, eights: rising, rise: RISE },
  ].filter((each) => each.eights > 0)
}

const sum = (segments: readonly Segment[]): number => segments.reduce((all, { eights }) => all + eights, 0)
const roundUp = (value: number, step: number): number => Math.ceil(value / step) * step
