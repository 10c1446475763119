import type { NewId } from '#plan/copies.ts'
import { DEFAULT_BIKE, DEFAULT_LEADER, DEFAULT_LEVEL, DEFAULT_SLOT } from '#plan/defaults.ts'
import { type Bike, CURRENT_SCHEMA, type Level, type Ride, type Section } from '#plan/model.ts'
import type { Language } from '#words/language.ts'

/** A ride with nothing in it but one empty section to put the first block in. */
export function blankRide({
  newId,
  title,
  language = 'en',
  slotMinutes = DEFAULT_SLOT,
  level = DEFAULT_LEVEL,
  bike = DEFAULT_BIKE,
}: BlankRide): Ride {
  return {
    schema: CURRENT_SCHEMA,
    id: newId(),
    title,
    ...(language !== 'en' && { language }),
    level,
    slotMinutes,
    briefingSeconds: 0,
    clearUpSeconds: 0,
    datum: 'base',
    bike,
    leaders: [DEFAULT_LEADER],
    sections: [{ ...emptySection(newId), title: 'warm-up', leadInSeconds: 0 }],
  }
}

/** What a blank ride starts from. */
interface BlankRide {
  newId: NewId
  title: string
  /** What its cues will be spoken in. */
  language?: Language
  slotMinutes?: number
  level?: Level
  bike?: Bike
}

/** A section without a song and without blocks, measured in seconds. */
const emptySection = (newId: NewId): Section => ({ id: newId(), song: null, leadInSeconds: 0, blocks: [] })
