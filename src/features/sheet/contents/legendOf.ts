import { HANDS, POSTURES, type Ride } from '#plan/model.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import { isolated } from '#units/isolated.ts'
import type { Band, LegendEntry, Row, SheetContents } from './contents.ts'
import { initialsOf } from './initialsOf.ts'

const HAND_WORDS = { centre: 'centre', wide: 'wide', ends: 'ends' } as const

/** What the sheet's shorthand means: only the marks that are on it, in the order the eye meets them. */
export function legendOf(ride: Ride, bands: readonly Band[], heads: SheetContents['heads']): LegendEntry[] {
  const rows = bands.flatMap((band) => band.rows)
  const uses = (test: (row: Row) => boolean) => rows.some(test)
  const word = (mark: string, text: string): LegendEntry => ({ mark: { kind: 'word', word: mark }, text })
  const strikes = bands.some((band) => band.facts.some((fact) => /×/.test(fact)))
  const feet = (['left', 'right'] as const).filter((foot) => bands.some((band) => band.lead === foot) || uses((row) => row.foot === foot))
  return [
    { mark: { kind: 'effort' }, text: 'effort 0–10' },
    heads.song === 'left' ? word('left', 'in the song') : word('song', 'since its one'),
    heads.length === '8s' ? word('8s', 'eights') : word('for', 'length'),
    ...POSTURES.filter((posture) => uses((row) => row.posture === posture)).map(
      (posture): LegendEntry => ({ mark: { kind: 'posture', posture }, text: POSTURE_WORDS[posture].is }),
    ),
    ...HANDS.filter((hands) => uses((row) => row.hands === hands)).map(
      (hands): LegendEntry => ({ mark: { kind: 'hands', hands }, text: HAND_WORDS[hands] }),
    ),
    word('total', `${ride.bike.unit}s ${ride.datum === 'base' ? 'over base' : 'from loose'}, then the change`),
    ...(strikes ? [word('×1', 'strikes a beat')] : []),
    ...feet.map((foot): LegendEntry => ({ mark: { kind: 'foot', foot }, text: `${foot} on the one` })),
    ...(uses((row) => row.water) ? [{ mark: { kind: 'water' } as const, text: 'water' }] : []),
    ...ride.leaders.flatMap(({ name }) => {
      const initials = initialsOf(name)
      const said = [...bands, ...rows].some(({ handOver }) => handOver?.split(/[ ,]/).includes(isolated(initials)))
      return said ? [word(initials, name)] : []
    }),
  ]
}
