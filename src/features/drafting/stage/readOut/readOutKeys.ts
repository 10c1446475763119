import type { KeyRow } from '#actions/action.ts'
import type { RideReport } from '#engine/report.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'

/** Where a key takes the read-out: an eight on or back, a block on or back, to an end. Null for a key of something else. */
export function readKey(
  key: string,
  at: Seconds,
  { blocks, overall }: RideReport,
  eight: (at: Seconds, way: 1 | -1) => Seconds,
): Seconds | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return eight(at, 1)
    case 'ArrowLeft':
    case 'ArrowDown':
      return eight(at, -1)
    case 'PageUp':
      return blocks.find(({ from }) => from > at + NEAR)?.from ?? overall.total
    case 'PageDown':
      return blocks.findLast(({ from }) => from < at - NEAR)?.from ?? 0
    case 'Home':
      return 0
    case 'End':
      return overall.total
    default:
      return null
  }
}

const NEAR = 1e-6

/** For the key map. */
export const READ_OUT_KEYS: readonly KeyRow[] = [
  { keys: ['ArrowLeft', 'ArrowRight'], does: say('actions.readOutEight') },
  { keys: ['PageDown', 'PageUp'], does: say('actions.readOutBlock') },
]
