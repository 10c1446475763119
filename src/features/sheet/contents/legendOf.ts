import { HANDS, POSTURES, type Ride } from '#plan/model.ts'
import { isolated } from '#units/isolated.ts'
import { words } from '#words/words.ts'
import type { Band, LegendEntry, Row, SheetContents, SongClock } from './contents.ts'
import { initialsOf } from './initialsOf.ts'

interface LegendSource {
  ride: Ride
  bands: readonly Band[]
  heads: SheetContents['heads']
  songClock: SongClock
  /** Whether any length is in eights. */
  counted: boolean
}

/** What the sheet's shorthand means: only the marks that are on it, in the order the eye meets them. */
export function legendOf({ ride, bands, heads, songClock, counted }: LegendSource): LegendEntry[] {
  const { printed, names } = words
  const rows = bands.flatMap((band) => band.rows)
  const uses = (test: (row: Row) => boolean) => rows.some(test)
  const word = (mark: string, text: string): LegendEntry => ({ mark: { kind: 'word', word: mark }, text })
  const feet = (['left', 'right'] as const).filter((foot) => bands.some((band) => band.lead === foot) || uses((row) => row.foot === foot))
  return [
    { mark: { kind: 'effort' }, text: printed.effortMeans },
    word(heads.song, songClock === 'left' ? printed.leftMeans : printed.elapsedMeans),
    word(heads.length, counted ? printed.eightsMean : printed.timeMeans),
    ...POSTURES.filter((posture) => uses((row) => row.posture === posture)).map(
      (posture): LegendEntry => ({ mark: { kind: 'posture', posture }, text: names.posture({ posture }) }),
    ),
    ...HANDS.filter((hands) => uses((row) => row.hands === hands)).map(
      (hands): LegendEntry => ({ mark: { kind: 'hands', hands }, text: names.hands({ hands }) }),
    ),
    word(heads.total, printed.totalMeans({ unit: ride.bike.unit, fromBase: ride.datum === 'base' })),
    ...feet.map((foot): LegendEntry => ({ mark: { kind: 'foot', foot }, text: printed.onOne({ foot }) })),
    ...(uses((row) => row.water) ? [{ mark: { kind: 'water' } as const, text: printed.water }] : []),
    ...ride.leaders.flatMap(({ name }) => {
      const initials = initialsOf(name)
      const said = [...bands, ...rows].some(({ handOver }) => handOver?.split(/[ ,]/).includes(isolated(initials)))
      return said ? [word(initials, name)] : []
    }),
  ]
}
