import { say } from '#words/said.ts'
import { decimal, type Reading } from './readLength.ts'

const NUMBER = String.raw`\d{1,4}(?:[.,]\d{1,3})?`
const BEFORE_UNIT = `(${NUMBER})\\s*(?:bpm|beats\\s*(?:\\/|a|per)\\s*min(?:ute)?|b\\/min)\\.?`
const AFTER_NAME = `(?:bpm|tempo|♩)\\s*[:=]?\\s*(${NUMBER})`
const AFTER_AT = `@\\s*(${NUMBER})`

const SOME_TEMPO = [BEFORE_UNIT, AFTER_NAME, AFTER_AT].join('|')

/** Finds tempi that say what they are inside a line: 128 bpm, BPM: 128, @128. */
export const TEMPO_IN_LINE = new RegExp(`(?<![\\p{L}\\p{N}:.,])(?:${SOME_TEMPO})(?![\\p{L}\\p{N}:])`, 'giu')
const TEMPO = new RegExp(`^(?:${SOME_TEMPO})$`, 'iu')

/**
 * Reads a tempo that says it is one, in beats a minute.
 * @returns undefined where the text is none
 */
export function readTempo(text: string): Reading | undefined {
  const parts = TEMPO.exec(text)
  return parts ? boundedTempo(decimal(parts[1] ?? parts[2] ?? parts[3]), text) : undefined
}

/** A tempo, or the sentence that says music has none such. */
export const boundedTempo = (bpm: number, text: string): Reading =>
  bpm >= 20 && bpm <= 400 ? { ok: true, value: bpm } : { ok: false, sentence: say('lists.tempoOutside', { tempo: text }) }
