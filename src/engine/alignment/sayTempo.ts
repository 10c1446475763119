import type { Bpm } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'

/** From where to where songs are counted; what is heard in a file is looked for between the same two (common practice). */
const USUAL: Readonly<{ from: Bpm; to: Bpm }> = { from: 48, to: 215 }

/**
 * What to think of a tempo few songs are counted at, in one sentence: it is often half or double
 * of what the legs follow. Null within the usual 48 to 215 beats a minute.
 */
export function sayTempo(bpm: Bpm): Said | null {
  if (isUsual(bpm)) return null
  const slower = bpm < USUAL.from
  const other = bpm * (slower ? 2 : 0.5)
  return say('heard.unusualTempo', { bpm, slower, ...USUAL, meant: isUsual(other) ? other : null })
}

const isUsual = (bpm: Bpm): boolean => bpm >= USUAL.from && bpm <= USUAL.to
