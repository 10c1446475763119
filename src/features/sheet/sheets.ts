/** The sheets there are, in the order of the toolbar. */
export const SHEET_KINDS = ['compact', 'large', 'cards', 'substitute', 'plain', 'phone', 'checklist'] as const

export type SheetKind = (typeof SHEET_KINDS)[number]

/** Sheets that go change by change: they have a song clock, abbreviations and, with two leaders, a reader. */
export const isCueSheet = (kind: SheetKind): kind is 'compact' | 'large' | 'cards' | 'phone' =>
  kind === 'compact' || kind === 'large' || kind === 'cards' || kind === 'phone'
