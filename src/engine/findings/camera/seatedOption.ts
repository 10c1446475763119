import { isJump } from '#engine/cadence/moves.ts'
import { cueOffersSeat } from '#engine/cues/seatWords.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, COMMON_PRACTICE, inQuotes } from '#engine/findings/finding.ts'
import { blockFix } from '#engine/findings/fixes/blockFix.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding } from '#engine/report.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Block } from '#plan/model.ts'
import { isOutOfSaddle } from '#plan/posture.ts'

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
    return [
      atBlock(facts, first.index, {
        rule: 'seatedOption',
        severity: 'hint',
        text: `${inQuotes(block)} is out of the saddle, and by then this song has offered no way to stay seated.`,
        why: COMMON_PRACTICE,
        fixes: [blockFix(block, 'Offer it seated', `Offered ${inQuotes(block)} seated`, { easier: { text } })],
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
