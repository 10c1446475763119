import type { Cue } from '#plan/model.ts'
import { remembered } from './remembered.ts'
import { spokenNumber } from './spokenNumber.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

/** Spoken words of a cue. */
export const wordsOfCue = (cue: Cue): number => sumOf(tokensOfCue(cue))

/**
 * How many words a text is when it is spoken: figures count as they are said ("24" is two,
 * "1½" four, "¾" two).
 */
export const countWords = remembered((text) => sumOf(tokensOf(text)))

const sumOf = (tokens: readonly Token[]): number => tokens.reduce((sum, { word }) => sum + (spokenNumber(word)?.length ?? 1), 0)
