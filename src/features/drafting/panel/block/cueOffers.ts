import { constantsOf } from '#engine/constants.ts'
import { callWords } from '#engine/cues/callWords.ts'
import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import { offerFormPoints } from '#engine/cues/formPoints.ts'
import { placeInside, type StoryRoom, storyRoom } from '#engine/cues/placeInside.ts'
import { usualCount, usualLead } from '#engine/cues/usualPlace.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Cue, Ride } from '#plan/model.ts'

/** A cue without its id, and where it goes. */
export interface CueOffer {
  cue: Omit<Cue, 'id'>
  /** Id of the cue it takes the place of; a new one otherwise. */
  replaces?: string
}

/** What could be said at a block and is not. */
interface Offers {
  /** The change called in the ledger's words. */
  call?: CueOffer
  countIn?: CueOffer
  /** A form point of the leader's own, for a longer hold without one. */
  form?: CueOffer
  /** The room a story has here, or what it lacks. */
  story?: StoryRoom
}

/**
 * What is offered for the cues of a block, by its first time.
 *
 * @param turn how far on in the bank of form points, for another one
 */
export function cueOffers(ride: Ride, report: RideReport, blockId: string, bank: readonly string[], turn = 0): Offers {
  const played = report.blocks.find(({ block, from, to }) => block.id === blockId && to > from)
  if (!played) return {}
  const { index, block, from } = played
  const counted = report.sections[played.section]!.bpm !== undefined
  const isFree = !block.cues.some(({ moment }) => moment === 'countIn')
  const form = formOffer(ride, report, index, bank, turn)
  const call = callOffer(ride, report, index, counted)
  return {
    ...(call && { call }),
    ...(counted &&
      isFree &&
      from > 0 && {
        countIn: { cue: { moment: 'countIn', lead: { counts: 0 }, text: '', count: usualCount(constantsOf(ride)) } },
      }),
    ...(form && { form }),
    story: storyRoom(ride, report, index),
  }
}

const CALLS: ReadonlySet<string> = new Set(['preview', 'announce', 'action'])

function callOffer(ride: Ride, report: RideReport, index: number, counted: boolean): CueOffer | undefined {
  const change = report.cues.changes.find(({ block }) => block === index)
  const { block } = report.blocks[index]!
  if (!change) return undefined
  const calls = block.cues.filter(({ moment, text }) => CALLS.has(moment) && text.trim() !== '')
  if (calls.length === 0) {
    const text = callWords(ride, report.blocks, change)
    const lead = usualLead('announce', constantsOf(ride), counted, change.wordsEnd)
    return text === '' ? undefined : { cue: { moment: 'announce', lead, text } }
  }
  // The knob is turned and no call says by how much: its words go first.
  const { pace: _pace, ...knob } = { ...change, kinds: change.kinds.filter((kind) => kind === 'resistance') }
  const words = callWords(ride, report.blocks, knob)
  const says = calls.some((cue) =>
    claimsOf(cue, ride.bike.unit, speechOf(ride)).some(
      ({ meanings: [{ about }] }) => about === 'change' || about === 'total' || about === 'stay',
    ),
  )
  const first = calls.find(({ moment }) => moment === 'announce')
  if (words === '' || says || !first) return undefined
  const { id, ...rest } = first
  return { cue: { ...rest, text: `${words} ${first.text.trim()}` }, replaces: id }
}

function formOffer(ride: Ride, report: RideReport, index: number, bank: readonly string[], turn: number): CueOffer | undefined {
  const offered = offerFormPoints(report.blocks, report.cues, bank).find(({ block }) => block === index)
  if (!offered) return undefined
  const text = bank[(bank.indexOf(offered.text) + turn) % bank.length]!
  const lead = placeInside(ride, report, index, text)
  return lead ? { cue: { moment: 'form', lead, text } } : undefined
}
