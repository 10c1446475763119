import type { Page } from '@playwright/test'

/** What a hand did, as the browser heard it. */
export type Act = 'press' | 'drag' | 'scroll' | 'key' | 'text'
export type Counts = Readonly<Record<Act, number>>

declare global {
  interface Window {
    handCounts?: Record<Act, number>
  }
}

/** Farther than this a press that moves is a drag, in CSS pixels. */
const DRAG = 6

/** Turns of the wheel that follow each other sooner are one, in milliseconds. */
const PAUSE = 500

/**
 * Counts from now on, in every page that is opened, what the browser itself reports of mouse, finger, and keys; what a
 * script makes up is not counted. A press, a drag, a scroll, and a key (with those held down besides) are one each. A run of letters
 * in one field is one text, however long; the Enter or Tab that ends it is a key of its own.
 */
export async function countActions(page: Page): Promise<void> {
  await page.addInitScript(
    ([far, pause]) => {
      const counts = { press: 0, drag: 0, scroll: 0, key: 0, text: 0 }
      let scrolled = Number.NEGATIVE_INFINITY
      window.handCounts = counts
      let from: { x: number; y: number } | null = null
      let field: EventTarget | null = null
      const isField = (target: EventTarget | null) => target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement
      addEventListener(
        'pointerdown',
        (event) => {
          if (!event.isTrusted) return
          from = { x: event.clientX, y: event.clientY }
          field = null
          counts.press += 1
        },
        true,
      )
      addEventListener(
        'pointermove',
        (event) => {
          if (!from || Math.hypot(event.clientX - from.x, event.clientY - from.y) <= far) return
          from = null
          counts.press -= 1
          counts.drag += 1
        },
        true,
      )
      addEventListener(
        'wheel',
        (event) => {
          if (event.timeStamp - scrolled > pause) counts.scroll += 1
          scrolled = event.timeStamp
        },
        { capture: true, passive: true },
      )
      addEventListener('pointerup', () => (from = null), true)
      addEventListener(
        'keydown',
        (event) => {
          if (!event.isTrusted || ['Control', 'Shift', 'Alt', 'Meta'].includes(event.key)) return
          const isLetter = isField(event.target) && event.key.length === 1 && !event.ctrlKey && !event.metaKey
          if (isLetter && field === event.target) return
          counts[isLetter ? 'text' : 'key'] += 1
          field = isLetter ? event.target : null
        },
        true,
      )
    },
    [DRAG, PAUSE] as const,
  )
}

export const countsOf = (page: Page): Promise<Counts> => page.evaluate(() => ({ ...window.handCounts! }))

export const sumOf = ({ press, drag, scroll, key, text }: Counts): number => press + drag + scroll + key + text
