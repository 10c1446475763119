/** Eights in a phrase; a segment is no shorter where the song allows it. */
export const PHRASE_EIGHTS = 4

/** A quieter or a louder stretch of a song, in whole eights. */
export interface Segment {
  eights: number
  up: boolean
  /** So many of a quieter stretch's last eights build towards what follows. */
  build?: number
  /** A louder stretch rises through the music's build inside it: so many eights, before so many last ones. */
  rise?: { eights: number; last: number }
}
