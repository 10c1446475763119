import { bySpeech } from '#engine/speech/bySpeech.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'
import { remembered } from './remembered.ts'
import { type Token, tokensOf, tokensOfCue } from './tokens.ts'

/** Spoken words of a cue. */
export const wordsOfCue = (cue: Cue, speech: Speech): number => sumOf(tokensOfCue(cue), speech)

const counted = bySpeech((speech) => remembered((text) => sumOf(tokensOf(text), speech)))

/**
 * How many words a text is when it is spoken: figures count as they are said ("24" is two,
 * "1½" four, "¾" two).
 */
export const countWords = (text: string, speech: Speech = english): number => counted(speech)(text)

const sumOf = (tokens: readonly Token[], { sounds }: Speech): number =>
  tokens.reduce((sum, { word }) => sum + (sounds.figures(word)?.length ?? 1), 0)
