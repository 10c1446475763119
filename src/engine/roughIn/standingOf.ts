import { patternOf } from './patternOf.ts'

/** What riders stand on where they come out of the saddle in a pattern: a hill on a hill, else a flat. */
export const standingOf = (pattern: string): string => (patternOf(pattern).terrain === 'hill' ? 'standing-hill' : 'standing-flat')
