import { constantsOf } from '#engine/constants.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'
import { type Completion, completeCue, isBegunBy, type TradeCue } from '#engine/cues/completion/completeCue.ts'
import type { SaidCue } from '#engine/cues/completion/saidIn.ts'
import { cueSpots } from '#engine/cues/cueSpots.ts'
import { usualCount } from '#engine/cues/usualPlace.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'
import type { Place } from './writing.ts'

/** Words the line can be finished with, or a count-in. */
export interface Offered extends Completion {
  readonly label: string
  readonly count?: 4 | 8
}

/** What typing comes to at a block: what this leader has said before, and what the trade says; at its moment also a count-in. */
export function offeredAt(
  { ride, report }: { ride: Ride; report: RideReport },
  index: number,
  typed: string,
  said: readonly SaidCue[],
  trade: readonly TradeCue[],
  /** Where a new cue would go; null while one that is there is changed. */
  place: Place | null,
): Offered[] {
  const { block } = report.blocks[index]!
  const speech = speechOf(ride)
  const callsKnob = (text: string) =>
    claimsIn(text, ride.bike.unit, speech).some(({ meanings }) => meanings.some(({ about }) => KNOB.has(about)))
  const found = completeCue(typed, block, said, trade, callsKnob, MOST).map((one) => ({ ...one, label: one.text }))
  const isFree =
    !block.cues.some(({ moment }) => moment === 'countIn') && cueSpots(ride, report, index).some(({ name }) => name === 'countIn')
  if (!isFree || place === null) return found
  const usual = usualCount(constantsOf(ride))
  const countIns = ([usual, usual === 4 ? 8 : 4] as const).map(
    (count): Offered => ({ text: '', moment: 'countIn', said: false, count, label: words.cueLine.countIn({ counts: count }) }),
  )
  const asked = typed.trim() === '' ? place.moment === 'countIn' : typed.trim() !== ''
  return [...countIns.filter(({ label }) => asked && isBegunBy(label, typed)), ...found]
}

const KNOB: ReadonlySet<string> = new Set(['change', 'total', 'stay'])

/** As many as can be taken in at a glance. */
const MOST = 6
