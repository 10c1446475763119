/** Where in the text a claim stands, and how it was put. */
interface Placed {
  from: number
  to: number
  figures: boolean
}

/** A number a cue speaks, and what it is about. */
export type Claim =
  /** "half turn on", "add one", "take one and a half off": a change in the bike's unit, signed. `verb` where it starts with add or take. */
  | (Placed & { about: 'change'; value: number; verb: boolean })
  /** "same gear", "keep it on". */
  | (Placed & { about: 'stay' })
  /** "up to two and a half", "back to five to six turns", "up to at least three turns" (no upper end). */
  | (Placed & { about: 'total'; low: number; high: number | null })
  | (Placed & { about: 'seconds'; value: number; bare?: true; bound?: 'under' | 'over' | 'near' })
  /** "three rounds", "four times". */
  | (Placed & { about: 'rounds'; value: number })
  /** "three pushes", "four surges next": how many of a kind are to come. */
  | (Placed & { about: 'ahead'; value: number; kind: string })
  /** "surge two": the place of this one in its row. */
  | (Placed & { about: 'place'; value: number; kind: string })
  /** "last one", "last push" (0 left after it), "one left", "two hills to go". */
  | (Placed & { about: 'left'; value: number; kind?: string })
  /** "on fours", "eights", "eight up, eight down": counts of the move. */
  | (Placed & { about: 'moveCounts'; value: number; pair?: true })
  /** "four of each": how often a two-sided move is done. */
  | (Placed & { about: 'each'; value: number })
