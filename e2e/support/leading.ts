import type { Page } from '@playwright/test'
import { computeRide } from '#engine/computeRide.ts'
import { classTime, type LeadLog } from '#engine/leading/leadLog.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { leadView } from '#features/leading/view/leadView.ts'
import type { LeadView } from '#features/leading/view/view.ts'
import type { Ride } from '#plan/model.ts'

/** What the page keeps of a class. */
export interface KeptRide {
  class: { ride: Ride; log: LeadLog | null } | null
}

/** What one frame showed, and when that frame was, in milliseconds since 1970. */
export interface PaintedFrame {
  instant: number
  slots: Record<string, string>
  count: string | undefined
}

/** The view the engine gives for an instant, from the ride and what happened in it. */
export function viewAt({ class: kept }: KeptRide, instant: number): LeadView {
  const { ride, log } = kept!
  const led = ledClass({ ride, report: computeRide(ride) }, log!)
  return leadView(led, stateOf(led, Math.max(log!.events.at(-1)?.at ?? 0, classTime(log!, instant))))
}

/** All texts of a frame. */
export const slotTexts = ({ slots }: PaintedFrame): Record<string, string> => slots

/** The next frames as they are painted: each is read after the page has drawn it, in the same frame. */
export async function paintedFrames(page: Page, frames: number): Promise<PaintedFrame[]> {
  const recording = await recordFrames(page)
  for (let frame = 0; frame < frames + 2; frame++) await page.clock.runFor(17).catch(() => undefined)
  return (await recording.end()).slice(0, frames)
}

export interface Recording {
  soFar: () => Promise<PaintedFrame[]>
  /** All of them, and forgets them. */
  end: () => Promise<PaintedFrame[]>
}

/** Reads every frame from now on until the end is called for. */
export async function recordFrames(page: Page): Promise<Recording> {
  await page.evaluate(() => {
    const frames: { instant: number; slots: Record<string, string>; count: string | undefined }[] = []
    Object.assign(window, { paintedFrames: frames })
    const elements = [...document.querySelectorAll<HTMLElement>('[data-slot]')]
    const face = document.querySelector<HTMLElement>('.lead-face')!
    // A clock the test moves forgets some of what it was moved by when the page is loaded again; the wall knows.
    const ahead = Date.now() - performance.now() - performance.timeOrigin
    const origin = performance.timeOrigin + (Math.abs(ahead) > 1000 ? ahead : 0)
    const read = (timestamp: number) => {
      if (frames.length > 5000) return
      // Asked for after the page has asked for its own next frame, so that it runs after it.
      requestAnimationFrame(read)
      const slots = Object.fromEntries(elements.map((element) => [element.dataset.slot!, element.textContent ?? '']))
      frames.push({ instant: origin + timestamp, slots, count: face.dataset.count })
    }
    requestAnimationFrame(read)
  })
  type Recorded = { paintedFrames: PaintedFrame[] }
  return {
    soFar: () => page.evaluate(() => (window as unknown as Recorded).paintedFrames),
    end: () => page.evaluate(() => (window as unknown as Recorded).paintedFrames.splice(0)),
  }
}
