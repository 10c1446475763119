import type { Voice } from '#engine/roughIn/words/voice.ts'
import { calls } from './calls.ts'
import { names } from './names.ts'
import { options } from './options.ts'
import { ANY_MOVE, MOVE_POINTS, POINTS, SHORT_POINTS } from './points.ts'
import { previews } from './previews.ts'
import { TAILS } from './tails.ts'
import { BASICS, CALM, CHEER, DRINKS, FEELS, HALFWAY, SEATS, STRETCHES, THANKS } from './talk.ts'
import { tells } from './tells.ts'

/** American English, as an instructor speaks in class. */
export const english: Voice = {
  phrases: {
    tails: TAILS,
    feels: FEELS,
    points: POINTS,
    movePoints: MOVE_POINTS,
    anyMove: ANY_MOVE,
    shortPoints: SHORT_POINTS,
    anyShortPoint: 'Hands light.',
    cheer: CHEER,
    calm: CALM,
    thanks: THANKS,
    stretches: STRETCHES,
    basics: BASICS,
    drinks: DRINKS,
    seats: SEATS,
    halfway: (isSeated) => HALFWAY.filter((text) => !isSeated || !text.includes('tall')),
  },
  tells,
  calls,
  options,
  previews,
  names,
}
