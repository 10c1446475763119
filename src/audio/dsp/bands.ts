/** Lowest and highest frequency listened to, Hz: below is rumble, above is what compression takes away. */
const LOWEST = 30
const HIGHEST = 10_000
/** Bands an octave: about a third of an octave, as hearing tells bands apart (common practice). */
const PER_OCTAVE = 3

/** The kick's and the bass's bands end here, the voice's and the chords' here; Hz (common practice). */
const LOW_ENDS = 160
const MID_ENDS = 2500

/** A band's bins of a spectrum, from the first to the one after the last. */
export interface Band {
  from: number
  to: number
  part: 'low' | 'mid' | 'high'
}

/** Bands of a third of an octave, at least one bin each, for a spectrum whose bins are `width` Hz apart. */
export function makeBands(width: number, bins: number): Band[] {
  const bands: Band[] = []
  let from = Math.max(1, Math.round(LOWEST / width))
  for (let edge = LOWEST; edge < HIGHEST && from < bins; ) {
    edge *= 2 ** (1 / PER_OCTAVE)
    const to = Math.min(bins, Math.round(edge / width))
    if (to <= from) continue
    const middle = ((from + to - 1) / 2) * width
    bands.push({ from, to, part: middle < LOW_ENDS ? 'low' : middle < MID_ENDS ? 'mid' : 'high' })
    from = to
  }
  return bands
}
