/** What a typed text turns into: its value, or one plain sentence that says what would be understood. */
export type Parsed<T> = { ok: true; value: T } | { ok: false; problem: string }

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value })

export const refused = (problem: string): { ok: false; problem: string } => ({ ok: false, problem })
