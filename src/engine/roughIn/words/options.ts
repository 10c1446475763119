import { stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import { sizeWords } from '#engine/speech/english/settingWords.ts'
import type { Level, Option, Ride } from '#plan/model.ts'
import type { Deck } from './deck.ts'
import type { Passage } from './passage.ts'

/** Efforts from here on may be made harder by who wants to, in rooms where not everybody is new. */
const HARDER_FROM = 7.5

/** An easier way for everything hard, standing, or moving, and a harder one for the hard; none says anything of the rider. */
export function optionsOf(passage: Passage, ride: Ride, deck: Deck): { easier?: Option; harder?: Option } {
  if (!passage.isEffort && passage.block.posture === 'seated') return {}
  const rpm = passage.times[0]!.cadence.kind === 'turning' ? passage.times[0]!.cadence.from : ride.bike.referenceRpm
  const size = (turns: number) => sizeWords(Math.max(1, stepsOfTurns(turns, ride.bike, rpm, 'atLeast')), ride.bike)
  const pick = (texts: readonly string[]): Option => {
    const [text] = deck.order(texts)
    deck.use(text!)
    return { text: text! }
  }
  const harder = harderTexts(passage, ride.level, size(0.25))
  return { easier: pick(easierTexts(passage, size(0.5), size(0.25))), ...(harder.length > 0 && { harder: pick(harder) }) }
}

function easierTexts({ kind, block, seconds }: Passage, more: string, some: string): string[] {
  const less = [`${more} less, same legs`, `${some} less, same legs`]
  switch (kind) {
    case 'jumps': {
      const counts = block.move?.counts ?? 8
      return [
        'stay seated and ride the beat',
        'stay seated, same load',
        ...(counts < 16 ? [`twice as slow: ${counts * 2} up, ${counts * 2} down`] : []),
      ]
    }
    case 'move':
      return ['keep the legs, leave out the move', 'stay seated, same load', 'stand without the move', 'smaller, slower, or seated']
    case 'tallClimb':
    case 'tallFlat':
    case 'run':
      return [
        'stay seated, same load',
        `stay seated, ${some} less`,
        ...(seconds >= 28 ? ['stand for the first half, then sit'] : []),
        'sit when you need to, keep the beat',
      ]
    case 'push':
    case 'surge':
      return [...less, 'lift the legs, leave the knob', ...(seconds >= 20 ? ['go for the first half, then hold'] : [])]
    default:
      return [...less, 'same knob, slower legs']
  }
}

function harderTexts({ kind, load, seconds }: Passage, level: Level, some: string): string[] {
  if (level === 'beginner' || load.to < HARDER_FROM) return []
  switch (kind) {
    case 'climb':
    case 'tempo':
    case 'tallClimb':
      return [`${some} more`, ...(seconds >= 30 ? [`${some} more for the second half`] : [])]
    case 'push':
    case 'surge':
      return [`${some} more, same legs`, `${some} more if the breath is there`]
    case 'run':
      return [`${some} more, same beat`]
    default:
      return []
  }
}
