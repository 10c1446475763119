import { plural } from '#words/forms.ts'

/** The list of what can be undone. */
export const undoList = {
  changes: 'changes',
  changesDo: 'list all changes and go back or ahead to any of them',
  undone: 'undone changes',
  made: 'changes made',
  /** The point the ride is at. */
  now: 'The ride is here now.',
  opened: 'as it was opened',
  notFetched: 'The list of changes could not be loaded. Try again when you’re online.',
  undid: ({ count }: { count: number }) => `Undid ${plural(count, 'change', 'changes')}`,
  redid: ({ count }: { count: number }) => `Redid ${plural(count, 'change', 'changes')}`,
}
