import type { LedClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { readCurves } from '#engine/readOut/readCurves.ts'
import type { RiderReport } from '#engine/report.ts'
import { leaderMarks } from '#features/drafting/stage/leaderMark.ts'
import { itemName, riderInSentence, sectionName } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

/** What the read-out says. */
interface ReadOutWords {
  place: string
  block: string
  rows: readonly { what: string; value: string }[]
  /** Whose estimates they are; empty where none is told. */
  whose: string
  /** All of it as one text. */
  spoken: string
}

/** Pure: the same class, rider, and moment give the same words. */
export function readOutWords(led: LedClass, rider: RiderReport | undefined, at: Seconds): ReadOutWords {
  const { ride, report } = led
  const { readOut } = words
  const { section, music, beat, phase } = stateOf(led, at)
  const reading = readCurves(report, rider, at)
  const place = readOut.place({
    at,
    song: section === undefined ? '' : tell(sectionName(ride, ride.sections[section]!)),
    eight: music && phase === 'block' ? music.eight : null,
    of: music?.of ?? 0,
    unit: beat?.unit ?? 8,
  })
  const { block: played, planned, cadence, estimated, heart, reserve } = reading
  const block = played
    ? [
        tell(itemName(played.block)),
        words.names.posture({ posture: played.block.posture }),
        leaderMarks(ride).get(played.block.id)?.spoken ?? '',
      ]
        .filter(Boolean)
        .join(', ')
    : phase === 'finished' || phase === 'block'
      ? readOut.nothing
      : words.rehearsing.between({ phase })
  const rows = [
    planned !== null && { what: readOut.planned, value: readOut.effort({ level: planned }) },
    estimated && { what: readOut.estimated, value: readOut.aboutEffort(estimated) },
    cadence !== null && { what: readOut.cadence, value: cadence === 'still' ? readOut.still : readOut.rpm({ rpm: cadence }) },
    played && { what: readOut.resistance, value: played.ledger.total },
    heart && { what: readOut.heart, value: readOut.aboutHeart(heart) },
    reserve && { what: readOut.reserve, value: readOut.aboutReserve(reserve) },
  ].filter((row) => row !== false && row !== null)
  const whose = rider && (estimated || heart || reserve) ? readOut.whose({ rider: tell(riderInSentence(rider.rider)) }) : ''
  const told = rows.map(({ what, value }) => `${what} ${value}`)
  return { place, block, rows, whose, spoken: `${readOut.spoken({ place, block, rows: told })} ${whose}`.trim() }
}
