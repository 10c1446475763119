import type { PatternId } from '#plan/patterns/blockPattern.ts'

/** What a pattern brings into a ride in one language: its label, its feel, the cue ahead of it, and the name of its move where it is another there. */
export type PatternWords = Readonly<Record<PatternId, { name: string; feel: string; cue: string; move?: string }>>
