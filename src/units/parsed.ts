/** What a typed text turns into: its value, or one plain sentence that says what would be understood. */
export type Parsed<T> = { ok: true; value: T } | { ok: false; message: string }

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value })

export const refused = (message: string): { ok: false; message: string } => ({ ok: false, message })
