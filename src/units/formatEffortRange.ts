import type { Effort } from '#units/units.ts'
import { formatEffort } from './formatEffort.ts'

/** An effort held or ramped, as it stands in a column: "7", "4–9½". */
export const formatEffortRange = ({ from, to }: { from: Effort; to: Effort }): string =>
  from === to ? formatEffort(from) : `${formatEffort(from)}–${formatEffort(to)}`
