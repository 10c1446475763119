import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { limitsOf, startOf } from '#plan/ledger/limits.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { KnobSteps, Rpm } from '#units/units.ts'
import { paceOf } from './paceOf.ts'
import { type EntryContext, type Reader, readEntry, type StateWords, wordsOfState } from './readEntry.ts'
import { readFinding } from './readFinding.ts'
import { readTotal, type ShownOn, shownOn, type TotalOnBike } from './readTotal.ts'

/**
 * A ride's report in the words of another bike: every total, call and change, and what each
 * section enters and leaves at, at the block's own cadence. The numbers stay the ride's, so that
 * whatever is edited is edited on the ride's bike; cues stay as they are written, and findings do,
 * but say besides where their block stands on the other bike.
 * Cost: linear in the blocks, with one translation for every total at every cadence.
 */
export function onAnotherBike(ride: Ride, report: RideReport, bike: Bike): RideReport {
  const on = shownOn(bike, ride)
  const context = { on, read: rememberingReader(ride, on), quietRpm: ride.bike.referenceRpm, calls: speechOf(ride).calls }
  const first = report.blocks[0]
  const start = wordsOfState(startOf(limitsOf(ride)), first ? paceOf(first, context.quietRpm) : context.quietRpm, context)
  const blocks = readBlocks(report.blocks, start, context)
  return {
    ...report,
    blocks,
    sections: report.sections.map((section) => readSection(section, blocks, start.total)),
    cues: {
      ...report.cues,
      changes: report.cues.changes.map((change) => ({ ...change, kinds: kindsOf(change.kinds, blocks[change.block]!) })),
    },
    findings: report.findings.map((finding) => readFinding(finding, blocks, on)),
    shownOn: on,
  }
}

function readBlocks(played: readonly PlayedBlock[], start: StateWords, context: EntryContext): PlayedBlock[] {
  let standing: Pick<StateWords, 'small'> = start
  return played.map((block) => {
    const ledger = readEntry(block, standing, context)
    standing = { small: ledger.reading!.small }
    return { ...block, ledger }
  })
}

function readSection(section: SectionReport, blocks: readonly PlayedBlock[], start: string): SectionReport {
  const at = (end: number) => blocks[end - 1]?.ledger.total ?? start
  return { ...section, entersAt: at(section.blocks.from), leavesAt: at(section.blocks.to) }
}

/** The knob is turned where the other bike's reading moves: a new pace can move it, a small change may not. */
function kindsOf(kinds: RideReport['cues']['changes'][number]['kinds'], { ledger }: PlayedBlock): typeof kinds {
  const others = kinds.filter((kind) => kind !== 'resistance')
  return ledger.form === 'stay' ? others : [...others, 'resistance']
}

/** Blocks share few totals and cadences; each pair is translated once. */
function rememberingReader(ride: Ride, on: ShownOn): Reader {
  const known = new Map<string, TotalOnBike>()
  return (total: KnobSteps, rpm: Rpm) => {
    const key = `${total} ${rpm}`
    const found = known.get(key) ?? readTotal(total, ride, on, rpm)
    known.set(key, found)
    return found
  }
}
