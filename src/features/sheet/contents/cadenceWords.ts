import { paceRange } from '#engine/cadence/paceRange.ts'
import type { PlayedCadence } from '#engine/played.ts'

/** A cadence as it is printed: "79 rpm", "70–90 rpm", "legs still"; nothing where none is known. */
export function cadenceWords(cadence: PlayedCadence): string | undefined {
  if (cadence.kind === 'unknown') return undefined
  if (cadence.kind === 'still') return 'legs still'
  const [from, to] = paceRange(cadence).map(Math.round) as [number, number]
  return from === to ? `${from} rpm` : `${from} to ${to} rpm`
}
