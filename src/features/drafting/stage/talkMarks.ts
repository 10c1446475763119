import type { CueReport } from '#engine/report.ts'
import type { Seconds, Stretch } from '#units/units.ts'
import { reaches } from './drawnStretch.ts'
import { type TimeScale, toX } from './timeScale.ts'

/** The talk of a ride as drawings under its blocks, each the text of one path. */
interface TalkMarks {
  /** What is said: low bars. */
  said: string
  /** Where two things are said at once: bars to the whole height. */
  both: string
  /** Music to be left alone: a line at the foot. */
  quiet: string
}

/** Heights in pixels; bars stand on the foot. */
export const TALK_HEIGHT = 12
const SAID = 4

/**
 * Every cue of a stretch as a bar as long as it takes to say, and the stretches that more than one takes up.
 * Plain texts, so that a change elsewhere draws nothing again. Cost: linear in the cues.
 */
export function talkMarks({ lines, quiet }: Pick<CueReport, 'lines' | 'quiet'>, scale: TimeScale, stretch: Stretch): TalkMarks {
  const seen = lines.filter((line) => reaches(stretch, line))
  const bar = (from: Seconds, to: Seconds, height: number) => {
    const x = tenth(toX(scale, from))
    return `M${x} ${TALK_HEIGHT}v-${height}h${tenth(Math.max(1, toX(scale, to) - toX(scale, from)))}v${height}z`
  }
  return {
    said: seen.map(({ from, to }) => bar(from, to, SAID)).join(''),
    both: overlapsOf(seen)
      .map(({ from, to }) => bar(from, to, TALK_HEIGHT))
      .join(''),
    quiet: quiet
      .filter((music) => reaches(stretch, music))
      .map(({ from, to }) => `M${tenth(toX(scale, from))} ${TALK_HEIGHT - 1}H${tenth(toX(scale, to))}`)
      .join(''),
  }
}

const tenth = (x: number): number => Math.round(x * 10) / 10

/** The stretches in which at least two lines are spoken, in order and apart; lines stand by their start. */
function overlapsOf(lines: readonly { from: Seconds; to: Seconds }[]): { from: Seconds; to: Seconds }[] {
  const overlaps: { from: Seconds; to: Seconds }[] = []
  let end = Number.NEGATIVE_INFINITY
  for (const { from, to } of lines) {
    const until = Math.min(end, to)
    if (until > from + 1e-6) {
      const last = overlaps.at(-1)
      if (last && from <= last.to) last.to = Math.max(last.to, until)
      else overlaps.push({ from, to: until })
    }
    end = Math.max(end, to)
  }
  return overlaps
}
