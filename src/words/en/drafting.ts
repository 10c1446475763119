import { duration } from '#words/forms.ts'

export const drafting = {
  // Adding a block.
  addedPast: ({ change, over }: { change: string; over: number }) => `${change}, ${duration(over)} past the end of its song`,
  runsPast: ({ name, over }: { name: string; over: number }) => `“${name}” runs ${duration(over)} past the end of its song.`,
}
