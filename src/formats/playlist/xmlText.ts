/**
 * Parts of XML text, found by looking for one mark after another: each character is looked at
 * once, however often something begins that never ends. Patterns that try every end anew take
 * the square of the length there, or far more.
 */

/** The text without its comments; one that never ends takes the rest with it. */
export const withoutComments = (xml: string): string =>
  stretches(xml, '<!--', '-->')
    .filter(({ inside }) => !inside)
    .map(({ text }) => text)
    .join('')

/** A piece of a text: between two marks, or outside of them. */
interface TextPiece {
  inside: boolean
  /** Without the marks. */
  text: string
}

/** A text by what stands between an opening and a closing mark; what is opened and never closed goes to the end. */
export function stretches(text: string, open: string, close: string): TextPiece[] {
  const found: TextPiece[] = []
  for (let at = 0; at < text.length; ) {
    const opens = text.indexOf(open, at)
    found.push({ inside: false, text: text.slice(at, opens < 0 ? text.length : opens) })
    if (opens < 0) break
    const closes = text.indexOf(close, opens + open.length)
    found.push({ inside: true, text: text.slice(opens + open.length, closes < 0 ? text.length : closes) })
    at = closes < 0 ? text.length : closes + close.length
  }
  return found
}

/** What the elements of a name hold, in their order, with or without a prefix; the last one ends where it is closed, or is none. */
export function* elementsOf(xml: string, name: string): Generator<string> {
  // Neither < nor > can stand in a tag but as its ends, so a tag that is never closed ends the search at the next one.
  const opens = new RegExp(`<(?:\\w{1,40}:)?${name}(?=[\\s>])[^<>]*>`, 'gi')
  const closes = new RegExp(`</(?:\\w{1,40}:)?${name}\\s{0,40}>`, 'gi')
  for (let open = opens.exec(xml); open; open = opens.exec(xml)) {
    if (open[0].endsWith('/>')) continue
    closes.lastIndex = opens.lastIndex
    const close = closes.exec(xml)
    if (!close) return
    yield xml.slice(opens.lastIndex, close.index)
    opens.lastIndex = closes.lastIndex
  }
}

/** The text from its first element on: behind spaces, declarations and comments. Empty where one of them never ends. */
export function fromFirstElement(xml: string): string {
  const spaces = /[\s\ufeff]*/y
  for (let at = 0; ; ) {
    spaces.lastIndex = at
    spaces.test(xml)
    at = spaces.lastIndex
    const close = xml.startsWith('<?', at) ? '?>' : xml.startsWith('<!--', at) ? '-->' : null
    if (close === null) return xml.slice(at)
    const end = xml.indexOf(close, at)
    if (end < 0) return ''
    at = end + close.length
  }
}
