import type { Speech } from '#engine/speech/speech.ts'
import { calls } from './calls.ts'
import { kindOf } from './claims/lexicon.ts'
import { readClaims } from './claims/readClaims.ts'
import { fitting, planWords, rewrite } from './claims/say.ts'
import { numberWords } from './numberWords.ts'
import { sentences } from './sentences.ts'
import { placeWords, sizeWords } from './settingWords.ts'
import { consonantsIn, spokenNumber, syllablesOf } from './sounds.ts'
import { told } from './told.ts'

/**
 * As shares of the English constants, fitted to thirty cues spoken by eSpeak NG (voice de, 140 words a minute, as the
 * English were); thirty others, to which nothing was fitted, are told to 7 % on average and without bias
 * (tests/engine/speech/german/measured.json).
 */
const LENGTH = { syllable: 1.65, consonant: 0.45 }

/** What riders are told in German, and what is understood of it. */
export const german: Speech = {
  language: 'de',
  numbers: { whole: numberWords, size: sizeWords, place: placeWords },
  calls,
  sounds: {
    syllables: syllablesOf,
    consonants: consonantsIn,
    figures: spokenNumber,
    plus: 'plus',
    minus: 'minus',
    percent: 'prozent',
    length: LENGTH,
  },
  told,
  names: {
    kind: kindOf,
    joints: new Set(['auf', 'von', 'in', 'bis', 'zu', 'x', 'mal', 'on', 'of', 'to', 'by']),
    announcing: new Set(['jetzt', 'gleich', 'nun', 'dann', 'next', 'now']),
    goesOn: /^(?:und|aber|oder|dann)(?!\p{L})/iu,
    fillers: new Set(['ein', 'eine', 'die', 'der', 'und', 'umdrehung', 'umdrehungen', 'drehung', 'drehungen']),
  },
  sentences,
  grammar: {
    read: readClaims,
    rewrite,
    planned: planWords,
    fitting,
    leading: /(?:(?<!\p{L})(?:hoch|runter|zurück)\s+)?(?<!\p{L})auf\s+$/iu,
  },
}
