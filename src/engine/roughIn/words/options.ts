import { stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import type { Option, Ride } from '#plan/model.ts'
import type { Deck } from './deck.ts'
import type { Passage } from './passage.ts'
import type { OptionOf, Voice } from './voice.ts'

/** Efforts from here on may be made harder by who wants to, in rooms where not everybody is new. */
const HARDER_FROM = 7.5

/** An easier way for everything hard, standing, or moving, and a harder one for the hard; none says anything of the rider. */
export function optionsOf(passage: Passage, ride: Ride, deck: Deck, { options, calls }: Voice): { easier?: Option; harder?: Option } {
  const { isEffort, block, kind, load, seconds, times } = passage
  if (!isEffort && block.posture === 'seated') return {}
  const { cadence } = times[0]!
  const rpm = cadence.kind === 'turning' ? cadence.from : ride.bike.referenceRpm
  const size = (turns: number) => calls.size(Math.max(1, stepsOfTurns(turns, ride.bike, rpm, 'atLeast')), ride.bike)
  const pick = (texts: readonly string[]): Option => {
    const [text] = deck.order(texts)
    deck.use(text!)
    return { text: text! }
  }
  const option: OptionOf = { kind, seconds, counts: block.move?.counts, some: size(0.25), more: size(0.5) }
  const harder = ride.level === 'beginner' || load.to < HARDER_FROM ? [] : options.harder(option)
  return { easier: pick(options.easier(option)), ...(harder.length > 0 && { harder: pick(harder) }) }
}
