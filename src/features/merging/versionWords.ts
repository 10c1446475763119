import type { VersionHead } from '#plan/kept/version.ts'
import { moment } from '#words/forms.ts'
import { words } from '#words/words.ts'

/** What a version is called in a list. */
export function titleOf({ kind, name }: VersionHead): string {
  if (kind === 'named') return name
  const title = name || words.names.untitled
  return words.merging[kind]({ title })
}

/** "March 14 at 6:05 PM" */
export const whenOf = ({ at }: VersionHead): string => moment(at, { day: 'numeric', month: 'long', hour: 'numeric', minute: '2-digit' })
