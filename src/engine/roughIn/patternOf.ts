import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'

/** The pattern of a name that a recipe has, or a chunk. */
export const patternOf = (id: string): BlockPattern => PATTERNS.find((pattern) => pattern.id === id)!

/** Whether riders are out of the saddle in a pattern. */
export const isUp = (id: string): boolean => patternOf(id).posture !== 'seated'
