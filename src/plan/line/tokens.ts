/** Where something stands in a line: characters, the end not included. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** A line cut into what can mean something. `tight`: no space between it and the token before. */
export type Token = Span & { readonly tight: boolean } & (
    | { readonly kind: 'word'; readonly text: string }
    | { readonly kind: 'number'; readonly value: number }
    | { readonly kind: 'clock'; readonly seconds: number }
    | { readonly kind: 'quoted'; readonly text: string }
    | { readonly kind: 'sign'; readonly sign: '+' | '-' }
    /** A comma: a call ends here. */
    | { readonly kind: 'stop' }
  )

const GLYPHS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

// Each alternative begins with another character or is bounded, so that a line is cut in one pass.
const TOKEN =
  /(?<quoted>["“”„«»][^"“”„«»]{0,600}["“”«»])|(?<clock>\d{1,3}:\d{2}(?:[.,]\d{1,20})?(?!\d))|(?<whole>\d{1,9})\s{1,3}(?<over>\d{1,3})\/(?<under>\d{1,3})|(?<top>\d{1,3})\/(?<bottom>\d{1,3})|(?<digits>\d{1,9}(?:[.,]\d{1,20})?)?(?<glyph>[½⅓⅔¼¾⅙⅚⅛⅜⅝⅞])|(?<number>\d{1,9}(?:[.,]\d{1,20})?)|(?<sign>[+\-−–])|(?<stop>[,;])|(?<times>×)|(?<word>[\p{L}\p{M}]+(?:\/[\p{L}\p{M}]+)?)|(?<other>[^\s.:()!])/gu

const number = (text: string): number => Number(text.replace(',', '.'))

/** Cuts a line into tokens in one pass, whatever it holds. */
export function tokensOf(line: string): Token[] {
  const tokens: Token[] = []
  let end = -1
  for (const match of line.matchAll(TOKEN)) {
    const part = match.groups!
    const span = { from: match.index, to: match.index + match[0].length, tight: match.index === end }
    end = span.to
    if (part.quoted !== undefined) tokens.push({ ...span, kind: 'quoted', text: part.quoted.slice(1, -1).trim() })
    else if (part.clock !== undefined) {
      const [minutes, seconds] = part.clock.split(':') as [string, string]
      tokens.push({ ...span, kind: 'clock', seconds: Number(minutes) * 60 + number(seconds) })
    } else if (part.whole !== undefined)
      tokens.push({ ...span, kind: 'number', value: Number(part.whole) + Number(part.over) / Number(part.under) })
    else if (part.top !== undefined) tokens.push({ ...span, kind: 'number', value: Number(part.top) / Number(part.bottom) })
    else if (part.glyph !== undefined) tokens.push({ ...span, kind: 'number', value: number(part.digits ?? '0') + GLYPHS[part.glyph]! })
    else if (part.number !== undefined) tokens.push({ ...span, kind: 'number', value: number(part.number) })
    else if (part.sign !== undefined) tokens.push({ ...span, kind: 'sign', sign: part.sign === '+' ? '+' : '-' })
    else if (part.stop !== undefined) tokens.push({ ...span, kind: 'stop' })
    else tokens.push({ ...span, kind: 'word', text: (part.times === undefined ? match[0] : 'x').toLowerCase() })
  }
  return tokens
}
