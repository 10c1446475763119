import { isJump } from '#engine/cadence/moves.ts'
import { cueOffersSeat } from '#engine/cues/seatWords.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Block } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import { say } from '#words/said.ts'

/**
 * Songs that take riders out of the saddle and offer no way to stay in it, where nobody sees who cannot stand. An option
 * told once holds for the rest of its song, so each song is told once. Jumps come back to the saddle by themselves.
 * Common practice.
 */
export function seatedOption(facts: Facts): Finding[] {
  const speech = speechOf(facts.ride)
  return facts.sections.flatMap(({ blocks: { from, to } }) => {
    const ridden = facts.blocks.slice(from, to).filter((played) => played.to > played.from)
    const first = ridden.find(isUp)
    if (!first || ridden.slice(0, ridden.indexOf(first) + 1).some(({ block }) => tellsSeat(block, speech))) return []
    const { block } = first
    const text = speech.sentences.orSeated(block.easier?.text)
    const here = { block: quotedItem(block) }
    return [
      atBlock(facts, first.index, {
        rule: 'seatedOption',
        severity: 'hint',
        text: say('checksCues.seatedOption', here),
        why: COMMON_PRACTICE,
        fixes: [blockFix(block, say('checksCues.offerSeat'), say('checksCues.offeredSeat', here), { easier: { text } })],
      }),
    ]
  })
}

/** Out of the saddle for good; a stopped wheel or a rider beside the bike is not riding. */
function isUp({ block, cadence }: PlayedBlock): boolean {
  const { terrain, move } = block
  return cadence.kind !== 'still' && isOutOfSaddle(block) && terrain !== 'jumps' && !(move && isJump(move.name))
}

/** The easier option is an offer by itself; words of a cue have to make one. */
const tellsSeat = ({ easier, cues, posture }: Block, speech: Speech): boolean =>
  (easier !== undefined && speech.told.seated(easier.text)) || cues.some((cue) => cueOffersSeat(cue, posture !== 'seated', speech))
