import type { SectionReport } from '#engine/played.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import type { CueLine } from './placeCues.ts'

/** How much of a section is talked through. */
export interface SectionTalk {
  sectionId: string
  seconds: Seconds
  /** Share of the section's time, 0–1. */
  share: number
  /** Index into the lines: the cue that takes longest. */
  longest?: number
}

/** Time that is spoken in, overlapping lines counted once; lines stand by their start. */
export function spokenStretches(lines: readonly Stretch[]): Stretch[] {
  const stretches: Stretch[] = []
  for (const { from, to } of lines) {
    const last = stretches.at(-1)
    if (last !== undefined && from <= last.to) last.to = Math.max(last.to, to)
    else stretches.push({ from, to })
  }
  return stretches
}

/** Talk of every section, by the time that is spoken in it; lines and stretches stand by their start. Cost: linear. */
export function talkBySection(lines: readonly CueLine[], spoken: readonly Stretch[], sections: readonly SectionReport[]): SectionTalk[] {
  let first = 0
  let line = 0
  return sections.map(({ sectionId, from, to }) => {
    let seconds = 0
    while (first < spoken.length && spoken[first]!.to <= from) first++
    for (let i = first; i < spoken.length && spoken[i]!.from < to; i++) seconds += overlap(spoken[i]!, { from, to })
    let longest: number | undefined
    let most = 0
    for (; line < lines.length && lines[line]!.from < to; line++) {
      const length = lines[line]!.to - lines[line]!.from
      if (lines[line]!.from < from || length <= most) continue
      most = length
      longest = line
    }
    return { sectionId, seconds, share: to > from ? seconds / (to - from) : 0, ...(longest !== undefined && { longest }) }
  })
}

export const overlap = (a: Stretch, b: Stretch): Seconds => Math.max(0, Math.min(a.to, b.to) - Math.max(a.from, b.from))

/** A window in which more is spoken than the limit. */
export interface Crowded extends Stretch {
  seconds: Seconds
}

/**
 * Windows of a length with more speech than the limit, the fullest of each cluster. Speech in
 * a sliding window is fullest when the window starts with a line or ends with one, so only
 * those are looked at. Cost: lines × lines in a window.
 */
export function crowdedWindows(spoken: readonly Stretch[], length: Seconds, limit: Seconds): Crowded[] {
  const crowded: Crowded[] = []
  for (const [i, { from, to }] of spoken.entries()) {
    for (const start of [from, to - length]) {
      const window = { from: start, to: start + length }
      const seconds = spokenWithin(spoken, i, window)
      if (seconds > limit + 1e-9) keepFullest(crowded, { ...window, seconds })
    }
  }
  return crowded
}

function spokenWithin(spoken: readonly Stretch[], at: number, window: Stretch): Seconds {
  let seconds = overlap(spoken[at]!, window)
  for (let i = at - 1; i >= 0 && spoken[i]!.to > window.from; i--) seconds += overlap(spoken[i]!, window)
  for (let i = at + 1; i < spoken.length && spoken[i]!.from < window.to; i++) seconds += overlap(spoken[i]!, window)
  return seconds
}

function keepFullest(crowded: Crowded[], next: Crowded): void {
  const last = crowded.at(-1)
  if (last === undefined || next.from >= last.to) crowded.push(next)
  else if (next.seconds > last.seconds) crowded[crowded.length - 1] = next
}
