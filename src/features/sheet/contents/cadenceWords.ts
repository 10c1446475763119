import { paceRange } from '#engine/cadence/paceRange.ts'
import type { PlayedCadence } from '#engine/played.ts'
import { words } from '#words/words.ts'

/** A cadence as it is printed: "79 rpm", "70–90 rpm", "wheel stopped"; nothing where none is known. */
export function cadenceWords(cadence: PlayedCadence): string | undefined {
  if (cadence.kind === 'unknown') return undefined
  if (cadence.kind === 'still') return words.printed.wheelStopped
  const [from, to] = paceRange(cadence).map(Math.round) as [number, number]
  return words.printed.cadence({ from, to })
}
