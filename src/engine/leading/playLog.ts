import type { Seconds } from '#units/units.ts'
import type { Acted, Standing } from './acts/act.ts'
import { again } from './acts/again.ts'
import { back } from './acts/back.ts'
import { breakOff } from './acts/breakOff.ts'
import { hearOne } from './acts/hearOne.ts'
import { go, hold } from './acts/hold.ts'
import { nextBlock } from './acts/nextBlock.ts'
import { skipSong } from './acts/skipSong.ts'
import { takeCuts } from './acts/takeCuts.ts'
import type { LeadEvent, LeadLog } from './leadLog.ts'
import { type Led, ledAsPlanned, type Plan } from './led.ts'
import { ledTimes } from './ledTimes.ts'

/** The class after everything that had happened by a time on its clock, and what the last act did. */
export function playLog(plan: Plan, { events }: Pick<LeadLog, 'events'>, until: Seconds = Number.POSITIVE_INFINITY): Acted {
  let acted: Acted = { led: ledAsPlanned(plan), said: '' }
  for (const event of events) {
    if (event.at > until) break
    acted = act(plan, acted.led, event)
  }
  return acted
}

/** One act. Whatever moves on ends a hold first; so does a one of the song that was waited for, or of the one after the held song. */
function act(plan: Plan, led: Led, event: LeadEvent): Acted {
  const standing = (now: Led, at = event.at): Standing => ({ plan, led: now, times: ledTimes(plan, now), at })
  const { kind } = event
  switch (kind) {
    case 'one':
      return hearOne(standing(isOfNextSong(standing(led)) ? go(standing(led)).led : led))
    case 'cut':
      // While something is held, nothing after it has begun.
      return takeCuts(standing(led, led.hold?.at), event.cuts)
    case 'hold':
      return led.hold ? go(standing(led)) : hold(standing(led))
    case 'go':
      return go(standing(led))
    default: {
      const free = led.hold ? go(standing(led)).led : led
      return { next: nextBlock, back, again, skipSong, breakOff }[kind](standing(free))
    }
  }
}

const isOfNextSong = ({ led: { hold: held }, times, at }: Standing): boolean => {
  if (held === undefined || held.moment.kind === 'after') return false
  return held.moment.kind === 'leadIn' || at >= times[held.moment.section]!.to
}
