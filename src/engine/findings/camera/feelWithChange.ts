import { turnsKnob } from '#engine/cues/changeAt.ts'
import { tellsFeel } from '#engine/cues/feelWords.ts'
import { feelOfTotal } from '#engine/demand/feelOfTotal.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Block } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { KnobSteps } from '#units/units.ts'
import { say } from '#words/said.ts'

/** A place on the knob is the same again within this. */
const SAME: KnobSteps = 1

/**
 * New loads that say only how far to turn: turns mean nothing on a bike nobody here has seen. Once a total has been told
 * by its feel, riders know where it is on their own knob; taking off for easy riding explains itself. Common practice.
 */
export function feelWithChange(facts: Facts): Finding[] {
  const told: KnobSteps[] = []
  const found = new Map<string, Finding>()
  for (const played of facts.blocks) {
    if (played.to <= played.from) continue
    const { block } = played
    const { nominal } = played.ledger.after
    const isTold = saysFeel(block, speechOf(facts.ride))
    const isKnown = told.some((total) => Math.abs(total - nominal) <= SAME)
    if (isTold) told.push(nominal)
    if (isTold || isKnown || !turnsKnob(played) || eases(facts, played) || found.has(block.id)) continue
    // Told once where it is new: the blocks that come back to it follow.
    told.push(nominal)
    const feel = feelOfTotal(nominal, facts.ride)
    const here = { block: quotedItem(block) }
    found.set(
      block.id,
      atBlock(facts, played.index, {
        rule: 'feelWithChange',
        severity: 'hint',
        text: say('checksCues.feelWithChange', here),
        why: COMMON_PRACTICE,
        fixes: [blockFix(block, say('checksCues.sayFeel', { feel }), say('checksCues.saidFeel', here), { feel })],
      }),
    )
  }
  return [...found.values()]
}

/** Stopped, all off, or lighter for easy riding. */
function eases({ rules }: Facts, { block, cadence, ledger: { before, after } }: PlayedBlock): boolean {
  if (cadence.kind === 'still' || block.resistance.kind === 'allOff') return true
  const { terrain, effort } = block
  const isEasy =
    terrain === 'recover' || terrain === 'flush' || terrain === 'stretch' || Math.max(effort.from, effort.to) <= rules.easyEffort
  return isEasy && after.nominal < before.nominal
}

const saysFeel = ({ feel, resistance, cues }: Block, speech: Speech): boolean =>
  Boolean(feel?.trim()) || resistance.kind === 'byFeel' || cues.some((cue) => tellsFeel(cue, speech))
