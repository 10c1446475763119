import type { CDPSession, Page } from '@playwright/test'
import { nextFrame, type Point } from './drag.ts'

/** Fingers on the page, as the browser is told of them by its screen. */
export interface Fingers {
  down: (...points: Point[]) => Promise<void>
  /** Moves all fingers evenly to where they are to be. */
  move: (...points: Point[]) => Promise<void>
  up: () => Promise<void>
}

const STEPS = 12

export async function fingersOn(page: Page): Promise<Fingers> {
  const session: CDPSession = await page.context().newCDPSession(page)
  let now: Point[] = []
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: Point[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(({ x, y }, id) => ({ x, y, id })) })
  return {
    down: async (...points) => {
      now = points
      // One after the other, as fingers come down.
      for (let count = 1; count <= points.length; count++) await send('touchStart', points.slice(0, count))
    },
    move: async (...points) => {
      const from = now
      for (let step = 1; step <= STEPS; step++) {
        const at = points.map(({ x, y }, i) => ({
          x: from[i]!.x + ((x - from[i]!.x) * step) / STEPS,
          y: from[i]!.y + ((y - from[i]!.y) * step) / STEPS,
        }))
        await send('touchMove', at)
        await nextFrame(page)
      }
      now = points
    },
    up: async () => {
      await send('touchEnd', [])
    },
  }
}
