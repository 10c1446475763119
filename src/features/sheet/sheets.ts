/** The sheets there are, as the toolbar names them. */
export const SHEETS = [
  { value: 'compact', label: 'compact', hint: 'Everything on as few pages as can be read from half a metre.' },
  { value: 'large', label: 'large type', hint: 'For the bike: readable from 70 cm in the dark, page after page.' },
  { value: 'cards', label: 'cards', hint: 'One song a card, to be cut and sorted.' },
  { value: 'substitute', label: 'substitute', hint: 'For someone else with other music: minutes, efforts and feel, no counts.' },
  { value: 'plain', label: 'no music', hint: 'Ten lines for when the stereo dies.' },
  { value: 'phone', label: 'phone', hint: 'Screens to tap through on a telephone, dim and large.' },
  { value: 'checklist', label: 'before class', hint: 'What to see to, when to look at the clock, the first words.' },
] as const

export type SheetKind = (typeof SHEETS)[number]['value']

export const SHEET_KINDS = SHEETS.map(({ value }) => value)

/** Sheets that go change by change: they have a song clock, a shorthand and, with two leaders, a reader. */
export const isCueSheet = (kind: SheetKind): kind is 'compact' | 'large' | 'cards' | 'phone' =>
  kind === 'compact' || kind === 'large' || kind === 'cards' || kind === 'phone'
