import type { RuleName } from '#engine/findings/ruleNames.ts'
import { withMore } from '#engine/findings/vetting/vetted.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import { bikeName, quotedItem } from '#plan/names.ts'
import { say } from '#words/said.ts'
import { BY_FEEL } from './readEntry.ts'
import type { ShownOn } from './readTotal.ts'

/** Rules whose sentences give a place of the knob, in steps of the ride's own bike. */
const OF_THE_KNOB: ReadonlySet<RuleName> = new Set([
  'knobLoose',
  'knobTight',
  'underBase',
  'largestAdded',
  'easyTotal',
  'wideSpread',
  'openEnd',
  'ownTotals',
  'checkpointMissed',
  'checkpointLoose',
  'lightStanding',
  'lightMove',
  'lightPush',
  'fastLegs',
  'intentAgainstDemand',
  'beyondCalibration',
  'endsHeavy',
  'reserveRunsOut',
])

/**
 * A finding about the knob with where its block stands on the bike the ride is read on. The sentence
 * and the repairs stay in the ride's own steps: rounded totals of another bike do not add up, and
 * what is repaired is the ride.
 *
 * @param blocks as they are read on that bike
 */
export function readFinding(finding: Finding, blocks: readonly PlayedBlock[], { bike }: ShownOn): Finding {
  if (!OF_THE_KNOB.has(finding.rule)) return finding
  const played = finding.block === undefined ? blocks.find(({ block }) => block.id === finding.blockId) : blocks[finding.block]
  if (!played) return finding
  const { total, reading } = played.ledger
  const said = { bike: bikeName(bike), block: quotedItem(played.block) }
  if (played.block.resistance.kind === 'allOff') return withMore(finding, { shownAs: say('checksKnob.isAllOff', said) })
  if (reading?.small === BY_FEEL) return withMore(finding, { shownAs: say('checksKnob.isByFeel', said) })
  return withMore(finding, { shownAs: say('checksKnob.standsAt', { ...said, total }) })
}
