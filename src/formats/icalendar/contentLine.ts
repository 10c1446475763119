/** Octets a line may have before its CRLF. Source: RFC 5545 (2009), section 3.1. */
const LINE_OCTETS = 75

/** Text as a property holds it: the backslash first, then what separates values. Source: RFC 5545, section 3.3.11. */
export const escapeText = (text: string): string =>
  text
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replace(/\r\n|[\r\n]/g, '\\n')
    // Other control characters have no place in a line.
    .replace(/(?!\t)\p{Cc}/gu, '')

/**
 * A line folded so that no part has more than 75 octets in UTF-8, each later one after CRLF and a
 * space that counts. A character is never cut: characters are taken whole, by code point.
 */
export function foldLine(line: string): string {
  let folded = ''
  let used = 0
  for (const character of line) {
    const octets = octetsOf(character)
    if (used + octets > LINE_OCTETS) {
      folded += '\r\n '
      used = 1
    }
    folded += character
    used += octets
  }
  return folded
}

/** Length of a code point in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0)!
  if (code < 0x80) return 1
  if (code < 0x800) return 2
  return code < 0x10000 ? 3 : 4
}
