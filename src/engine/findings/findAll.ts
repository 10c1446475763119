import type { Finding } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { avoidedMoves } from './avoidedMoves.ts'
import { beyondCalibration } from './beyondCalibration.ts'
import { beyondOut } from './beyondOut.ts'
import { cadenceBounds } from './cadenceBounds.ts'
import { cadenceUnknown } from './cadenceUnknown.ts'
import { CAMERA_RULES } from './camera/cameraRules.ts'
import { checkpoints } from './checkpoints.ts'
import { comfort } from './comfort.ts'
import { crookedBlock } from './crookedBlock.ts'
import { CUE_RULES } from './cues/cueRules.ts'
import { deepCrossfade } from './deepCrossfade.ts'
import { difficultyForLevel } from './difficultyForLevel.ts'
import { easyTotal } from './easyTotal.ts'
import { endsHeavy } from './endsHeavy.ts'
import type { Facts } from './facts.ts'
import type { Rule } from './finding.ts'
import { footOnOne } from './footOnOne.ts'
import { handsForPosture } from './handsForPosture.ts'
import { holdBalance } from './holdBalance.ts'
import { intentAgainstDemand } from './intentAgainstDemand.ts'
import { knobEnds } from './knobEnds.ts'
import { largestAdded } from './largestAdded.ts'
import { handOvers } from './leaders/handOvers.ts'
import { sharedLead } from './leaders/sharedLead.ts'
import { longStanding } from './longStanding.ts'
import { nothingPlanned } from './nothingPlanned.ts'
import { offBeatCadence } from './offBeatCadence.ts'
import { openEnd } from './openEnd.ts'
import { openTail } from './openTail.ts'
import { outPointOfSong } from './outPointOfSong.ts'
import { ownTotals } from './ownTotals.ts'
import { recoveriesShrink } from './recoveriesShrink.ts'
import { recoveryDebts } from './recoveryDebts.ts'
import { reserveRunsOut } from './reserveRunsOut.ts'
import type { RuleName } from './ruleNames.ts'
import { safety } from './safety.ts'
import { oneForEachCause } from './sameCause.ts'
import { sideBalance } from './sideBalance.ts'
import { slotFit } from './slotFit.ts'
import { tooLight } from './tooLight.ts'
import { underBase } from './underBase.ts'
import { vetted, withMore } from './vetting/vetted.ts'
import { walkMoments } from './walkMoments.ts'
import { warmUpAndCoolDown } from './warmUpAndCoolDown.ts'
import { wideSpread } from './wideSpread.ts'
import { workShare } from './workShare.ts'

const RULES: readonly Rule[] = [
  nothingPlanned,
  slotFit,
  outPointOfSong,
  openTail,
  beyondOut,
  deepCrossfade,
  crookedBlock,
  warmUpAndCoolDown,
  workShare,
  recoveryDebts,
  recoveriesShrink,
  longStanding,
  knobEnds,
  checkpoints,
  underBase,
  tooLight,
  largestAdded,
  easyTotal,
  wideSpread,
  openEnd,
  endsHeavy,
  cadenceBounds,
  cadenceUnknown,
  offBeatCadence,
  footOnOne,
  sideBalance,
  holdBalance,
  handsForPosture,
  avoidedMoves,
  walkMoments,
  comfort,
  safety,
  ownTotals,
  handOvers,
  sharedLead,
  intentAgainstDemand,
  reserveRunsOut,
  beyondCalibration,
  difficultyForLevel,
  ...CUE_RULES,
  ...CAMERA_RULES,
]

/** What is said of the class as a whole, which says nothing of one that is still being filled. */
const OF_THE_WHOLE: ReadonlySet<RuleName> = new Set([
  'warmUp',
  'coolDown',
  'workShare',
  'difficultyForLevel',
  'endsHeavy',
  'sideBalance',
  'holdBalance',
  'openingCard',
  'endsOffPedals',
])

/**
 * Every rule's findings in the order of the ride clock. A block that a set plays several times
 * speaks once a rule, for the round that is worst off, and what has one cause is told once. Until the ride fills most of its slot,
 * what is said of the whole is for later.
 *
 * @param findingsOf what is found of another ride, to try repairs by
 */
export function findAll(facts: Facts, findingsOf: (ride: Ride) => readonly Finding[]): Finding[] {
  const found = new Map<string, Finding>()
  for (const rule of RULES) {
    for (const finding of rule(facts)) {
      const known = found.get(finding.id)
      if (!known || (finding.amount ?? 0) > (known.amount ?? 0)) found.set(finding.id, finding)
    }
  }
  const { overall, rules } = facts
  const filled = overall.total >= (rules.filledShare / 100) * overall.slot
  const findings = oneForEachCause([...found.values()], rules.talkWindow).sort((a, b) => a.at - b.at)
  const timed = filled
    ? findings
    : findings.map((finding) => (OF_THE_WHOLE.has(finding.rule) ? withMore(finding, { later: true }) : finding))
  return vetted(timed, facts.ride, findingsOf)
}
