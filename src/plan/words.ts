import type { Length } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Counts } from '#units/units.ts'

/** A length as it is said: "4 eights", "2 sixes", "45 s". */
export const sayLength = (length: Length, eight: Counts): string =>
  'counts' in length ? formatEights(length.counts, eight) : formatDuration(length.seconds)
