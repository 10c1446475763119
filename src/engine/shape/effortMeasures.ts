import { type EffortLine, partUpTo, secondsFrom, secondsUpTo } from '#engine/recovery/effortLines.ts'
import type { Effort, Seconds } from '#units/units.ts'

/** Seconds at or above one effort and at or below another, and what the one is to the other; null without easy time. */
export function workAndEase(lines: readonly EffortLine[], work: Effort, easy: Effort): WorkAndEase {
  let workSeconds = 0
  let easySeconds = 0
  for (const line of lines) {
    workSeconds += secondsFrom(line, work)
    easySeconds += secondsUpTo(line, easy)
  }
  return { workSeconds, easySeconds, ratio: easySeconds > 0 ? workSeconds / easySeconds : null }
}

interface WorkAndEase {
  workSeconds: Seconds
  easySeconds: Seconds
  ratio: number | null
}

/** Time under effort: Σ effort × seconds, exact for ramps. */
export function effortSeconds(lines: readonly EffortLine[]): number {
  let sum = 0
  for (const { from, to, start, end } of lines) sum += ((start + end) / 2) * (to - from)
  return sum
}

/** Centre of the effort between two moments, 0 at the first and 1 at the second; null without effort. */
export function effortCentre(lines: readonly EffortLine[], first: Seconds, last: Seconds): number | null {
  const weight = effortSeconds(lines)
  if (weight <= 0 || last <= first) return null
  let moment = 0
  for (const { from, to, start, end } of lines) {
    const length = to - from
    // ∫ t·effort(t) of a straight line: its mean at its middle, and the lever of its slope.
    moment += ((start + end) / 2) * length * ((from + to) / 2 - first) + ((end - start) * length * length) / 12
  }
  return moment / (weight * (last - first))
}

/** Seconds of the last unbroken stretch at an effort or below it, lead-ins not counted. */
export function easyTail(lines: readonly EffortLine[], level: Effort): Seconds {
  let seconds = 0
  for (let i = lines.length - 1; i >= 0; i--) {
    const line = lines[i]!
    const easy = partUpTo(line, level)
    if (!easy || easy.to < line.to) return seconds
    seconds += easy.to - easy.from
    if (easy.from > line.from) return seconds
  }
  return seconds
}
