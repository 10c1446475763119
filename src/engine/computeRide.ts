import type { Ride } from '#plan/model.ts'
import { playBlocks } from './assembly/playBlocks.ts'
import { reportRiders } from './assembly/reportRiders.ts'
import { reportSections } from './assembly/reportSections.ts'
import { reportSets } from './assembly/reportSets.ts'
import { balanceSides } from './cadence/balanceSides.ts'
import { trackFeet } from './cadence/trackFeet.ts'
import { constantsOf } from './constants.ts'
import { reportCues } from './cues/reportCues.ts'
import { findAll } from './findings/findAll.ts'
import { keepLedger } from './ledger/keepLedger.ts'
import { effortLines } from './recovery/effortLines.ts'
import { findBouts } from './recovery/findBouts.ts'
import type { RideReport } from './report.ts'
import { intentCurve } from './shape/intentCurve.ts'
import { measuresOf } from './shape/measures.ts'
import { overallOf } from './shape/overall.ts'
import { rateDifficulty } from './shape/rateDifficulty.ts'
import { shapeOfRide } from './shape/shapeOfRide.ts'
import { openSections, standingRuns } from './shape/standingRuns.ts'
import { strainCurve } from './shape/strainCurve.ts'
import { isUnplanned } from './timeline/isUnplanned.ts'
import { layTimeline } from './timeline/layTimeline.ts'

/**
 * All that can be computed of one ride: the engine's only door. Pure and total over rides
 * that parse; the same ride gives the same report. Cost: linear in the blocks played.
 */
export function computeRide(ride: Ride): RideReport {
  const rules = constantsOf(ride)
  const timeline = layTimeline(ride)
  const ledger = keepLedger(ride, timeline.blocks)
  const footings = trackFeet(ride, timeline)
  const blocks = playBlocks(ride, timeline, ledger, footings)
  const lines = effortLines(timeline.blocks)
  const standing = standingRuns(timeline.blocks, openSections(timeline.sections))
  const sections = reportSections(ride, timeline, ledger, blocks)
  const strain = strainCurve(lines, timeline.total, rules, timeline.spans.filter(isUnplanned))
  const overall = overallOf(ride, timeline, lines, ledger, standing, rules)
  const recovery = findBouts(lines, ride.level, rules)
  const measures = measuresOf(ride, timeline, lines, recovery, overall, rules)
  const cues = reportCues(ride, blocks, sections, strain, ledger, rules)
  const report = {
    scale: { bike: ride.bike, datum: ride.datum },
    spans: timeline.spans,
    blocks,
    sections,
    sets: reportSets(blocks, lines, rules),
    overall,
    curves: { intent: intentCurve(lines), strain },
    recovery,
    measures,
    balance: balanceSides(ride, timeline.blocks, footings, rules),
    cues,
    shape: shapeOfRide(strain, blocks, recovery, measures, overall, rules.easyEffort),
    difficulty: rateDifficulty({ ride, blocks, recovery, measures, overall, changes: cues.changes, rules }),
    riders: reportRiders(ride, timeline.spans, blocks, rules),
  }
  const facts = { ride, rules, timeline, ledger, footings, standing, ...report }
  return { ...report, findings: findAll(facts, (repaired) => computeRide(repaired).findings) }
}
