import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import { replaced } from '#engine/cues/claims/replaced.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { LedgerEntry } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'

/** Words about what comes at once; a preview or a story speaks of more than its own block. */
const AT_ONCE: ReadonlySet<CueLine['moment']> = new Set(['announce', 'countIn', 'action'])

/** What stands before a total, as the other bike's call has it too: "up to two and a half" is "to about twelve". */
const LEADING_UP = /(?:\b(?:up|down|back)\s+)?\bto\s+$/i

/**
 * A report that reads on another bike, with what is said of the knob in that bike's words too: "half
 * turn on, up in four" is "to about fifteen, up in four" in a room of levels. A cue that speaks of
 * the knob more than once stays as it is written.
 *
 * @param unit of the ride's own bike, which its cues speak in
 */
export function spokenOnBike(report: RideReport, unit: string): RideReport {
  const { blocks, cues } = report
  return { ...report, cues: { ...cues, lines: cues.lines.map((line) => onBike(line, blocks[line.block]!.ledger, unit)) } }
}

function onBike(line: CueLine, ledger: LedgerEntry, unit: string): CueLine {
  const { cue, moment } = line
  const [claim, more] = claimsOf(cue, unit).filter(
    ({ meanings: [{ about }] }) => about === 'change' || about === 'total' || about === 'stay',
  )
  if (!claim || more || !AT_ONCE.has(moment)) return line
  const whole = { ...claim, from: claim.from - (LEADING_UP.exec(cue.text.slice(0, claim.from))?.[0].length ?? 0) }
  return { ...line, cue: { ...cue, text: replaced(cue.text, [{ claim: whole, planned: shortCall(ledger) }]) } }
}

/** The call without what it feels like, which stands beside it: "to about fifteen". */
export const shortCall = ({ call, reading }: LedgerEntry): string => (reading ? (call.split(/: |, (?!heavier|lighter)/)[0] ?? call) : call)
