import { FRESH } from './freshSentences.ts'
import { FURTHER } from './furtherSentences.ts'
import { REFERENCE_RIDE } from './referenceSentences.ts'
import { SPOKEN } from './sentences.ts'
import { VOICES } from './voices.ts'

/** Every sentence of the fixtures, once, whatever ride it was written for. */
export const EVERY_SENTENCE: readonly string[] = [
  ...new Set(
    [SPOKEN, REFERENCE_RIDE, FURTHER, FRESH, VOICES].flatMap((fixture) =>
      Object.values(fixture).flatMap((groups) => groups.flatMap(({ right = [], wrong = [] }) => [...right, ...wrong])),
    ),
  ),
]
