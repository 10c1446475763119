import { BREEZY, CALM, CHATTY, CLIPPED } from './fourMoreVoices.ts'
import { FRESH } from './freshSentences.ts'
import { FURTHER } from './furtherSentences.ts'
import { REFERENCE_RIDE } from './referenceSentences.ts'
import { SPOKEN } from './sentences.ts'
import { SIBLINGS } from './siblingSentences.ts'
import { FORTY, MORE_STRANGERS, STRANGERS } from './strangersSentences.ts'
import { BRISK, ENTERED, WARM } from './twoMoreVoices.ts'
import { VOICES } from './voices.ts'

/** Every sentence of the fixtures, once, whatever ride it was written for. */
export const EVERY_SENTENCE: readonly string[] = [
  ...new Set(
    [
      SPOKEN,
      REFERENCE_RIDE,
      FURTHER,
      FRESH,
      VOICES,
      STRANGERS,
      MORE_STRANGERS,
      FORTY,
      BRISK,
      WARM,
      ENTERED,
      SIBLINGS,
      CALM,
      BREEZY,
      CHATTY,
      CLIPPED,
    ].flatMap((fixture) =>
      Object.values(fixture).flatMap((groups) => groups.flatMap(({ right = [], wrong = [] }) => [...right, ...wrong])),
    ),
  ),
]
