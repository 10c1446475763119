import { type Block, type CueMoment, isSet, type Ride } from '#plan/model.ts'
import type { Language } from '#words/language.ts'

/** Something a leader has said, and at what. */
export interface SaidCue {
  readonly text: string
  readonly moment: CueMoment
  readonly language: Language
  readonly rideId: string
  readonly blockId: string
  readonly terrain: Block['terrain']
  readonly posture: Block['posture']
  readonly move?: string
}

/** Every cue of a ride that has words, in the order of the ride. */
export function saidIn(ride: Ride): SaidCue[] {
  const blocks = ride.sections.flatMap((section) => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
  return blocks.flatMap(({ id, terrain, posture, move, cues }) =>
    cues.flatMap(({ text, moment }) => {
      if (text.trim() === '') return []
      const where = { rideId: ride.id, blockId: id, language: ride.language ?? 'en', terrain, posture }
      return [{ text: text.trim(), moment, ...where, ...(move && { move: move.name }) }]
    }),
  )
}
