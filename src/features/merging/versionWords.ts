import type { VersionHead } from '#plan/kept/version.ts'

const KINDS = { named: '', sent: 'handed over', received: 'came in' } as const

/** What a version is called in a list. */
export const titleOf = ({ kind, name }: VersionHead): string => (kind === 'named' ? name : `${KINDS[kind]}: ${name || 'untitled ride'}`)

/** "14 March, 18:05" */
export const whenOf = ({ at }: VersionHead): string =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit' }).format(at)
