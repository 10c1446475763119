import { clockWords } from '#engine/leading/clockWords.ts'
import { closingWords } from '#engine/leading/closingWords.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import type { Seconds } from '#units/units.ts'
import { countdown } from './countdown.ts'
import { nextWords } from './nextWords.ts'
import { nowWords } from './nowWords.ts'
import type { LeadView } from './view.ts'

/** Seconds gone by as they are counted up: whole ones that are over. */
const elapsed = (seconds: Seconds): Seconds => Math.floor(Math.max(0, seconds) + 1e-6)

/** The screen at one moment. Pure: the same state gives the same words. */
export function leadView(led: LedClass, state: LeadState): LeadView {
  const now = nowWords(led, state)
  const next = nextWords(led, state)
  return {
    texts: {
      clock: formatClock(elapsed(state.at)),
      total: `of ${formatClock(state.total)}`,
      slack: clockWords(state),
      ...songWords(led, state),
      ...now.texts,
      cue: cueWords(led, state),
      ...next.texts,
    },
    bar: now.bar,
    beat: state.beat ?? { count: 0, of: 8, passed: 0 },
    effort: now.effort,
    soon: next.soon,
    overrun: state.spare <= -1,
    spoken: now.spoken,
  }
}

function songWords({ ride }: LedClass, state: LeadState): Pick<LeadView['texts'], 'song' | 'songLeft' | 'songEight'> {
  const section = state.section === undefined ? undefined : ride.sections[state.section]
  if (!section) return { song: '', songLeft: '', songEight: '' }
  const { eight, of } = state.music ?? {}
  return {
    song: nameOfSection(ride, section),
    songLeft: formatDuration(countdown(state.songLeft)),
    songEight: eight === undefined ? '' : `eight ${eight} of ${of}`,
  }
}

/** The words that are due; at the end of the riding the closing ones. */
function cueWords(led: LedClass, { cue, at, phase }: LeadState): string {
  if (cue !== undefined) return led.report.cues.lines[cue]!.cue.text || 'Count in.'
  const closing = closingWords(led)
  return at >= closing.from && phase !== 'finished' ? closing.text : ''
}
