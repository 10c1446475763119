import { PATTERNS } from '#plan/patterns/patterns.ts'

/** What riders stand on where they come out of the saddle in a pattern: a hill on a hill, else a flat. */
export const standingOf = (pattern: string): string =>
  PATTERNS.find(({ id }) => id === pattern)!.terrain === 'hill' ? 'standing-hill' : 'standing-flat'
