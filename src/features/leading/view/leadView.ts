import { clockWords } from '#engine/leading/clockWords.ts'
import { closingWords } from '#engine/leading/closingWords.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import { sectionName } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { clock, duration } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
      clock: clock(elapsed(state.at)),
      total: words.leading.of({ seconds: state.total }),
      slack: tell(clockWords(state)),
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
  return {
    song: tell(sectionName(ride, section)),
    songLeft: duration(countdown(state.songLeft)),
    songEight: state.music ? words.leading.songEight(state.music) : '',
  }
}

/** The words that are due; at the end of the riding the closing ones. */
function cueWords(led: LedClass, { cue, at, phase }: LeadState): string {
  if (cue !== undefined) return led.report.cues.lines[cue]!.cue.text || words.leading.countIn
  const closing = closingWords(led)
  return at >= closing.from && phase !== 'finished' ? closing.text : ''
}
