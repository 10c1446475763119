import type { Constants } from '#engine/constants.ts'
import type { Ledger } from '#engine/ledger/keepLedger.ts'
import type { PlayedBlock, SectionReport } from '#engine/played.ts'
import type { CueReport } from '#engine/report.ts'
import type { StrainCurve } from '#engine/shape/strainCurve.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import { changeAt } from './changeAt.ts'
import { checkClaims, type Mismatch } from './claims/checkClaims.ts'
import { viewPlan } from './claims/plan/planView.ts'
import { type CueLine, placeCues } from './placeCues.ts'
import { repeatCalls } from './repeatCalls.ts'
import { showings } from './showings.ts'
import { quietStretches, storyWindows } from './storyWindows.ts'
import { crowdedWindows, spokenStretches, talkBySection } from './talk.ts'

/** What there is to say, when, and whether it can be said. Cost: linear in cues and blocks. */
export function reportCues(
  ride: Ride,
  blocks: readonly PlayedBlock[],
  sections: readonly SectionReport[],
  strain: StrainCurve,
  ledger: Ledger,
  rules: Constants,
): CueReport {
  const lines = placeCues({ ride, blocks, sections, strain, rules })
  const spoken = spokenStretches(lines)
  const quiet = quietStretches(ride, sections)
  const ridden = blocks.filter(({ from, to }) => to > from)
  return {
    lines,
    changes: ridden.map((played, i) => changeAt(played, ridden[i - 1], rules)).filter(({ kinds }) => kinds.length > 0),
    mismatches: mismatches(ride, lines, blocks, sections, ledger, rules),
    talk: talkBySection(lines, spoken, sections),
    crowded: crowdedWindows(spoken, rules.talkWindow, rules.talkSeconds),
    quiet,
    storyWindows: storyWindows(spoken, quiet, strain, ridden),
    repeats: repeatCalls(ridden, speechOf(ride)),
    showings: showings(ridden),
  }
}

/** Every number that is spoken otherwise than planned, in the order of the lines. */
function mismatches(
  ride: Ride,
  lines: readonly CueLine[],
  blocks: readonly PlayedBlock[],
  sections: readonly SectionReport[],
  ledger: Ledger,
  rules: Constants,
): (Mismatch & { line: number })[] {
  const view = viewPlan(ride, blocks, sections, ledger, rules)
  return lines.flatMap((spoken, line) => checkClaims(spoken, view).map((mismatch) => ({ ...mismatch, line })))
}
