import type { Locator, Page } from '@playwright/test'

export interface Point {
  x: number
  y: number
}

export interface DragOptions {
  /** Pointer moves between press and release; real drags have many. */
  steps?: number
  /** Where the thing is gripped, as shares of its width and height; its middle unless given. */
  grip?: Point
  /** Called after each move, once the page has drawn a frame. */
  onStep?: (step: number) => Promise<void>
  /** Whether to let go at the end; a drag that is held can be ended with `page.mouse.up()` or Escape. */
  release?: boolean
}

/**
 * Drags with the real pointer: press on `from`, even moves, release at `to`.
 *
 * @param to a point on the page, the middle of another thing, or a way to go from the grip in CSS pixels
 */
export async function drag(page: Page, from: Locator, to: Locator | Point | { by: Point }, options: DragOptions = {}): Promise<void> {
  const { steps = 20, grip = MIDDLE, onStep, release = true } = options
  await from.scrollIntoViewIfNeeded()
  await settled(from)
  const start = await pointOf(from, grip)
  const end = 'by' in to ? { x: start.x + to.by.x, y: start.y + to.by.y } : 'x' in to ? to : await pointOf(to, MIDDLE)
  await page.mouse.move(start.x, start.y)
  await page.mouse.down()
  for (let step = 1; step <= steps; step++) {
    const share = step / steps
    await page.mouse.move(start.x + (end.x - start.x) * share, start.y + (end.y - start.y) * share)
    await nextFrame(page)
    await onStep?.(step)
  }
  if (release) await page.mouse.up()
}

/** Resolves when the page has drawn what it was last told. */
export async function nextFrame(page: Page): Promise<void> {
  await page.evaluate(() => new Promise<void>((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => drawn()))))
}

/** Resolves when a thing has stood in one place for two frames: what is gripped must not move away from under the pointer. */
async function settled(thing: Locator): Promise<void> {
  await thing.evaluate(
    (element) =>
      new Promise<void>((still) => {
        const look = (before: string) => {
          const { x, y, width, height } = element.getBoundingClientRect()
          const now = `${x} ${y} ${width} ${height}`
          if (now === before) still()
          else requestAnimationFrame(() => requestAnimationFrame(() => look(now)))
        }
        look('')
      }),
  )
}

const MIDDLE: Point = { x: 0.5, y: 0.5 }

async function pointOf(thing: Locator, share: Point): Promise<Point> {
  const box = await thing.boundingBox()
  if (!box) throw new Error(`${thing} is not on the page, so it cannot be gripped or be a place to drop on.`)
  return { x: box.x + box.width * share.x, y: box.y + box.height * share.y }
}
