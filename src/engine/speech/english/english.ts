import { numberWords } from '#engine/speech/english/numberWords.ts'
import { placeWords, sizeWords } from '#engine/speech/english/settingWords.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { calls } from './calls.ts'
import { fitting } from './claims/fitting.ts'
import { planWords } from './claims/planWords.ts'
import { readClaims } from './claims/readClaims.ts'
import { rewrite } from './claims/rewrite.ts'
import { singular } from './claims/singular.ts'
import { sentences } from './sentences.ts'
import { spokenNumber } from './spokenNumber.ts'
import { syllablesOf } from './syllables.ts'
import { told } from './told.ts'

/** Consonant letters, of which double ones and those that are written for one sound count once: "ck", "sh", "ng". */
const consonantsIn = (word: string): number => word.replace(/[^\p{L}]|[aeiouy]/gu, '').replace(/(.)\1|ck|[cst]h|[gpw]h|ng/g, 'x').length

/** What riders are told in English, and what is understood of it. */
export const english: Speech = {
  language: 'en',
  numbers: { whole: numberWords, size: sizeWords, place: placeWords },
  calls,
  sounds: {
    syllables: syllablesOf,
    consonants: consonantsIn,
    figures: spokenNumber,
    plus: 'plus',
    minus: 'minus',
    percent: 'percent',
    length: { syllable: 1, consonant: 1 },
  },
  told,
  names: {
    kind: singular,
    joints: new Set(['on', 'of', 'in', 'to', 'by', 'x']),
    announcing: new Set(['next', 'now']),
    goesOn: /^(?:and|but|or|then)\b/i,
    fillers: new Set(['a', 'an', 'the', 'and', 'of', 'turn', 'turns']),
  },
  sentences,
  grammar: { read: readClaims, rewrite, planned: planWords, fitting, leading: /(?:\b(?:up|down|back)\s+)?\bto\s+$/i },
}
