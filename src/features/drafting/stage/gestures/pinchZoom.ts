import { clampZoom, type TimeScale, toSeconds } from '#features/drafting/stage/timeScale.ts'
import type { Seconds } from '#units/units.ts'

/** Two fingers on the stage: how far their middle is from its left edge, and how far they are apart, in pixels. */
export interface Fingers {
  middle: number
  apart: number
}

/** What a pinch holds on to from its beginning: the second under the middle of the fingers, and the zoom it began at. */
export interface Pinch {
  seconds: Seconds
  pixelsPerSecond: number
  apart: number
}

/** A zoom, and a second that is to stand so many pixels from the left edge of the stage. */
export interface ZoomedTo {
  pixelsPerSecond: number
  seconds: Seconds
  x: number
}

/** Fingers closer than this, in pixels, count as this far apart: a finger's width says nothing finer. */
const CLOSEST = 24

const apartOf = ({ apart }: Fingers): number => Math.max(CLOSEST, apart)

export const beginPinch = (scale: TimeScale, scrolled: number, fingers: Fingers): Pinch => ({
  seconds: toSeconds(scale, scrolled + fingers.middle),
  pixelsPerSecond: scale.pixelsPerSecond,
  apart: apartOf(fingers),
})

/** Where fingers that have moved take the stage: the second they began on stays under them, and what lay between them still does. */
export const pinched = (pinch: Pinch, fingers: Fingers): ZoomedTo => ({
  pixelsPerSecond: clampZoom((pinch.pixelsPerSecond * apartOf(fingers)) / pinch.apart),
  seconds: pinch.seconds,
  x: fingers.middle,
})
