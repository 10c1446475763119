import { beginFrame } from './frame.ts'
import type { GestureGround } from './gestureGround.ts'
import { beginPinch, type Fingers, type Pinch, pinched, type ZoomedTo } from './pinchZoom.ts'

/** How long a finger rests before it draws a frame, in milliseconds, and how far it may tremble, in pixels. */
const REST = { after: 300, within: 8 } as const

/** Some browsers tell of a pinch on a pad by events of their own, and of one by touch as well. */
interface PadPinch extends UIEvent {
  readonly scale: number
  readonly clientX: number
}

/**
 * Two fingers zoom the stage, by touch and on a pad, and the page stays as large as it is. One finger scrolls; where it has
 * rested on an empty part of the row of blocks, it draws a frame.
 *
 * @param zoomTo brings a second to a place across the stage at a zoom
 * @returns stops
 */
export function watchTouches(ground: GestureGround, zoomTo: (to: ZoomedTo) => void): () => void {
  const { scroller, scale } = ground
  let pinch: Pinch | null = null
  let frame: ReturnType<typeof beginFrame> | null = null
  let rest: { timer: number; x: number; y: number } | null = null
  const listeners = new AbortController()
  const { signal } = listeners

  const moveOn = () => {
    clearTimeout(rest?.timer)
    rest = null
  }
  const endFrame = (kept: boolean) => {
    frame?.end(kept)
    frame = null
  }
  const fingersOf = (touches: TouchList): Fingers => {
    const [a, b] = [touches[0]!, touches[1]!]
    const middle = (a.clientX + b.clientX) / 2 - scroller.getBoundingClientRect().left
    return { middle, apart: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY) }
  }

  const start = ({ touches, target }: TouchEvent) => {
    moveOn()
    if (touches.length === 2) {
      endFrame(false)
      pinch = beginPinch(scale(), scroller.scrollLeft, fingersOf(touches))
    } else pinch = null
    const pressed = target as Element
    if (touches.length !== 1 || !pressed.closest('.blocks') || pressed.closest('[data-stage-stop], .edge, button')) return
    const { clientX, clientY } = touches[0]!
    const timer = window.setTimeout(() => {
      frame = beginFrame(ground, { clientX, clientY }, false)
      frame.to({ clientX, clientY })
    }, REST.after)
    rest = { timer, x: clientX, y: clientY }
  }
  const move = (event: TouchEvent) => {
    const { touches } = event
    const [first] = touches
    if (pinch && touches.length === 2) {
      if (event.cancelable) event.preventDefault()
      zoomTo(pinched(pinch, fingersOf(touches)))
    } else if (frame && first) {
      if (event.cancelable) event.preventDefault()
      frame.to(first)
    } else if (rest && first && Math.hypot(first.clientX - rest.x, first.clientY - rest.y) > REST.within) moveOn()
  }
  const end = (event: TouchEvent) => {
    moveOn()
    if (event.touches.length < 2) pinch = null
    if (!frame) return
    // The click that would follow is about what is under the finger.
    if (event.cancelable) event.preventDefault()
    endFrame(event.type === 'touchend')
  }

  let pad: Pinch | null = null
  const padFingers = ({ clientX, scale: apart }: PadPinch): Fingers => ({
    middle: clientX - scroller.getBoundingClientRect().left,
    apart: apart * PAD_FINGERS,
  })
  const padStart = (event: Event) => {
    event.preventDefault()
    pad = pinch ? null : beginPinch(scale(), scroller.scrollLeft, padFingers(event as PadPinch))
  }
  const padMove = (event: Event) => {
    event.preventDefault()
    if (pad && !pinch) zoomTo(pinched(pad, padFingers(event as PadPinch)))
  }

  scroller.addEventListener('touchstart', start, { signal, passive: true })
  scroller.addEventListener('touchmove', move, { signal, passive: false })
  scroller.addEventListener('touchend', end, { signal, passive: false })
  scroller.addEventListener('touchcancel', end, { signal, passive: false })
  scroller.addEventListener('gesturestart', padStart, { signal, passive: false })
  scroller.addEventListener('gesturechange', padMove, { signal, passive: false })
  return () => {
    moveOn()
    endFrame(false)
    listeners.abort()
  }
}

/** How far apart fingers on a pad count as to begin with, in pixels: only by how much they spread is told. */
const PAD_FINGERS = 200
