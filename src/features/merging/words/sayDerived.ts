import type { DerivedChange } from '#engine/changes/derivedChanges.ts'
import { clock, number, setting } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

/** What follows from other changes, as a line: what of, before and after. */
interface DerivedWords {
  what: string
  before?: string
  after?: string
}

/** What is said of the whole ride. Undefined where it is rounded to the same. */
export function sayFigure(change: Extract<DerivedChange, { kind: 'figure' }>): DerivedWords | undefined {
  const { figure } = change
  const value = (of: number) => {
    if (change.figure === 'highestTotal') return setting(of, change.perUnit)
    return figure === 'meanEffort' || figure === 'sessionLoad' ? number(of, figure === 'meanEffort' ? 1 : 0) : clock(of)
  }
  const line = { what: words.merging.figure({ figure }), before: value(change.before), after: value(change.after) }
  return line.before === line.after ? undefined : line
}

/** What is said of a block or a section. */
export function sayDerived(change: Exclude<DerivedChange, { kind: 'figure' }>): DerivedWords {
  const { merging, names } = words
  switch (change.kind) {
    case 'start': {
      const seconds = Math.abs(change.after - change.before)
      const what = change.after > change.before ? merging.later({ seconds }) : merging.earlier({ seconds })
      return { what, before: clock(change.before), after: clock(change.after) }
    }
    case 'call':
      return { what: merging.call, before: change.before, after: change.after }
    case 'total':
      return { what: merging.resistance, before: change.before, after: change.after }
    case 'foot': {
      const foot = (of: typeof change.before) => (of === null ? merging.noFoot : names.foot({ foot: of }))
      return { what: merging.foot, before: foot(change.before), after: foot(change.after) }
    }
    case 'foundNow':
      return { what: merging.newCheck({ check: tell(change.text) }) }
    case 'foundNoMore':
      return { what: merging.checkGone({ check: tell(change.text) }) }
  }
}
