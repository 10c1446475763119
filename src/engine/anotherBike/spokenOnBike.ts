import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import { replaced } from '#engine/cues/claims/replaced.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { LedgerEntry } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'

/** Words about what comes at once; a preview or a story speaks of more than its own block. */
const AT_ONCE: ReadonlySet<CueLine['moment']> = new Set(['announce', 'countIn', 'action'])

/**
 * A report that reads on another bike, with what is said of the knob in that bike's words too: "half
 * turn on, up in four" is "to about fifteen, up in four" in a room of levels. A cue that speaks of
 * the knob more than once stays as it is written.
 *
 * @param ride whose bike and language its cues speak in
 */
export function spokenOnBike(report: RideReport, ride: Ride): RideReport {
  const { blocks, cues } = report
  return { ...report, cues: { ...cues, lines: cues.lines.map((line) => onBike(line, blocks[line.block]!.ledger, ride)) } }
}

function onBike(line: CueLine, ledger: LedgerEntry, ride: Ride): CueLine {
  const speech = speechOf(ride)
  const { grammar } = speech
  const { cue, moment } = line
  const [claim, more] = claimsOf(cue, ride.bike.unit, speech).filter(
    ({ meanings: [{ about }] }) => about === 'change' || about === 'total' || about === 'stay',
  )
  if (!claim || more || !AT_ONCE.has(moment)) return line
  const whole = { ...claim, from: claim.from - (grammar.leading.exec(cue.text.slice(0, claim.from))?.[0].length ?? 0) }
  return { ...line, cue: { ...cue, text: replaced(cue.text, [{ claim: whole, planned: shortCall(ledger) }], grammar) } }
}

/** The call without what it feels like, which stands beside it: "to about fifteen". */
export const shortCall = ({ call, reading }: LedgerEntry): string =>
  reading ? (call.split(/: |, (?!heavier|lighter|schwerer|leichter)/)[0] ?? call) : call
