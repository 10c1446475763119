import type { Problem } from './problem.ts'

/** What a typed text turns into: its value, or why it has none. */
export type Parsed<T, Why = Problem> = { ok: true; value: T } | { ok: false; problem: Why }

export const parsed = <T>(value: T): { ok: true; value: T } => ({ ok: true, value })

export const refused = <Why>(problem: Why): { ok: false; problem: Why } => ({ ok: false, problem })
