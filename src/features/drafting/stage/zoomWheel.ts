import type { KeyRow } from '#actions/action.ts'
import { say } from '#words/said.ts'

/** A turn of a wheel is a hundred pixels or so; two fingers on a pad are told of in steps far below that, a hundredth of e each. */
const PAD = { step: 40, e: 100 } as const
const WHEEL = { e: 300 } as const

/** How much closer a turn of the wheel comes, with the key held by which browsers zoom, or a pinch on a pad, which browsers tell of likewise; null where the wheel scrolls. */
export function zoomOfWheel({ ctrlKey, metaKey, deltaY }: Pick<WheelEvent, 'ctrlKey' | 'metaKey' | 'deltaY'>): number | null {
  if (!ctrlKey && !metaKey) return null
  const isPad = ctrlKey && Math.abs(deltaY) < PAD.step
  return Math.exp(-deltaY / (isPad ? PAD.e : WHEEL.e))
}

/** For the key map. */
export const ZOOM_WHEEL: KeyRow = { keys: ['Ctrl+wheel', 'pinch'], does: say('actions.zoomAtPointer') }
