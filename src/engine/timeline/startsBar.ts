import type { Counts } from '#units/units.ts'

/**
 * Whether a beat is the first of a bar. Bars are counted from the song's first count; beats over go on in them: four
 * over in a song in four are a bar of their own, two begin one that is cut short.
 *
 * @param count of the song; a fraction for a beat that is over
 * @param since beats since the last whole count, 0 on it
 */
export const startsBar = (count: Counts, since: number, beatsPerBar: number): boolean =>
  (Math.floor(count) + Math.round(since)) % beatsPerBar === 0
