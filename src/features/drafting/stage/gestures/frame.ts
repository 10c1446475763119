import { toSeconds } from '#features/drafting/stage/timeScale.ts'
import { words } from '#words/words.ts'
import { framedItems } from './framedItems.ts'
import { focusStop, type GestureGround } from './gestureGround.ts'
import { scrollAtBorder } from './scrollAtBorder.ts'

interface Point {
  clientX: number
  clientY: number
}

interface DrawnFrame {
  to: (point: Point) => void
  end: (kept: boolean) => void
}

/**
 * A frame drawn from a point of the stage: what it touches is selected as it grows, and given up, what was selected before is
 * again. Held at the stage's border it scrolls on.
 *
 * @param adds whether what was selected stays so
 */
export function beginFrame(ground: GestureGround, start: Point, adds: boolean): DrawnFrame {
  const { store, scroller, content, scale, show } = ground
  const before = store.getState().selection
  const origin = placeIn(content, start)
  let point = start
  let selected = ''
  const row = content.querySelector<HTMLElement>('.blocks')

  const draw = () => {
    const { x, y } = placeIn(content, point)
    const frame = {
      left: Math.max(0, Math.min(origin.x, x)),
      right: Math.min(content.offsetWidth, Math.max(origin.x, x)),
      top: Math.max(0, Math.min(origin.y, y)),
      bottom: Math.min(content.offsetHeight, Math.max(origin.y, y)),
    }
    show({ frame })
    const { shownReport, selectItems, clearSelection } = store.getState()
    const reaches = row && frame.bottom >= row.offsetTop && frame.top <= row.offsetTop + row.offsetHeight
    const stretch = { from: toSeconds(scale(), frame.left), to: toSeconds(scale(), frame.right) }
    const touched = reaches && shownReport ? framedItems(shownReport.blocks, stretch) : []
    const ids = adds ? [...new Set([...before.ids, ...touched])] : touched
    if (ids.join(' ') === selected) return
    selected = ids.join(' ')
    if (ids.length > 0) selectItems(ids)
    else clearSelection()
  }
  const stop = scrollAtBorder(scroller, start.clientX, () => point.clientX, draw)

  return {
    to: (next) => {
      point = next
      draw()
    },
    end: (kept) => {
      stop()
      show(null)
      const { selection, selectItems, selectSection, clearSelection, announce } = store.getState()
      if (kept) {
        const last = selection.ids.at(-1)
        if (last !== undefined) focusStop(content, last)
        announce(words.gestures.framed({ count: selection.ids.length }))
      } else if (before.ids.length > 0) selectItems(before.ids)
      else if (before.sectionId !== null) selectSection(before.sectionId)
      else clearSelection()
    },
  }
}

function placeIn(content: HTMLElement, { clientX, clientY }: Point): { x: number; y: number } {
  const { left, top } = content.getBoundingClientRect()
  return { x: clientX - left, y: clientY - top }
}
