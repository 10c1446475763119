import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { MOST_ITEMS, MOST_PATTERNS, runOf } from '#plan/patterns/ownPattern.ts'
import { say } from '#words/said.ts'

/** Asks for a name and keeps what is chosen as a pattern. It changes no ride, so one that came from elsewhere can be kept from too. */
export const KEEP_PATTERN: DraftAction = {
  id: 'stage.keepPattern',
  name: say('ownPatterns.keep'),
  does: say('ownPatterns.keepDo'),
  keys: ['K'],
  over: ['section', 'set', 'block', 'several'],
  can: (on) => {
    const { ride, profiles, keepsProfiles } = on.store.getState()
    const ids = idsOf(on)
    if (!ride || ids.length === 0) return false
    const run = runOf(ride, ids)
    if (!run) return on.target.kind !== 'section' && say('ownPatterns.apart')
    if (!keepsProfiles) return say('ownPatterns.notHere')
    if (run.items.length > MOST_ITEMS) return say('ownPatterns.tooMany', { most: MOST_ITEMS })
    const isFull = profiles.filter(({ kind }) => kind === 'pattern').length >= MOST_PATTERNS
    return isFull ? say('ownPatterns.full', { most: MOST_PATTERNS }) : true
  },
  do: (on) => on.tools.keepPattern(idsOf(on)),
}

const idsOf = ({ target }: DraftGround): readonly string[] => {
  if (target.kind === 'ride') return []
  return target.kind === 'section' ? [target.id] : target.ids
}
